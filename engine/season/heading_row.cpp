#include "season/heading_row.hpp"

#include "season/heading.hpp"
#include "season/words.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <span>

namespace wetspell {

namespace {

/// A heading cell with its column and the run of neighbouring cells it belongs to.
struct HeadingCell {
  std::size_t column;
  std::size_t run;
  Heading heading;
};

bool named_after(const Table& table, TableKind kind) {
  std::string one;
  std::string other;
  const auto sheet = plain_word(table.sheet(), one);
  const auto file_name = [](std::string_view name) { return name.substr(0, name.rfind(".csv")); };
  std::string file;
  return sheet == plain_word(spec(kind).name, other) || sheet == plain_word(spec(kind).sheet, other) ||
         plain_word(file_name(table.sheet()), file) == plain_word(spec(kind).name, other);
}

/// What a table must have beyond its required fields, so that "Pool" and "Date" alone make no visits.
struct Demand {
  std::size_t others;          ///< how many of the fields that are not required
  std::span<const Field> some; ///< of which at least one must be there; empty: any
};

constexpr std::array<Field, 4> settings_some{Field::setting_value};
constexpr std::array depth_some{Field::depth_class_over, Field::depth_class_up_to};
constexpr std::array fill_some{Field::fill_class_from, Field::fill_class_to};
constexpr std::array spell_some{Field::spell_class_over, Field::spell_class_up_to};
constexpr std::array species_some{Field::species_first_day, Field::species_last_day, Field::species_most};
constexpr std::array limits_some{Field::limit_value};
constexpr std::array findings_some{Field::finding_message, Field::finding_answer};

Demand demand(TableKind kind) {
  switch (kind) {
  case TableKind::settings:
    return {1, {settings_some.data(), 1}};
  case TableKind::findings:
    return {4, findings_some};
  case TableKind::depth_classes:
    return {1, depth_some};
  case TableKind::fill_classes:
    return {1, fill_some};
  case TableKind::spell_classes:
    return {1, spell_some};
  case TableKind::species:
    return {1, species_some};
  case TableKind::limits:
    return {1, limits_some};
  case TableKind::pools:
  case TableKind::people:
  case TableKind::visits:
  case TableKind::life:
    break;
  }
  return {1, {}};
}

class Row {
public:
  Row(const Table& table, std::vector<HeadingCell> cells) : table_(table), cells_(std::move(cells)) {}

  std::vector<FoundHeadings> tables() {
    std::vector<FoundHeadings> found;
    while (!cells_.empty()) {
      const auto best = best_of(cells_);
      if (!best)
        break;
      found.push_back(claim(*best));
    }
    return found;
  }

private:
  using Cells = std::vector<HeadingCell>;

  /// Which cells a table of this kind would use: per field the best cell.
  static std::vector<const HeadingCell*> use(const Cells& cells, TableKind kind) {
    const std::size_t first = static_cast<std::size_t>(fields(kind).front().field);
    std::vector<const HeadingCell*> used(fields(kind).size(), nullptr);
    std::vector<bool> exact(used.size(), false);
    for (const HeadingCell& cell : cells)
      for (const HeadingMatch& match : cell.heading.matches) {
        if (match.table != kind)
          continue;
        const std::size_t at = static_cast<std::size_t>(match.field) - first;
        if (used[at] == nullptr || (match.exact && !exact[at])) {
          used[at] = &cell;
          exact[at] = match.exact;
        }
      }
    return used;
  }

  /// How well the cells make a table of this kind; nothing when they do not.
  std::optional<int> score(const Cells& cells, TableKind kind) const {
    const auto used = use(cells, kind);
    const auto specs = fields(kind);
    const Demand wanted = demand(kind);
    const bool named = named_after(table_, kind);
    std::size_t missing = 0;
    std::size_t needed = 0;
    std::size_t others = 0;
    bool some = wanted.some.empty();
    int points = named ? 3 : 0;
    for (std::size_t i = 0; i < specs.size(); ++i) {
      needed += specs[i].required;
      if (used[i] == nullptr) {
        missing += specs[i].required;
        continue;
      }
      others += !specs[i].required;
      some |= std::find(wanted.some.begin(), wanted.some.end(), specs[i].field) != wanted.some.end();
      points += 4;
      for (const HeadingMatch& match : used[i]->heading.matches)
        points += match.table == kind && match.exact; // the own heading counts a little more
    }
    // A table whose name says what it is, or that has much else, may lack one of its keys.
    const bool much_else = others >= 4 && needed > 1;
    if (missing > (named || much_else ? 1u : 0u) || (needed > 0 && missing == needed))
      return std::nullopt;
    if (!some || others < (named && needed > 1 ? 0 : wanted.others))
      return std::nullopt;
    return points;
  }

  std::optional<TableKind> best_of(const Cells& cells) const {
    std::optional<TableKind> best;
    int most = 0;
    for (const TableSpec& t : wetspell::tables()) {
      const auto points = score(cells, t.table);
      if (points && *points > most) {
        most = *points;
        best = t.table;
      }
    }
    return best;
  }

  /// Takes the table's cells out of the row. A run of cells that is a table of its own is left alone, unless
  /// the keys of this one stand in it.
  FoundHeadings claim(TableKind kind) {
    const auto specs = fields(kind);
    Cells mine;
    const auto first_use = use(cells_, kind);
    for (std::size_t run = 0; run <= cells_.back().run; ++run) {
      Cells in_run;
      bool holds_key = false;
      for (const HeadingCell& cell : cells_)
        if (cell.run == run) {
          in_run.push_back(cell);
          for (std::size_t i = 0; i < specs.size(); ++i)
            holds_key |= specs[i].required && first_use[i] != nullptr && first_use[i]->column == cell.column;
        }
      const auto alone = in_run.empty() ? std::nullopt : best_of(in_run);
      if (holds_key || !alone || *alone == kind)
        mine.insert(mine.end(), in_run.begin(), in_run.end());
    }
    FoundHeadings found;
    found.kind = kind;
    found.score = score(mine, kind).value_or(0);
    found.first_column = table_.columns();
    for (const HeadingCell* cell : use(mine, kind)) {
      found.columns.push_back(cell == nullptr ? -1 : static_cast<std::int32_t>(cell->column));
      found.units.push_back(cell == nullptr ? Unit::none : cell->heading.unit);
      if (cell == nullptr)
        continue;
      found.first_column = std::min(found.first_column, cell->column);
      found.last_column = std::max(found.last_column, cell->column);
    }
    std::erase_if(cells_, [&](const HeadingCell& cell) {
      return std::find(found.columns.begin(), found.columns.end(), static_cast<std::int32_t>(cell.column)) !=
             found.columns.end();
    });
    return found;
  }

  const Table& table_;
  Cells cells_;
};

} // namespace

HeadingRows::HeadingRows(const Table& table) : table_(table), last_(table.columns()) {}

bool HeadingRows::may_be_headings(std::size_t row) {
  int known = 0;
  for (std::size_t column = 0; column < table_.columns(); ++column) {
    const Cell& cell = table_.at(row, column);
    if (cell.kind() != CellKind::text)
      continue;
    Seen& seen = last_[column];
    if (seen.text != cell.text()) {
      seen.text = cell.text();
      seen.known = !read_heading(cell.text()).matches.empty();
    }
    known += seen.known;
    if (known == 2)
      return true;
  }
  return false;
}

std::vector<FoundHeadings> HeadingRows::at(std::size_t row) {
  if (!may_be_headings(row))
    return {};
  std::vector<HeadingCell> cells;
  std::size_t run = 0;
  for (std::size_t column = 0; column < table_.columns(); ++column) {
    const Cell& cell = table_.at(row, column);
    if (cell.empty()) {
      ++run;
      continue;
    }
    if (cell.kind() != CellKind::text)
      continue;
    Heading heading = read_heading(cell.text());
    if (!heading.matches.empty())
      cells.push_back({column, run, heading});
  }
  return Row(table_, std::move(cells)).tables();
}

} // namespace wetspell
