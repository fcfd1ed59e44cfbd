#include "audit/row_reader.hpp"

#include "measure/refuse.hpp"
#include "quantity/answer.hpp"
#include "quantity/calendar.hpp"
#include "quantity/reason.hpp"
#include "quantity/with_unit.hpp"
#include "season/locate.hpp"
#include "season/words.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace wetspell {

namespace {

bool ditto(const Cell& cell) {
  constexpr std::array<std::string_view, 11> marks{"\"", "''",   "\u3003", "\u2033", "ditto", "do.",
                                                   "do", "same", "\u201d", ",,",     "\u201e"};
  return cell.kind() == CellKind::text && std::find(marks.begin(), marks.end(), cell.text()) != marks.end();
}

/// One to twelve for a month by number or name; 0 for anything else.
int month_of(const Cell& cell) {
  if (cell.kind() == CellKind::number)
    return static_cast<int>(cell.number());
  const Quantity q = read("15 " + to_text(cell) + " 2020", {.kind = Kind::date});
  if (!q.has_value()) {
    const Quantity number = read(to_text(cell), {.kind = Kind::count});
    return number.has_value() && number.si <= 12 ? static_cast<int>(number.si) : 0;
  }
  return static_cast<int>(date_of(q.si)->month);
}

/// A whole number, also where it is typed as text; nothing otherwise.
std::optional<int> whole(const Cell& cell) {
  const Quantity q = read(cell, {.kind = Kind::count});
  return q.has_value() && q.si < 10000 ? std::optional(static_cast<int>(q.si)) : std::nullopt;
}

} // namespace

KeyReader::KeyReader(const Mapped& table) : table_(table) {
  for (const Field field : {Field::visit_pool, Field::life_pool, Field::pool_code})
    if (pool_ == nullptr)
      pool_ = table.map.of(field);
  for (const Field field : {Field::visit_date, Field::life_date})
    if (date_ == nullptr)
      date_ = table.map.of(field);
  year_ = table.map.of(Part::year);
  month_ = table.map.of(Part::month);
  day_ = table.map.of(Part::day);
  if (has_date()) {
    pool_once_ = written_once(pool_);
    date_once_ = written_once(date_);
  }
  if (!table.map.pool.empty())
    above_pool_ = Cell::of_text(table.map.pool);
  if (!table.map.date.empty())
    above_date_ = Cell::of_text(table.map.date);
}

bool KeyReader::has_date() const {
  return date_ != nullptr || day_ != nullptr || !table_.map.date.empty() || table_.map.date_in_lines;
}

bool KeyReader::has_pool() const {
  return pool_ != nullptr || !table_.map.pool.empty() || table_.map.pool_in_lines;
}

/// Written in the first row of several and left blank below: the first cell stands, many others do not.
bool KeyReader::written_once(const Mapping* column) const {
  if (column == nullptr)
    return false;
  const Block& block = table_.block;
  std::size_t first = block.first_data;
  while (first < block.end_data && !block.is_record(first))
    ++first;
  if (first == block.end_data || !holds_something(block.grid.at(first, column->column)))
    return false;
  const std::size_t records = block.records();
  const std::size_t blank = records - block.filled[column->column];
  return blank * 5 >= records * 2; // two in five
}

void KeyReader::pass_sections(std::size_t row) {
  const auto& passed = table_.block.passed;
  for (; next_passed_ < passed.size() && passed[next_passed_].row < row; ++next_passed_)
    if (passed[next_passed_].use == RowUse::section) {
      const std::string& line = passed[next_passed_].text;
      const std::string named = table_.map.pools_by_name ? pool_of_line(line) : pool_named_in(line);
      if (!named.empty())
        above_pool_ = Cell::of_text(named);
      if (table_.map.date_in_lines)
        if (const std::string day = date_of_line(line); !day.empty())
          above_date_ = Cell::of_text(day);
    }
}

Key KeyReader::at(std::size_t row) {
  Key key{pool(row), date(row), std::nullopt};
  if (const Mapping* column = date_column(); column != nullptr)
    key.date_column = static_cast<std::uint32_t>(column->column);
  return key;
}

void KeyReader::begin_at(std::size_t row) {
  const Block& block = table_.block;
  const auto stands = [&](const Mapping* column, std::size_t above) {
    const Cell& cell = block.grid.at(above, column->column);
    return holds_something(cell) && !ditto(cell);
  };
  bool pool = pool_ != nullptr;
  bool date = date_ != nullptr;
  for (std::size_t above = row; above-- > block.first_data && (pool || date);) {
    if (!block.is_record(above))
      continue;
    if (pool && stands(pool_, above)) {
      pass_sections(above); // lines further up say nothing any more
      above_pool_ = block.grid.at(above, pool_->column);
      pool = false;
    }
    if (date && stands(date_, above)) {
      above_date_ = block.grid.at(above, date_->column);
      date = false;
    }
  }
}

Cell KeyReader::pool(std::size_t row) {
  pass_sections(row);
  if (pool_ == nullptr)
    return above_pool_;
  const Cell& cell = table_.block.grid.at(row, pool_->column);
  if (holds_something(cell) && !ditto(cell)) {
    above_pool_ = cell;
    return cell;
  }
  return ditto(cell) || pool_once_ ? above_pool_ : Cell{};
}

Cell KeyReader::date(std::size_t row) {
  const Grid& grid = table_.block.grid;
  if (date_ == nullptr) {
    if (day_ == nullptr || month_ == nullptr)
      return above_date_;
    const auto day = whole(grid.at(row, day_->column));
    const int month = month_of(grid.at(row, month_->column));
    const auto year = year_ != nullptr ? whole(grid.at(row, year_->column)) : table_.dates.year;
    if (!day || month == 0 || !year)
      return {};
    const int full =
        *year < 100 ? 2000 + *year > table_.dates.this_year ? 1900 + *year : 2000 + *year : *year;
    return Cell::of_text(fmt::format("{:04}-{:02}-{:02}", full, month, *day));
  }
  const Cell& cell = grid.at(row, date_->column);
  if (holds_something(cell) && !ditto(cell)) {
    above_date_ = cell;
    return cell;
  }
  return ditto(cell) || date_once_ ? above_date_ : Cell{};
}

void RowReader::unread(TidyTable& to, std::size_t row, Spot at, const Cell& cell, std::string reason,
                       std::string sort, std::size_t rows) {
  if (to.states[row] == RowState::usable)
    to.states[row] = RowState::after_answers;
  ++tidy_.unread_count;
  if (tidy_.unread.size() >= unread_kept)
    return;
  const Mapped& table = tables_[at.table];
  tidy_.unread.push_back({table.block.grid.place(at.row, at.column), at.table,
                          table.block.headings[at.column].text, to_text(cell), std::move(reason),
                          std::move(sort), rows});
}

void RowReader::keys(TidyTable& to, std::size_t row, const Key& key, Spot at, Field pool, Field date,
                     bool told) {
  if (const std::int32_t column = to.column(pool); column >= 0)
    to.at(row, static_cast<std::size_t>(column)) = key.pool;
  const std::int32_t column = to.column(date);
  if (column < 0)
    return;
  const Cell& typed = key.date;
  Cell& tidy = to.at(row, static_cast<std::size_t>(column));
  const ReadDate read = day_of(at.table, typed);
  if (read.readable) {
    tidy = Cell::of_date(read.serial);
    return;
  }
  tidy = typed;
  at.column = key.date_column.value_or(at.column);
  if (!typed.empty() && told && to.states[row] == RowState::usable)
    to.states[row] = RowState::after_answers;
  if (!typed.empty() && !told)
    unread(to, row, at, typed, read.reason, fmt::format("{}: {}", spec(date).heading, read.reason));
  if (!read.askable)
    to.states[row] = RowState::unusable;
}

Quantity RowReader::reading(std::size_t column, const Cell& cell, const ReadOptions& options) {
  if (readings_.size() <= column)
    readings_.resize(column + 1);
  Readings& readings = readings_[column];
  if (readings.options != options)
    readings = {options, {}};
  return readings.known.of(cell, [&](const Cell& fresh) { return read(fresh, options); });
}

const ReadDate& RowReader::day_of(std::uint32_t table, const Cell& cell) {
  if (dated_ != table) {
    dates_ = {};
    dated_ = table;
  }
  return dates_.of(cell, [&](const Cell& fresh) { return date_from(fresh, tables_[table].dates); });
}

void RowReader::cell(TidyTable& to, std::size_t row, std::size_t column, const Cell& from, Spot at, Unit unit,
                     bool unit_open) {
  const FieldSpec& field = spec(to.fields()[column]);
  Cell& tidy = to.at(row, column);
  if (from.empty() || !holds_something(from))
    return;
  if (field.field == Field::visit_temperature_mean && to_text(from) == "#DIV/0!")
    return; // the mean of no readings: nothing was noted
  if (field.type != FieldType::quantity) {
    if (from.kind() == CellKind::error)
      unread(to, row, at, from, "an error stands in the cell", "an error stands in the cell");
    tidy = from;
    return;
  }
  const bool measure = usual_unit(field.kind) != Unit::none;
  double number = from.number();
  if (from.kind() != CellKind::number || !measure) {
    const Quantity q = reading(column, from, {.kind = field.kind, .assume = unit});
    if (q.status == Status::bad) {
      unread(to, row, at, from, reason_in_words(to_text(from), q),
             fmt::format("{}: {}", field.heading, text(q.reason)));
      tidy = from;
      return;
    }
    // "3/4" of a pool is a fraction of one in whatever unit its column is.
    const Unit assumed = unit == Unit::none ? usual_unit(field.kind) : unit;
    const bool bare =
        measure && !q.unit_typed && q.unit == assumed && q.typed() && q.status != Status::missing;
    const bool lacks_unit = bare && !unit_open && unit != to.unit(column);
    // A number typed as text is a number; what carries its own unit, or a doubt, stays as it is.
    if (!bare || (q.status != Status::value && !unit_open)) {
      tidy = lacks_unit ? with_unit(from, field.kind, unit) : from;
      return;
    }
    number = q.status == Status::value ? q.written : Quantity::no_value;
  }
  const bool nought = number == 0 && field.kind != Kind::temperature; // is the same in all units
  if (measure && unit_open && !nought) {
    unread(to, row, at, from, "the unit of the number cannot be told",
           fmt::format("{}: the unit cannot be told", field.heading));
    tidy =
        Cell::of_text(fmt::format("{} {}", to_text(from), unit_asked)); // "about 9" too, as it stands there
    return;
  }
  const bool other_unit = measure && unit != to.unit(column) && unit != Unit::none;
  if (other_unit)
    tidy = Cell::of_text(fmt::format("{} {}", number, symbol(unit)));
  else if (measure && from.kind() != CellKind::number)
    tidy = Cell::of_number(number);
  else
    tidy = from;
}

void settle_keys(TidyTable& table) {
  std::vector<std::size_t> needed;
  for (std::size_t column = 0; column < table.fields().size(); ++column)
    if (spec(table.fields()[column]).required)
      needed.push_back(column);
  std::size_t wanted = 0;
  for (const FieldSpec& field : fields(table.kind()))
    wanted += field.required;
  for (std::size_t row = 0; row < table.rows(); ++row) {
    const bool all =
        needed.size() == wanted && std::all_of(needed.begin(), needed.end(), [&](std::size_t column) {
          const Cell& cell = table.at(row, column);
          return holds_something(cell) && cell.kind() != CellKind::error &&
                 !(cell.kind() == CellKind::text && says_not_known(cell.text()));
        });
    if (!all)
      table.states[row] = RowState::unusable;
  }
}

} // namespace wetspell
