#include "check/findings_table.hpp"

#include "check/fingerprint.hpp"

#include <fmt/format.h>

namespace wetspell {

namespace {

struct Who {
  Field pool, date, person;
};

std::optional<Who> who(TableKind table) {
  if (table == TableKind::visits)
    return Who{Field::visit_pool, Field::visit_date, Field::visit_person};
  if (table == TableKind::life)
    return Who{Field::life_pool, Field::life_date, Field::life_person};
  return std::nullopt;
}

std::string replacement(const Season& season, const Finding& finding) {
  if (finding.changes.size() == 1)
    return to_text(finding.changes.front().content);
  std::string words;
  for (const Change& change : finding.changes) {
    const Located& located = season.where(finding.table);
    std::string heading = column_letters(change.place.column);
    if (const Table& table = *located.table; change.place.column >= table.sheet_column(0))
      heading = to_text(table.at(located.heading_row, change.place.column - table.sheet_column(0)));
    words += fmt::format("{}{}: {}", words.empty() ? "" : "; ", heading, to_text(change.content));
  }
  return words;
}

Cell content(const Season& season, const Finding& finding, Field field) {
  const RecordAt at{finding.table, finding.record};
  const auto names = who(finding.table);
  switch (field) {
  case Field::finding_level:
    return Cell::of_text(std::string(name(finding.rule->level)));
  case Field::finding_rule:
    return Cell::of_text(std::string(finding.rule->name));
  case Field::finding_where:
    return Cell::of_text(to_text(finding.place));
  case Field::finding_pool:
    if (finding.table == TableKind::pools)
      return cell_of(season, at, Field::pool_code);
    return names ? cell_of(season, at, names->pool) : Cell{};
  case Field::finding_date:
    return names ? cell_of(season, at, names->date) : Cell{};
  case Field::finding_person:
    if (finding.table == TableKind::people)
      return cell_of(season, at, Field::person_code);
    return names ? cell_of(season, at, names->person) : Cell{};
  case Field::finding_value:
    return Cell::of_text(finding.value);
  case Field::finding_message:
    return Cell::of_text(finding.message);
  case Field::finding_advice:
    return Cell::of_text(finding.advice);
  case Field::finding_replacement:
    return Cell::of_text(replacement(season, finding));
  case Field::finding_answer:
    return Cell::of_text(finding.answer);
  case Field::finding_note:
    return Cell::of_text(finding.note);
  case Field::finding_key:
    return Cell::of_text(finding.key);
  default:
    return {};
  }
}

} // namespace

Table findings_table(const Season& season, const CheckReport& report, Place origin) {
  const auto columns = fields(TableKind::findings);
  Table table(std::move(origin), report.findings.size(), columns.size());
  for (std::size_t row = 0; row < report.findings.size(); ++row)
    for (std::size_t column = 0; column < columns.size(); ++column)
      table.at(row, column) = content(season, report.findings[row], columns[column].field);
  return table;
}

std::vector<GivenAnswer> answers_in(const Season& season) {
  std::vector<GivenAnswer> answers;
  const Located& located = season.where(TableKind::findings);
  if (!located.found())
    return answers;
  for (std::size_t row = located.first_row; row < located.end_row; ++row) {
    const auto typed = [&](Field field) {
      return to_text(season.cell(field, static_cast<std::uint32_t>(row)));
    };
    GivenAnswer given{typed(Field::finding_key), typed(Field::finding_answer), typed(Field::finding_note)};
    if (!given.key.empty() && !(given.answer.empty() && given.note.empty()))
      answers.push_back(std::move(given));
  }
  return answers;
}

std::string verdict(const CheckReport& report) {
  return fmt::format("{}{} to fix, {} to ask, {} {} in {} {}; {} answered.",
                     report.cancelled ? "Stopped before the end: " : "", report.open_fix, report.open_ask,
                     report.open_note, report.open_note == 1 ? "note" : "notes", report.rows_checked,
                     report.rows_checked == 1 ? "row" : "rows", report.answered);
}

} // namespace wetspell
