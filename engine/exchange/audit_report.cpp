#include "exchange/audit_report.hpp"

#include "exchange/csv.hpp"
#include "exchange/finding_json.hpp"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <array>
#include <cmath>
#include <map>

namespace wetspell {

namespace {

using json = nlohmann::ordered_json;

std::string fields_in_words(const std::vector<Field>& fields) {
  std::string words;
  for (const Field field : fields)
    words += fmt::format("{}{}", words.empty() ? "" : ", ", spec(field).heading);
  return words;
}

/// A row that is no record, as the sheet has it: a column where the table is turned.
bool is_column(const Audit& audit, std::size_t table) {
  return audit.frames[table].turned;
}

std::string text_of_table(const Audit& audit, std::size_t index) {
  const AuditedTable& table = audit.tables[index];
  const std::string_view layout = in_words(table.layout, table.kind);
  std::string out = fmt::format(
      "\n{}, rows {} to {}: {}{}{} ({})\n", table.sheet, table.first_row, table.last_row,
      table.kind ? fmt::format("a table of {}", in_words(*table.kind)) : std::string("no table of ours"),
      layout.empty() ? "" : ", ", layout, table.reason);
  if (!table.date_reason.empty())
    out += fmt::format("  Dates: {}\n", table.date_reason);
  for (const AuditedColumn& column : table.columns) {
    const Mapping& m = column.mapping;
    if (m.heading.empty() && m.open())
      continue;
    const std::string meaning = meaning_word(m.field, m.part, m.count);
    const std::string unit = m.field && m.unit != Unit::none ? fmt::format(", {}", symbol(m.unit)) : "";
    out += fmt::format("  {:<3} \"{}\" -> {}{} ({:.2f}; {})\n", column.spot, m.heading,
                       meaning.empty() ? "left open" : meaning, unit, m.confidence, m.reason);
  }
  for (const AuditedRow& row : table.passed)
    if (row.use != RowUse::blank)
      out += fmt::format("  {} passed over: {}, \"{}\"\n",
                         is_column(audit, index) ? "column " + column_letters(row.row - 1)
                                                 : fmt::format("row {}", row.row),
                         name(row.use), row.text);
  return out;
}

json heading_json(const AuditedColumn& column) {
  const Mapping& m = column.mapping;
  json field = nullptr;
  if (m.field)
    field = spec(*m.field).name;
  else if (!m.open())
    field = meaning_word(m.field, m.part, m.count);
  return {{"column", column.spot},
          {"heading", m.heading},
          {"field", std::move(field)},
          {"unit", m.field && m.unit != Unit::none ? json(symbol(m.unit)) : json(nullptr)},
          {"confidence", std::round(m.confidence * 100) / 100},
          {"reason", m.reason}};
}

json rows_json(const RowCounts& rows) {
  return {{"usable", rows.usable}, {"after_answers", rows.after_answers}, {"unusable", rows.unusable}};
}

json table_json(const Audit& audit, std::size_t index) {
  const AuditedTable& table = audit.tables[index];
  json headings = json::array();
  for (const AuditedColumn& column : table.columns)
    if (!column.mapping.heading.empty() || !column.mapping.open())
      headings.push_back(heading_json(column));
  json findings = json::array();
  for (const AuditFinding& each : audit.findings)
    if (each.table == index)
      findings.push_back(finding_json(each.finding));
  json unread = json::array();
  for (const Unread& each : audit.unread)
    if (each.table == index)
      unread.push_back({{"row", each.place.row},
                        {"column", column_letters(each.place.column)},
                        {"text", each.text},
                        {"reason", each.reason}});
  json passed = json::array();
  for (const AuditedRow& row : table.passed)
    passed.push_back({is_column(audit, index)
                          ? json::object_t::value_type{"column", column_letters(row.row - 1)}
                          : json::object_t::value_type{"row", row.row},
                      {"what", name(row.use)},
                      {"text", row.text}});
  json lacking = json::array();
  for (const LackingRule& each : audit.lacking)
    lacking.push_back({{"rule", each.rule->name}, {"missing", fields_in_words(each.missing)}});
  json reasons = json::array();
  for (const CommonReason& reason : audit.reasons)
    reasons.push_back({{"reason", reason.words}, {"rows", reason.rows}});
  return {{"file", audit.file},
          {"sheet", table.sheet},
          {"table", {{"first_row", table.first_row}, {"last_row", table.last_row}}},
          {"kind", table.kind ? json(spec(*table.kind).name) : json(nullptr)},
          {"layout", name(table.layout)},
          {"why", table.reason},
          {"dates", table.date_reason},
          {"headings", std::move(headings)},
          {"rows", rows_json(table.rows)},
          {"reasons", std::move(reasons)},
          {"findings", std::move(findings)},
          {"unread", std::move(unread)},
          {"passed_over", std::move(passed)},
          {"could_not_run", std::move(lacking)},
          {"remarks", audit.remarks}};
}

} // namespace

std::string audit_text(const Audit& audit) {
  std::string out;
  for (const std::string& line : verdict_lines(audit))
    out += line + "\n";
  for (const std::string& remark : audit.remarks)
    out += remark + "\n";
  for (std::size_t index = 0; index < audit.tables.size(); ++index)
    out += text_of_table(audit, index);
  if (!audit.findings.empty())
    out += "\nWhat was found\n";
  for (const AuditFinding& each : audit.findings)
    out += fmt::format("  {}  [{}] {}  {}\n", to_text(each.finding.place), name(each.finding.rule->level),
                       each.finding.message, each.finding.advice);
  if (!audit.unread.empty())
    out += "\nWhat was left unread\n";
  for (const Unread& unread : audit.unread)
    out += fmt::format("  {}  \"{}\" under \"{}\": {}\n", to_text(unread.place), unread.text, unread.heading,
                       unread.reason);
  if (audit.unread.size() < audit.unread_count)
    out += fmt::format("  and {} more\n", audit.unread_count - audit.unread.size());
  std::map<std::string, std::string> lacking; // columns to the rules that miss them
  for (const LackingRule& each : audit.lacking) {
    std::string& rules = lacking[fields_in_words(each.missing)];
    rules += fmt::format("{}{}", rules.empty() ? "" : ", ", each.rule->name);
  }
  if (!lacking.empty())
    out += "\nRules that could not run, by the columns they lack\n";
  for (const auto& [columns, rules] : lacking)
    out += fmt::format("  {}: {}\n", columns, rules);
  return out;
}

std::string audit_csv(std::span<const Audit> audits) {
  constexpr std::array headings{"File",  "Sheet", "Row",  "Column", "What",
                                "Level", "Rule",  "Text", "Why",    "What to do"};
  std::size_t rows = 1;
  for (const Audit& audit : audits) {
    rows += audit.findings.size() + audit.unread.size();
    for (const AuditedTable& table : audit.tables)
      rows += table.passed.size();
  }
  Table out(Place{"audit", 1, 0}, rows, headings.size());
  for (std::size_t column = 0; column < headings.size(); ++column)
    out.at(0, column) = Cell::of_text(headings[column]);
  std::size_t row = 0;
  const auto add = [&](const std::array<std::string, headings.size()>& texts) {
    ++row;
    for (std::size_t column = 0; column < texts.size(); ++column)
      out.at(row, column) = Cell::of_text(texts[column]);
  };
  for (const Audit& audit : audits) {
    for (const AuditFinding& each : audit.findings) {
      const Finding& f = each.finding;
      add({audit.file, f.place.sheet, std::to_string(f.place.row), column_letters(f.place.column), "finding",
           std::string(name(f.rule->level)), std::string(f.rule->name), f.value, f.message, f.advice});
    }
    for (const Unread& unread : audit.unread)
      add({audit.file, unread.place.sheet, std::to_string(unread.place.row),
           column_letters(unread.place.column), "unread", "", "", unread.text, unread.reason, ""});
    for (std::size_t index = 0; index < audit.tables.size(); ++index)
      for (const AuditedRow& passed : audit.tables[index].passed)
        add({audit.file, audit.tables[index].sheet, is_column(audit, index) ? "" : std::to_string(passed.row),
             is_column(audit, index) ? column_letters(passed.row - 1) : "", "passed over", "", "",
             passed.text, std::string(name(passed.use)), ""});
  }
  return csv_from_table(out);
}

std::string audit_json(std::span<const Audit> audits) {
  json all = json::array();
  for (const Audit& audit : audits) {
    for (std::size_t index = 0; index < audit.tables.size(); ++index)
      all.push_back(table_json(audit, index));
    if (audit.tables.empty())
      all.push_back({{"file", audit.file},
                     {"sheet", nullptr},
                     {"table", nullptr},
                     {"headings", json::array()},
                     {"rows", rows_json({})},
                     {"findings", json::array()},
                     {"unread", json::array()}});
  }
  const json whole = all.size() == 1 ? std::move(all[0]) : std::move(all);
  return whole.dump(2, ' ', false, json::error_handler_t::replace) + "\n";
}

} // namespace wetspell
