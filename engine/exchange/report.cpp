#include "exchange/report.hpp"

#include "check/findings_table.hpp"
#include "exchange/csv.hpp"
#include "exchange/finding_json.hpp"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <array>

namespace wetspell {

namespace {

std::string changes_in_words(const Finding& finding) {
  std::string words;
  for (const Change& change : finding.changes)
    words +=
        fmt::format("{}{} = {}", words.empty() ? "" : ", ", to_text(change.place), to_text(change.content));
  return words;
}

/// The pool's code as it stands in the finding's row; empty for rows that are not about one pool.
std::string pool_of(const Season& season, const Finding& finding) {
  switch (finding.table) {
  case TableKind::pools:
    return season.pools[finding.record].code;
  case TableKind::visits:
    return to_text(season.cell(Field::visit_pool, season.visits[finding.record].row));
  case TableKind::life:
    return to_text(season.cell(Field::life_pool, season.life[finding.record].row));
  default:
    return {};
  }
}

std::string_view heading(Level level) {
  switch (level) {
  case Level::fix:
    return "To fix: these cannot be right";
  case Level::ask:
    return "To ask: doubtful, the person who was there can tell";
  case Level::note:
    return "Worth knowing";
  }
  return {};
}

} // namespace

std::string report_text(const Season& season, const CheckReport& report, std::string_view file) {
  std::string out = fmt::format("{}: {}\n", file, verdict(report));
  for (const std::string& remark : season.remarks)
    out += fmt::format("  Not read: {}\n", remark);
  for (const Level level : {Level::fix, Level::ask, Level::note}) {
    bool first = true;
    for (const Finding& finding : report.findings) {
      if (finding.rule->level != level || !finding.open())
        continue;
      if (first)
        out += fmt::format("\n{}\n", heading(level));
      first = false;
      out += fmt::format("  {}  {}  {}\n", to_text(finding.place), finding.message, finding.advice);
      if (!finding.changes.empty())
        out += fmt::format("      proposed: {}\n", changes_in_words(finding));
    }
  }
  return out;
}

std::string report_csv(const Season& season, const CheckReport& report) {
  const auto columns = fields(TableKind::findings);
  const Table body = findings_table(season, report, Place{"findings", 2, 0});
  Table table(Place{"findings", 1, 0}, body.rows() + 1, columns.size());
  for (std::size_t c = 0; c < columns.size(); ++c) {
    table.at(0, c) = Cell::of_text(std::string(columns[c].heading));
    for (std::size_t r = 0; r < body.rows(); ++r)
      table.at(r + 1, c) = body.at(r, c);
  }
  return csv_from_table(table);
}

std::string report_json(const Season& season, const CheckReport& report, std::string_view file) {
  using json = nlohmann::ordered_json;
  json findings = json::array();
  for (const Finding& finding : report.findings) {
    json entry = finding_json(finding);
    entry["table"] = spec(finding.table).name;
    entry["record"] = finding.record + 1;
    entry["pool"] = pool_of(season, finding);
    entry["answer"] = finding.open() ? json(nullptr) : json(finding.answer);
    if (finding.changes.size() > 1) {
      json all = json::array();
      for (const Change& each : finding.changes)
        all.push_back({{"sheet", each.place.sheet},
                       {"row", each.place.row},
                       {"column", column_letters(each.place.column)},
                       {"content", to_text(each.content)}});
      entry["replacements"] = std::move(all);
    }
    findings.push_back(std::move(entry));
  }
  json rules_run = json::array();
  for (std::size_t i = 0; i < report.tallies.size(); ++i) {
    const Tally& tally = report.tallies[i];
    rules_run.push_back({{"rule", rules()[i].name},
                         {"holds", tally.holds},
                         {"fails", tally.fails},
                         {"undecided", tally.undecided},
                         {"could_not_run", tally.could_not_run}});
  }
  const json whole{{"file", file},
                   {"rows_checked", report.rows_checked},
                   {"findings", std::move(findings)},
                   {"rules", std::move(rules_run)},
                   {"remarks", season.remarks}};
  return whole.dump(2, ' ', false, json::error_handler_t::replace) + "\n";
}

} // namespace wetspell
