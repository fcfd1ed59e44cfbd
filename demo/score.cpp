#include "demo/score.hpp"

#include "check/rule.hpp"
#include "exchange/csv.hpp"
#include "season/field.hpp"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <map>
#include <set>

namespace wetspell::demo {

namespace {

using nlohmann::json;

struct Spot {
  std::string table, field, pool, family, how, before, after;
  std::size_t record = 0;
};

std::vector<Spot> spots_of(const Table& table) {
  std::map<std::string, std::size_t> column;
  for (std::size_t c = 0; c < table.columns(); ++c)
    column[to_text(table.at(0, c))] = c;
  std::vector<Spot> spots;
  for (std::size_t r = 1; r < table.rows(); ++r) {
    const auto text = [&](const char* heading) { return to_text(table.at(r, column.at(heading))); };
    spots.push_back({text("table"), text("field"), text("pool"), text("family"), text("how"), text("before"),
                     text("after"), static_cast<std::size_t>(table.at(r, column.at("row")).number())});
  }
  return spots;
}

bool same_row(const json& finding, const Spot& spot) {
  return finding["table"] == spot.table && finding["record"] == spot.record;
}

/// The finding is on the spoiled cell, or is one of the mistake's own family in its row.
bool sees(const json& finding, const Spot& spot) {
  if (!same_row(finding, spot))
    return false;
  const RuleSpec* rule = rule_named(finding["rule"].get<std::string>());
  return finding["field"] == spot.field || (rule != nullptr && name(rule->family) == spot.family);
}

std::string in_words(const json& finding) {
  return fmt::format("{} {}{}: {}", finding["rule"].get<std::string>(), finding["column"].get<std::string>(),
                     finding["row"].get<std::size_t>(), finding["message"].get<std::string>());
}

} // namespace

Result<Score> score(std::string_view spoiled_csv, std::string_view findings_json) {
  const auto spoiled = table_from_csv(spoiled_csv, "spoiled");
  if (!spoiled)
    return spoiled.error();
  const json report = json::parse(findings_json, nullptr, false);
  if (report.is_discarded() || !report.contains("findings"))
    return Problem{ProblemKind::bad_argument, "The findings are not the JSON that the check writes."};

  const auto spots = spots_of(spoiled.value());
  const json& findings = report["findings"];
  Score score;
  score.spoiled = spots.size();
  std::set<std::string> pools;
  for (const Spot& spot : spots) {
    pools.insert(spot.pool);
    if (std::any_of(findings.begin(), findings.end(),
                    [&](const json& finding) { return sees(finding, spot); }))
      ++score.found;
    else
      score.missed.push_back(fmt::format("{} {} of {}, record {}: {} ('{}' became '{}')", spot.table,
                                         spot.field, spot.pool, spot.record, spot.how, spot.before,
                                         spot.after));
  }
  for (const json& finding : findings) {
    if (std::any_of(spots.begin(), spots.end(), [&](const Spot& spot) { return sees(finding, spot); }))
      continue;
    if (pools.count(finding["pool"].get<std::string>()) > 0) {
      ++score.echoes;
    } else if (finding["level"] == "note") {
      ++score.notes;
    } else {
      ++score.false_alarms;
      score.raised_without_cause.push_back(in_words(finding));
    }
  }
  return score;
}

std::string in_words(const Score& score) {
  std::string out = fmt::format(
      "Of {} spoiled cells the check found {} and missed {}.\n"
      "It raised {} false alarms, {} other findings at pools with a spoiled cell, and {} plain notes.\n",
      score.spoiled, score.found, score.spoiled - score.found, score.false_alarms, score.echoes, score.notes);
  for (const std::string& each : score.missed)
    out += "  missed: " + each + "\n";
  for (const std::string& each : score.raised_without_cause)
    out += "  without cause: " + each + "\n";
  return out;
}

} // namespace wetspell::demo
