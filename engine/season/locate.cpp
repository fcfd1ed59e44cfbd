#include "season/locate.hpp"

#include "season/heading.hpp"
#include "season/heading_row.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <limits>

namespace wetspell {

namespace {

// Rows that are searched for headings one by one. Further down, a row in which the column of dates (or of
// another quantity) holds a number is data, so that long tables are not read twice.
constexpr std::size_t searched_closely = 2000;

struct Candidate {
  Located located;
  FoundHeadings headings;
  std::int32_t numbers = -1; ///< a column in which data rows hold numbers, to tell data from headings at once
};

/// The column for Candidate::numbers.
std::int32_t number_column(const FoundHeadings& headings) {
  const auto specs = fields(headings.kind);
  for (std::size_t i = 0; i < specs.size(); ++i)
    if (headings.columns[i] >= 0 && specs[i].type == FieldType::quantity && specs[i].required)
      return headings.columns[i];
  for (std::size_t i = 0; i < specs.size(); ++i)
    if (headings.columns[i] >= 0 && specs[i].type == FieldType::quantity)
      return headings.columns[i];
  return -1;
}

bool overlap(const FoundHeadings& one, const FoundHeadings& other) {
  return one.first_column <= other.last_column && other.first_column <= one.last_column;
}

bool row_is_blank(const Table& table, std::size_t row, const FoundHeadings& headings) {
  for (std::int32_t column : headings.columns)
    if (column >= 0 && holds_something(table.at(row, static_cast<std::size_t>(column))))
      return false;
  return true;
}

/// A line of words over the next table: one text cell in the row.
bool row_is_title(const Table& table, std::size_t row, const FoundHeadings& headings) {
  std::size_t texts = 0;
  for (std::size_t column = headings.first_column; column <= headings.last_column; ++column) {
    const Cell& cell = table.at(row, column);
    if (!holds_something(cell))
      continue;
    if (cell.kind() != CellKind::text)
      return false;
    ++texts;
  }
  return texts == 1;
}

bool compact(TableKind kind) {
  return kind == TableKind::depth_classes || kind == TableKind::fill_classes ||
         kind == TableKind::spell_classes;
}

/// The row behind the last one of a table that the row `limit` ends.
std::size_t end_of(const Table& table, const Candidate& c, std::size_t limit) {
  const std::size_t first = c.located.first_row;
  if (compact(c.headings.kind)) {
    std::size_t row = first;
    while (row < limit && !row_is_blank(table, row, c.headings))
      ++row;
    return row;
  }
  std::size_t end = limit;
  if (limit < table.rows()) { // another table follows: its title is not a record of this one
    std::size_t title = limit;
    while (title > first && row_is_title(table, title - 1, c.headings))
      --title;
    if (title < limit && title > first && row_is_blank(table, title - 1, c.headings))
      end = title;
  }
  while (end > first && row_is_blank(table, end - 1, c.headings))
    --end;
  return end;
}

/// A row below the headings that says the units: unit names under quantities, and no keys.
bool read_units_row(const Table& table, std::size_t row, FoundHeadings& headings) {
  const auto specs = fields(headings.kind);
  std::vector<Unit> said(specs.size(), Unit::none);
  bool any = false;
  for (std::size_t i = 0; i < specs.size(); ++i) {
    if (headings.columns[i] < 0 || specs[i].role != Role::typed)
      continue;
    const Cell& cell = table.at(row, static_cast<std::size_t>(headings.columns[i]));
    if (!holds_something(cell))
      continue;
    if (cell.kind() != CellKind::text)
      return false;
    const bool key = specs[i].required && specs[i].type != FieldType::quantity;
    if (specs[i].type == FieldType::quantity) {
      said[i] = lone_unit(cell.text());
      any |= said[i] != Unit::none;
    } else if (key) {
      return false;
    }
  }
  if (!any)
    return false;
  for (std::size_t i = 0; i < specs.size(); ++i)
    if (headings.units[i] == Unit::none)
      headings.units[i] = said[i];
  return true;
}

std::vector<Candidate> tables_of(const Table& table) {
  std::vector<Candidate> found;
  std::vector<std::size_t> open; // tables that no later heading row has ended
  HeadingRows rows(table);
  const auto close = [&](std::size_t index, std::size_t limit) {
    found[index].located.end_row = end_of(table, found[index], limit);
  };
  for (std::size_t row = 0; row < table.rows(); ++row) {
    if (row >= searched_closely) {
      if (open.empty())
        break;
      const auto is_data = [&](std::size_t index) {
        const std::int32_t column = found[index].numbers;
        if (column < 0)
          return false;
        const CellKind kind = table.at(row, static_cast<std::size_t>(column)).kind();
        return kind == CellKind::number || kind == CellKind::date;
      };
      if (std::any_of(open.begin(), open.end(), is_data))
        continue;
    }
    for (FoundHeadings& headings : rows.at(row)) {
      std::erase_if(open, [&](std::size_t index) {
        if (!overlap(found[index].headings, headings))
          return false;
        close(index, row);
        return true;
      });
      Candidate c;
      c.located.table = &table;
      c.located.heading_row = row;
      c.located.first_row = row + 1;
      if (row + 1 < table.rows() && read_units_row(table, row + 1, headings))
        ++c.located.first_row;
      c.located.columns = headings.columns;
      c.located.units = headings.units;
      c.headings = std::move(headings);
      c.numbers = number_column(c.headings);
      open.push_back(found.size());
      found.push_back(std::move(c));
    }
  }
  for (std::size_t index : open)
    close(index, table.rows());
  return found;
}

} // namespace

bool only_blanks(std::string_view text) {
  while (!text.empty()) {
    if (text.starts_with("\u00a0"))
      text.remove_prefix(2);
    else if (text.front() == ' ' || (text.front() >= '\t' && text.front() <= '\r'))
      text.remove_prefix(1);
    else
      return false;
  }
  return true;
}

std::size_t position(Field field) {
  const FieldSpec& s = spec(field);
  return static_cast<std::size_t>(field) - static_cast<std::size_t>(fields(s.table).front().field);
}

void locate_tables(Season& season) {
  std::array<int, table_kinds> best{};
  best.fill(std::numeric_limits<int>::min());
  for (const auto& sheet : season.sheets)
    for (Candidate& c : tables_of(*sheet)) {
      const auto kind = static_cast<std::size_t>(c.headings.kind);
      Located& place = season.located[kind];
      const bool better = c.headings.score > best[kind];
      if (place.found()) {
        const Located& left = better ? place : c.located;
        const Located& taken = better ? c.located : place;
        season.remarks.push_back(fmt::format(
            "There are two tables of {}: at {} and at {}. The first of these was read, the second was not.",
            in_words(c.headings.kind), to_text(taken.table->place(taken.heading_row, 0)),
            to_text(left.table->place(left.heading_row, 0))));
      }
      if (better) {
        best[kind] = c.headings.score;
        place = std::move(c.located);
      }
    }
}

} // namespace wetspell
