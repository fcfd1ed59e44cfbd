#include "state_formulas.hpp"

#include "cautions.hpp"
#include "check/rule.hpp"
#include "formula.hpp"
#include "layout.hpp"
#include "limit_cells.hpp"
#include "names.hpp"
#include "season/settings.hpp"

#include <fmt/format.h>

namespace wetspell::workbook {
namespace {

constexpr std::string_view this_version = WETSPELL_VERSION;
constexpr std::string_view good_news = "Ready:";

/// "1.2.3" in the cell `text` as one number that grows with the version.
std::string version_number(const std::string& text) {
  const std::string first = fmt::format("FIND(\".\";{})", text);
  const std::string second = fmt::format("FIND(\".\";{};{}+1)", text, first);
  return fmt::format(
      "(VALUE(LEFT({0};{1}-1))*1000000+VALUE(MID({0};{1}+1;{2}-{1}-1))*1000+VALUE(MID({0};{2}+1;9)))", text,
      first, second);
}

/// The same for this program's version.
long this_version_number() {
  long number = 0;
  long part = 0;
  for (const char c : this_version) {
    if (c == '.') {
      number = number * 1000 + part;
      part = 0;
    } else {
      part = part * 10 + (c - '0');
    }
  }
  return number * 1000 + part;
}

/// Findings of a level that nobody has answered.
std::string open_findings(Level level) {
  return fmt::format("COUNTIFS({};{};{};\"=\")", column_name(Field::finding_level), text_literal(name(level)),
                     column_name(Field::finding_answer));
}

} // namespace

std::string version_here() {
  const std::string version = call("POOL.VERSION", {});
  return fmt::format("IF(ISERROR(LEN({0})+0*NOW());\"none\";{0})", version);
}

std::string made_for() {
  return fmt::format("This workbook was made for Wetspell {}.", this_version);
}

std::string extension_state() {
  const std::string missing =
      "The Wetspell extension is missing on this computer: nothing is worked out or checked. What you type "
      "is "
      "safe. Install the extension (Tools, Extension Manager) and open the workbook again.";
  const std::string older = fmt::format(" is older than this workbook, which was made for {}. Update the "
                                        "extension; until then some cells may be wrong or empty.",
                                        this_version);
  const std::string new_enough = fmt::format("{}>={}", version_number("version_here"), this_version_number());
  return fmt::format("IF(NOW()>0;IF(version_here=\"none\";{0};IF({1};\"{3} Wetspell \"&version_here&\" works "
                     "in this workbook.\";\"Wetspell \"&version_here&{2})))",
                     text_literal(missing), new_enough, text_literal(older), good_news);
}

std::string is_good_news(const std::string& cell) {
  return fmt::format("LEFT({};{})={}", cell, good_news.size(), text_literal(good_news));
}

std::string whose_season() {
  return fmt::format(
      "IF(setting_programme=\"\";{};setting_programme)&IF(setting_season_year=\"\";\"\";\" · season \"&"
      "setting_season_year)",
      text_literal("Type once what you saw; ask while it can still be asked."));
}

std::string season_state() {
  const std::string levels = column_name(Field::finding_level);
  const std::string visits = column_name(Field::visit_pool), doubts = column_name(Field::visit_doubts);
  return fmt::format(
      "\"Visits: \"&COUNTA({0})&\" typed, \"&COUNTIF({1};\"?*\")&\" to look at again.   \"&IF(COUNTA({2})=0;"
      "\"Season check: no findings are listed. It is run from the menu Wetspell.\";"
      "\"Season check: \"&{3}&\" to fix, \"&{4}&\" to ask, \"&{5}&\" to note are still open (sheet {6}).\")",
      visits, doubts, levels, open_findings(Level::fix), open_findings(Level::ask),
      open_findings(Level::note), spec(TableKind::findings).sheet);
}

std::string wading_caution() {
  return fmt::format("\"{}\"",
                     deep_water_caution(fmt::format("\"&ROUND({};0)&\" \"&unit_depth&\"",
                                                    limit_in_sheet(Limit::depth_wading, "unit_depth"))));
}

} // namespace wetspell::workbook
