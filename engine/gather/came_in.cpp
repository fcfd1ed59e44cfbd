#include "gather/came_in.hpp"

#include "audit/audit.hpp"
#include "audit/told.hpp"
#include "gather/handout_words.hpp"
#include "gather/questions.hpp"
#include "gather/row_words.hpp"
#include "quantity/read.hpp"
#include "quantity/with_unit.hpp"
#include "season/locate.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>

namespace wetspell {

namespace {

/// A bare reading means the season's unit once it stands there: one in another unit takes its own along.
Cell in_season(const Cell& cell, const FieldSpec& field, Unit unit, const Season& season) {
  const bool measure = field.type == FieldType::quantity && usual_unit(field.kind) != Unit::none;
  return !measure || unit == season.unit(field.field) ? cell : with_unit(cell, field.kind, unit);
}

std::string where(const Audit& audit, const TidyTable& tidy, std::size_t row) {
  const Place place = audit.source(tidy, row);
  return audit.frames[tidy.origin(row, 0).table].turned
             ? fmt::format("{}, column {}", place.sheet, column_letters(place.column))
             : fmt::format("{}, row {}", place.sheet, place.row);
}

class Taking {
public:
  Taking(const Audit& audit, const Season& season, CameFile& to)
      : audit_(audit), season_(season), to_(to), words_(season) {}

  void take(const TidyTable& tidy, std::vector<CameRow>& rows) {
    const Table& cells = *audit_.season->where(tidy.kind()).table;
    const auto all = fields(tidy.kind());
    for (std::size_t row = 0; row < tidy.rows(); ++row) {
      CameRow came{where(audit_, tidy, row), std::vector<Cell>(all.size())};
      bool any = false;
      for (std::size_t column = 0; column < tidy.fields().size(); ++column) {
        const FieldSpec& field = spec(tidy.fields()[column]);
        const Cell& cell = cells.at(row + 1, column);
        if (!holds_something(cell))
          continue;
        if (!season_.has(field.field)) {
          ++left_out_[field.field];
          continue;
        }
        came.cells[position(field.field)] = in_season(cell, field, tidy.unit(column), season_);
        any = true;
      }
      if (any)
        rows.push_back(std::move(came));
    }
  }

  /// What a handout says of its person is set right on the season's sheet by whoever keeps it.
  void compare_people(const TidyTable& tidy) {
    for (const Person& came : audit_.season->people) {
      const auto known = std::find_if(season_.people.begin(), season_.people.end(), [&](const Person& each) {
        return words_.of(Field::visit_person, Cell::of_text(came.code)) ==
               words_.of(Field::visit_person, Cell::of_text(each.code));
      });
      if (known == season_.people.end())
        continue;
      for (std::size_t column = 0; column < tidy.fields().size(); ++column) {
        const FieldSpec& field = spec(tidy.fields()[column]);
        const Cell typed =
            in_season(audit_.season->cell(field.field, came.row), field, tidy.unit(column), season_);
        const Cell& held = season_.cell(field.field, known->row);
        if (holds_something(typed) && season_.has(field.field) && !says_the_same(field, typed, held))
          to_.remarks.push_back(fmt::format(
              "{} of {} is '{}' in the file and {} in the season: set it right on the sheet of people.",
              field.heading, known->code, to_text(typed),
              holds_something(held) ? fmt::format("'{}'", to_text(held)) : "blank"));
      }
    }
  }

  void remark() {
    for (const auto& [field, cells] : left_out_)
      to_.remarks.push_back(fmt::format("The season's {} have no column '{}': {} {} left out.",
                                        spec(spec(field).table).name, spec(field).heading, cells,
                                        cells == 1 ? "cell was" : "cells were"));
    for (const AuditedTable& table : audit_.tables) {
      if (!table.kind) {
        if (table.records > 0 && table.sheet != handout_words::read_first)
          to_.remarks.push_back(fmt::format("The rows on '{}' from row {} on were left out: {}.", table.sheet,
                                            table.first_row, table.reason));
        continue;
      }
      std::string open;
      for (const AuditedColumn& column : table.columns)
        if (column.mapping.open() && !column.mapping.heading.empty() &&
            column.mapping.heading != handout_words::feedback)
          open += fmt::format("{}'{}'", open.empty() ? "" : ", ", column.mapping.heading);
      if (!open.empty())
        to_.remarks.push_back(fmt::format(
            "On '{}' these columns are none that a season has, and were left out: {}.", table.sheet, open));
      if (table.times > 0)
        to_.remarks.push_back(times_left_alone(table));
      for (const AuditedRow& row : table.passed)
        if (row.use == RowUse::sums)
          to_.remarks.push_back(
              fmt::format("{}, row {} was left out as a sum: {}", table.sheet, row.row, row.text));
    }
  }

private:
  /// Handouts round a course that was taped in another unit.
  bool says_the_same(const FieldSpec& field, const Cell& one, const Cell& other) {
    if (field.type == FieldType::quantity) {
      const ReadOptions how{.kind = field.kind, .assume = season_.unit(field.field)};
      const Quantity a = read(one, how), b = read(other, how);
      if (a.has_value() && b.has_value())
        return std::fabs(a.si - b.si) <= 1e-4 * std::fabs(b.si);
    }
    return words_.of(field.field, one) == words_.of(field.field, other);
  }

  const Audit& audit_;
  const Season& season_;
  CameFile& to_;
  RowWords words_;
  std::map<Field, std::size_t> left_out_;
};

} // namespace

CameFile not_opened(std::string file, std::string why) {
  CameFile came;
  came.file = std::move(file);
  came.problem = std::move(why);
  return came;
}

CameFile came_in(std::string file, std::vector<Table> sheets, const Season& season) {
  CameFile came;
  came.file = file;
  came.answers = take_answers(sheets);
  AuditOptions options;
  options.today = season.settings.today;
  options.settings = &season.settings;
  options.own_headings = true;
  const Audit found = audit(std::move(file), std::move(sheets), options);
  Taking taking(found, season, came);
  if (found.season) {
    for (const TidyTable& tidy : found.tidy)
      if (tidy.kind() == TableKind::visits || tidy.kind() == TableKind::life)
        taking.take(tidy, tidy.kind() == TableKind::life ? came.life : came.visits);
      else if (tidy.kind() == TableKind::people)
        taking.compare_people(tidy);
  }
  taking.remark();
  const bool ours = std::any_of(found.tables.begin(), found.tables.end(), [](const AuditedTable& table) {
    return table.kind == TableKind::visits || table.kind == TableKind::life;
  });
  if (!ours && came.answers.empty())
    came.problem = "no table of visits or of counts of life was found in it.";
  return came;
}

} // namespace wetspell
