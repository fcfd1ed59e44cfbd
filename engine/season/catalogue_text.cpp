#include "season/catalogue_text.hpp"

#include "measure/class_table.hpp"
#include "quantity/print.hpp"
#include "season/field.hpp"
#include "season/limits.hpp"
#include "season/settings.hpp"
#include "season/species.hpp"
#include "season/words.hpp"

#include <fmt/format.h>

#include <array>
#include <cmath>

namespace wetspell {

namespace {

/// A text inside a table's cell: the bar would end the cell.
std::string cell(std::string_view text) {
  std::string safe;
  for (char c : text)
    safe += c == '|' ? std::string("\\|") : std::string(1, c);
  return safe;
}

/// "a|b" as "a; b".
std::string listed(std::string_view parts) {
  std::string text;
  for_each_part(parts,
                [&](std::string_view part) { text += fmt::format("{}{}", text.empty() ? "" : "; ", part); });
  return cell(text);
}

std::string_view role_words(Role role) {
  switch (role) {
  case Role::typed:
    return "typed";
  case Role::derived:
    return "worked out";
  case Role::check:
    break;
  }
  return "check";
}

std::string holds(const FieldSpec& s) {
  switch (s.type) {
  case FieldType::text:
    return "text";
  case FieldType::key:
    return "its own code";
  case FieldType::pool_ref:
    return "a pool's code";
  case FieldType::person_ref:
    return "a person's code";
  case FieldType::species_ref:
    return "a species";
  case FieldType::quantity:
    return std::string(s.kind == Kind::percent ? "per cent" : name(s.kind));
  case FieldType::choice:
    return fmt::format("word: {}", s.choices->name);
  case FieldType::depth_class:
    return "a depth class";
  case FieldType::fill_class:
    return "a fill class";
  }
  return {};
}

std::string table_of_fields(const TableSpec& table) {
  std::string page = fmt::format("## {} (`{}`)\n\n{}\n\n", table.sheet, table.name, table.help);
  page += "| heading | name | holds | filled | what to type | also read as |\n|---|---|---|---|---|---|\n";
  for (const FieldSpec& s : fields(table.table))
    page +=
        fmt::format("| {}{} | `{}` | {} | {} | {} | {} |\n", cell(s.heading), s.required ? " (needed)" : "",
                    s.name, holds(s), role_words(s.role), cell(s.help), listed(s.also));
  return page + "\n";
}

std::string table_of_words() {
  std::string page =
      "## Words\n\nCase, blanks, hyphens and full stops do not matter. In every list \"not known\", "
      "\"cannot tell\", \"not sure\", \"n/a\", \"?\" and a lone dash say that the answer is not "
      "known.\n\n| list | word | also read |\n|---|---|---|\n";
  for (const ChoiceList* list :
       {&water_words(), &rain_words(), &depth_tool_words(), &size_tool_words(), &yes_no_words(),
        &channel_words(), &joined_words(), &edge_seen_words(), &counting_way_words(), &seen_as_words(),
        &unit_system_words(), &answer_words()})
    for (const ChoiceWord& word : list->words)
      page += fmt::format("| {} | {} | {} |\n", list->name, cell(word.label), listed(word.also));
  return page + "\n";
}

std::string table_of_classes(const ClassTable& table) {
  const std::string_view sign = symbol(table.unit);
  const auto limit = [&](double value) {
    return std::isfinite(value) ? fmt::format("{}{}{}", plain(value), sign.empty() ? "" : " ", sign)
                                : std::string();
  };
  std::string page = fmt::format("| {} class | from | to |\n|---|---|---|\n", table.name);
  for (const ClassRow& row : table.rows)
    page += fmt::format("| {} | {} | {} |\n", cell(row.label), limit(row.low), limit(row.high));
  return page + fmt::format("| {} | | |\n\n", cell(table.not_known));
}

std::string table_of_settings() {
  std::string page =
      "## Settings\n\n| setting | name | usual value | may be | what it does |\n|---|---|---|---|---|\n";
  for (const SettingSpec& s : settings_catalogue())
    page += fmt::format("| {} | `{}` | {} | {} | {} |\n", cell(s.label), s.name, cell(s.default_value),
                        listed(s.choices), cell(s.help));
  return page + "\n";
}

std::string table_of_species() {
  std::string page =
      "## Usual animals\n\nTaken where the workbook has no table of species of its own. Common practice, "
      "from memory, no source.\n\n| species | seen as | from | to | at most |\n|---|---|---|---|---|\n";
  for (const SpeciesSpec& s : species_catalogue())
    page += fmt::format("| {} | {} | {} | {} | {} |\n", s.name,
                        seen_as_words().words[static_cast<std::size_t>(s.seen_as)].label,
                        day_of_year_text(s.first_day), day_of_year_text(s.last_day),
                        s.most > 0 ? plain(s.most) : std::string());
  return page;
}

} // namespace

std::string fields_markdown() {
  std::string page =
      "# Fields\n\nEvery column that Wetspell knows. Tables are found by their headings, in any sheet and in "
      "any "
      "order of columns; case, punctuation, line breaks and a remark in brackets behind a heading do not "
      "matter. A unit in brackets, such as \"Depth (cm)\", or a row of units below the headings, is the unit "
      "of "
      "the numbers in that column that stand without one; otherwise the settings say it. Fields marked as "
      "needed make a row usable.\n\n";
  for (const TableSpec& table : tables())
    page += table_of_fields(table);
  page += table_of_words();
  page += "## Usual classes\n\nTaken where the workbook has no class tables of its own. Classes of depth and "
          "of fill: common practice, no source. Classes of wet spells, in days: judgement, no source.\n\n";
  page += table_of_classes(default_depth_classes());
  page += table_of_classes(default_fill_classes());
  page += table_of_classes(default_spell_classes());
  page += table_of_settings();
  page += table_of_species();
  return page;
}

std::string limits_markdown() {
  std::string page =
      "# Limits\n\nWhat the rules compare with. A workbook can change every one in its table of limits, "
      "in the unit given here or in another unit of the same kind.\n\n"
      "| limit | value | what it says | where it comes from |\n|---|---|---|---|\n";
  for (const LimitSpec& s : limits_catalogue()) {
    const std::string_view unit = symbol(s.unit);
    page += fmt::format("| `{}` | {}{}{} | {} | {} |\n", s.name, plain(s.value), unit.empty() ? "" : " ",
                        unit, cell(s.meaning), cell(s.source));
  }
  return page;
}

} // namespace wetspell
