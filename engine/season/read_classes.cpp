#include "season/locate.hpp"
#include "season/read_parts.hpp"
#include "season/species.hpp"
#include "season/words.hpp"
#include "table/day.hpp"

#include <fmt/format.h>

#include <charconv>
#include <chrono>
#include <cmath>
#include <vector>

namespace wetspell {

namespace {

/// The rows of a located table as cells of the named fields, one row after another; blank where no column is.
std::vector<Cell> cells_of(const Located& at, std::initializer_list<Field> wanted) {
  std::vector<Cell> cells;
  for (std::size_t row = at.first_row; row < at.end_row; ++row)
    for (Field field : wanted) {
      const std::int32_t column = at.columns[position(field)];
      const bool there = column >= 0 && holds_something(at.table->at(row, static_cast<std::size_t>(column)));
      cells.push_back(there ? at.table->at(row, static_cast<std::size_t>(column)) : Cell{});
    }
  return cells;
}

ClassTable class_table(Season& season, TableKind kind, std::initializer_list<Field> columns,
                       const ClassTable& usual) {
  const Located& at = season.where(kind);
  if (!at.found())
    return usual;
  ClassTable like = usual;
  const Unit unit = at.units[position(*(columns.begin() + 1))];
  // A heading that says a unit, or else the unit of the usual table and not that of the settings: the words
  // of the classes name inches, and stay when a workbook turns to metric.
  if (unit != Unit::none && fits(unit, spec(*(columns.begin() + 1)).kind))
    like.unit = unit;
  auto read = class_table_from(cells_of(at, columns), columns.size(), like);
  if (read)
    return std::move(read).value();
  season.remarks.push_back(fmt::format("{}: the table of {} cannot be used: {} The usual classes are taken.",
                                       to_text(at.table->place(at.heading_row, 0)), in_words(kind),
                                       read.error().text));
  return usual;
}

/// A day of the year from a cell: a date's own day, or words. 0: blank; -1: cannot be read.
int day_from(const Cell& cell) {
  if (!holds_something(cell))
    return 0;
  if (cell.kind() == CellKind::text)
    return day_of_year_from(cell.text());
  if (cell.kind() == CellKind::date || (cell.kind() == CellKind::number && cell.number() > 1231)) {
    using namespace std::chrono;
    if (!(cell.number() > 0 && cell.number() < 2958466))
      return -1;
    const year_month_day date{day_zero + days{static_cast<int>(cell.number())}};
    return static_cast<int>(static_cast<unsigned>(date.month()) * 100 + static_cast<unsigned>(date.day()));
  }
  return day_of_year_from(to_text(cell));
}

class SpeciesReader {
public:
  explicit SpeciesReader(Season& season) : season_(season), at_(season.where(TableKind::species)) {}

  void read() {
    for (std::size_t row = at_.first_row; row < at_.end_row; ++row) {
      const Cell& name = cell(Field::species_name, row);
      if (!holds_something(name))
        continue;
      Species s;
      s.name = to_text(name);
      s.seen_as = choice_from(to_text(cell(Field::species_seen_as, row)), seen_as_words());
      if (s.seen_as.index == Choice::unreadable)
        remark(Field::species_seen_as, row, "any form is taken");
      if (!s.seen_as.chosen())
        s.seen_as = {};
      s.first_day = day(Field::species_first_day, row);
      s.last_day = day(Field::species_last_day, row);
      const Quantity most = wetspell::read(cell(Field::species_most, row), {.kind = Kind::count});
      if (most.has_value())
        s.most = most.si;
      else if (most.status == Status::bad)
        remark(Field::species_most, row, "no limit is taken");
      season_.species.push_back(std::move(s));
    }
  }

private:
  [[nodiscard]] const Cell& cell(Field field, std::size_t row) const {
    static const Cell none;
    const std::int32_t column = at_.columns[position(field)];
    return column < 0 ? none : at_.table->at(row, static_cast<std::size_t>(column));
  }
  int day(Field field, std::size_t row) {
    const int read = day_from(cell(field, row));
    if (read < 0)
      remark(field, row, "no limit is taken");
    return std::max(read, 0);
  }
  void remark(Field field, std::size_t row, std::string_view instead) {
    const auto column = static_cast<std::size_t>(at_.columns[position(field)]);
    season_.remarks.push_back(fmt::format("{}: \"{}\" cannot be read as \"{}\"; {}.",
                                          to_text(at_.table->place(row, column)), to_text(cell(field, row)),
                                          spec(field).heading, instead));
  }

  Season& season_;
  const Located& at_;
};

/// The number of a limit's cell, SI; nothing when it makes no sense.
std::optional<double> limit_from(const LimitSpec& s, const Cell& value, Unit unit) {
  double number = value.number();
  if (value.kind() == CellKind::text && s.unit == Unit::none) {
    const char* end = value.text().data() + value.text().size();
    if (const auto read = std::from_chars(value.text().data(), end, number);
        read.ec != std::errc{} || read.ptr != end)
      return std::nullopt;
  } else if (value.kind() == CellKind::text) {
    const Quantity q = read(value, {.kind = spec(s.unit).kind, .assume = unit});
    if (!q.has_value())
      return std::nullopt;
    number = q.written;
    unit = q.unit;
  } else if (value.kind() != CellKind::number) {
    return std::nullopt;
  }
  const bool may_be_negative = s.unit == Unit::celsius && !s.difference;
  if (!std::isfinite(number) || (number < 0 && !may_be_negative))
    return std::nullopt;
  return limit_to_si(s, number, unit);
}

const LimitSpec* limit_named(std::string_view text) {
  std::string one;
  std::string other;
  const auto word = plain_word(text, one);
  for (const LimitSpec& s : limits_catalogue())
    if (word == plain_word(s.name, other) || word == plain_word(s.meaning, other))
      return &s;
  return nullptr;
}

} // namespace

void read_classes(Season& season) {
  season.depth_classes = class_table(
      season, TableKind::depth_classes,
      {Field::depth_class_label, Field::depth_class_over, Field::depth_class_up_to}, default_depth_classes());
  season.fill_classes = class_table(season, TableKind::fill_classes,
                                    {Field::fill_class_label, Field::fill_class_from, Field::fill_class_to},
                                    default_fill_classes());
  season.spell_classes = class_table(
      season, TableKind::spell_classes,
      {Field::spell_class_label, Field::spell_class_over, Field::spell_class_up_to}, default_spell_classes());
}

void read_species(Season& season) {
  if (season.where(TableKind::species).found())
    SpeciesReader(season).read();
  if (season.species.empty())
    for (const SpeciesSpec& s : species_catalogue())
      season.species.push_back({.name = std::string(s.name),
                                .seen_as = {static_cast<std::int16_t>(s.seen_as)},
                                .first_day = s.first_day,
                                .last_day = s.last_day,
                                .most = s.most});
  TextMap known;
  std::string buffer;
  for (const Species& s : season.species)
    if (known.emplace(plain_code(s.name, buffer), 0).second)
      season.species_names.push_back(s.name);
}

void read_limits(Season& season) {
  const Located& at = season.where(TableKind::limits);
  if (!at.found())
    return;
  for (std::size_t row = at.first_row; row < at.end_row; ++row) {
    const auto cells = [&](Field field) {
      const std::int32_t column = at.columns[position(field)];
      return column < 0 ? Cell{} : at.table->at(row, static_cast<std::size_t>(column));
    };
    const std::string name = to_text(cells(Field::limit_name));
    const Cell value = cells(Field::limit_value);
    if (name.empty() || !holds_something(value))
      continue;
    const auto place = [&](Field field) {
      return to_text(at.table->place(row, static_cast<std::size_t>(at.columns[position(field)])));
    };
    const LimitSpec* s = limit_named(name);
    if (s == nullptr) {
      season.remarks.push_back(fmt::format("{}: there is no limit called \"{}\"; the line is passed over.",
                                           place(Field::limit_name), name));
      continue;
    }
    Unit unit = s->unit;
    if (const Cell said = cells(Field::limit_unit); s->unit != Unit::none && holds_something(said)) {
      const auto named = unit_named(to_text(said));
      if (!named || !fits(*named, spec(s->unit).kind)) {
        season.remarks.push_back(
            fmt::format("{}: \"{}\" is no unit for \"{}\"; the usual value, {} {}, is taken.",
                        place(Field::limit_unit), to_text(said), s->name, s->value, symbol(s->unit)));
        continue;
      }
      unit = *named;
    }
    if (const auto si = limit_from(*s, value, unit))
      season.limits.si[static_cast<std::size_t>(s->limit)] = *si;
    else
      season.remarks.push_back(
          fmt::format("{}: \"{}\" cannot be read as \"{}\"; the usual value, {} {}, is taken.",
                      place(Field::limit_value), to_text(value), s->name, s->value, symbol(s->unit)));
  }
}

} // namespace wetspell
