#include "audit/headings_sheet.hpp"

#include "season/words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace wetspell {

namespace {

constexpr std::array<std::string_view, headings_columns> titles{"Heading",    "Where",  "Field",  "Unit",
                                                                "Confidence", "Reason", "Written"};
constexpr std::string_view by_wetspell = "Wetspell: ";
constexpr std::string_view by_person = "a person: ";

std::string plain(std::string_view text) {
  std::string buffer;
  return std::string(plain_word(text, buffer));
}

std::string content(const std::string& field, const std::string& unit) {
  return unit.empty() ? field : fmt::format("{}, {}", field, unit);
}

std::optional<std::size_t> heading_row(const Table& sheet) {
  if (sheet.columns() < headings_columns)
    return std::nullopt;
  for (std::size_t row = 0; row < sheet.rows(); ++row) {
    bool all = true;
    for (std::size_t column = 0; all && column < titles.size(); ++column)
      all = to_text(sheet.at(row, column)) == titles[column];
    if (all)
      return row;
  }
  return std::nullopt;
}

/// Which rows of a sheet count, and how lately they were changed.
enum class Said { nothing, earlier, now };

struct Saying {
  Said when = Said::nothing;
  CorrectedHeading words;
};

Saying saying(const Table& sheet, std::size_t row) {
  Saying said;
  said.words = {to_text(sheet.at(row, headings_heading)), to_text(sheet.at(row, headings_field)),
                to_text(sheet.at(row, headings_unit))};
  if (plain(said.words.field).empty() || plain(said.words.heading).empty())
    return said;
  const std::string written = to_text(sheet.at(row, headings_written));
  const bool person = written.starts_with(by_person);
  std::string_view before = written;
  for (const std::string_view who : {by_person, by_wetspell})
    if (before.starts_with(who))
      before.remove_prefix(who.size());
  if (before == content(said.words.field, said.words.unit)) {
    said.when = person ? Said::earlier : Said::nothing;
    return said;
  }
  said.when = Said::now;
  // The unit was that of another field: left standing, it says nothing about the new one.
  const std::string& unit = said.words.unit;
  if (!unit.empty() && before.ends_with(", " + unit) && before != content(said.words.field, unit))
    said.words.unit.clear();
  return said;
}

/// One row of the new sheet, for all columns that have the heading and were taken for the same.
struct Row {
  std::string heading, key, field, unit, reason;
  double confidence = 1;
  bool given = false;
  std::vector<Place> places;
};

Place heading_place(const Audit& audit, std::size_t table, std::size_t column) {
  const Frame& frame = audit.frames[table];
  Place place = frame.first;
  (frame.turned ? place.row : place.column) += column;
  return place;
}

std::vector<Row> rows_of(const Audit& audit, const Corrections& corrections) {
  std::vector<Row> rows;
  for (std::size_t t = 0; t < audit.tables.size(); ++t)
    for (const AuditedColumn& column : audit.tables[t].columns) {
      const Mapping& m = column.mapping;
      if (m.heading.empty())
        continue;
      Row row;
      row.heading = m.heading;
      row.key = plain(m.heading);
      const TableKind kind = audit.tables[t].kind.value_or(TableKind::visits);
      const auto at = corrections.map.which(m.heading, kind);
      const CorrectedHeading* given = at ? &corrections.rows[*at] : nullptr;
      row.given = given != nullptr;
      // A person's word stays as it is, even where it could not be followed; the reason says so. Where it was
      // given for another table, the field of this one stands in its place.
      const bool moved = row.given && m.field && m.field != corrections.map.at(*at).field;
      row.field = row.given && !moved ? given->field : meaning_word(m.field, m.part, m.count);
      row.unit = m.field && m.unit != Unit::none ? std::string(symbol(m.unit)) : row.given ? given->unit : "";
      row.reason = m.reason;
      row.confidence = m.confidence;
      const auto same = std::find_if(rows.begin(), rows.end(), [&](const Row& each) {
        return each.key == row.key && each.field == row.field && each.unit == row.unit;
      });
      Row& mine = same == rows.end() ? rows.emplace_back(std::move(row)) : *same;
      if (same != rows.end() && m.confidence < mine.confidence) {
        mine.confidence = m.confidence;
        mine.reason = m.reason;
      }
      mine.places.push_back(heading_place(audit, t, m.column));
    }
  for (const CorrectedHeading& each : corrections.rows) {
    const std::string key = plain(each.heading);
    if (std::none_of(rows.begin(), rows.end(), [&](const Row& row) { return row.key == key; }))
      rows.push_back({each.heading,
                      key,
                      each.field,
                      each.unit,
                      "no table has this heading now; kept for the day one has it again",
                      1,
                      true,
                      {}});
  }
  return rows;
}

} // namespace

Result<Corrections> corrections_on(const Table& sheet) {
  Corrections corrections;
  const auto heading = heading_row(sheet);
  if (!heading)
    return corrections;
  for (const Said wanted : {Said::now, Said::earlier}) {
    Table said(sheet.place(0, 0), sheet.rows(), headings_columns); // these rows alone, each in its place
    for (std::size_t column = 0; column < headings_columns; ++column)
      said.at(*heading, column) = sheet.at(*heading, column);
    for (std::size_t row = *heading + 1; row < sheet.rows(); ++row) {
      Saying here = saying(sheet, row);
      if (here.when != wanted)
        continue;
      said.at(row, headings_heading) = sheet.at(row, headings_heading);
      said.at(row, headings_field) = sheet.at(row, headings_field);
      said.at(row, headings_unit) = Cell::of_text(here.words.unit);
      corrections.rows.push_back(std::move(here.words));
    }
    auto map = read_given_map(said);
    if (!map)
      return map.error();
    corrections.map.add(map.value());
  }
  return corrections;
}

HeadingsSheet headings_sheet(const Audit& audit, const Corrections& corrections) {
  const std::vector<Row> rows = rows_of(audit, corrections);
  HeadingsSheet sheet{Table(Place{}, rows.size() + 1, headings_columns), {std::nullopt}};
  for (std::size_t column = 0; column < titles.size(); ++column)
    sheet.cells.at(0, column) = Cell::of_text(std::string(titles[column]));
  for (std::size_t at = 0; at < rows.size(); ++at) {
    const Row& row = rows[at];
    const auto put = [&](std::size_t column, const std::string& text) {
      sheet.cells.at(at + 1, column) = Cell::of_text(text);
    };
    put(headings_heading, row.heading);
    if (!row.places.empty())
      put(headings_where, row.places.size() == 1 ? to_text(row.places.front())
                                                 : fmt::format("{} and {} more", to_text(row.places.front()),
                                                               row.places.size() - 1));
    put(headings_field, row.field);
    put(headings_unit, row.unit);
    sheet.cells.at(at + 1, headings_confidence) = Cell::of_number(std::round(row.confidence * 100) / 100);
    put(headings_reason, row.reason);
    put(headings_written,
        fmt::format("{}{}", row.given ? by_person : by_wetspell, content(row.field, row.unit)));
    sheet.leads_to.push_back(row.places.empty() ? std::nullopt : std::optional(row.places.front()));
  }
  return sheet;
}

std::vector<std::string> words_for_field(const Audit& audit) {
  std::vector<std::string> words = meaning_words();
  for (const AuditedTable& table : audit.tables)
    for (const AuditedColumn& column : table.columns)
      if (column.mapping.count) {
        std::string word = meaning_word(std::nullopt, Part::none, column.mapping.count);
        if (std::find(words.begin(), words.end(), word) == words.end())
          words.push_back(std::move(word));
      }
  return words;
}

std::vector<std::string> words_for_unit() {
  std::vector<std::string> words;
  for (const UnitSpec& unit : units())
    if (!unit.symbol.empty())
      words.emplace_back(unit.symbol);
  return words;
}

} // namespace wetspell
