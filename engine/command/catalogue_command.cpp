// The catalogues as lists: for a screen, for programs, and as the reference pages of the documentation.
#include "check/catalogue_text.hpp"
#include "check/rule.hpp"
#include "command/command.hpp"
#include "command/options.hpp"
#include "estimate/catalogue_text.hpp"
#include "estimate/figure.hpp"
#include "function/catalogue_text.hpp"
#include "function/function.hpp"
#include "season/catalogue_text.hpp"
#include "season/field.hpp"
#include "season/limits.hpp"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <string>

namespace wetspell::command {

namespace {

using json = nlohmann::ordered_json;

/// One catalogue in its three forms.
struct Forms {
  std::string (*text)();
  json (*entries)();
  std::string (*markdown)();
};

Exit list(const Arguments& arguments, std::string_view command, const Forms& forms) {
  namespace po = boost::program_options;
  po::options_description options;
  options.add_options()("format,f", po::value<std::string>()->default_value("text"),
                        "text, json or markdown");
  const auto parsed = parse(arguments, command, options, "");
  if (!parsed)
    return refuse(command, parsed.error().text);
  if (!parsed.value())
    return Exit::nothing_to_fix;
  const auto& format = (*parsed.value())["format"].as<std::string>();
  if (format == "text")
    fmt::print("{}", forms.text());
  else if (format == "json")
    fmt::print("{}\n", forms.entries().dump(2));
  else if (format == "markdown")
    fmt::print("{}", forms.markdown());
  else
    return refuse(command, fmt::format("the format is text, json or markdown, not '{}'.", format));
  return Exit::nothing_to_fix;
}

std::string rules_text() {
  std::string out;
  Family family{};
  for (const RuleSpec& rule : wetspell::rules()) {
    if (out.empty() || rule.family != family)
      out += fmt::format("{}{}\n", out.empty() ? "" : "\n", name(rule.family));
    family = rule.family;
    out += fmt::format("  {:<34} {:<5} {}\n", rule.name, name(rule.level), rule.expectation);
  }
  return out;
}

json rules_entries() {
  json all = json::array();
  for (const RuleSpec& rule : wetspell::rules()) {
    const auto columns = [](std::span<const Field> fields) {
      json named = json::array();
      for (const Field field : fields)
        named.push_back(fmt::format("{}.{}", spec(spec(field).table).name, spec(field).name));
      return named;
    };
    all.push_back({{"rule", rule.name},
                   {"family", name(rule.family)},
                   {"level", name(rule.level)},
                   {"scope", name(rule.scope)},
                   {"expectation", rule.expectation},
                   {"advice", rule.advice},
                   {"question", rule.question},
                   {"source", rule.source},
                   {"needs", columns(rule.needs)},
                   {"needs_one_of", columns(rule.needs_one_of)}});
  }
  return all;
}

std::string functions_text() {
  std::string out;
  for (const FunctionSpec& function : wetspell::functions()) {
    std::string parameters;
    for (const ParameterSpec& parameter : function.parameters)
      parameters += fmt::format("{}{}", parameters.empty() ? "" : "; ",
                                parameter.optional() ? fmt::format("[{}]", parameter.name)
                                                     : std::string(parameter.name));
    out += fmt::format("{}({})\n    {}\n", function.name, parameters, function.summary);
  }
  return out;
}

json functions_entries() {
  json all = json::array();
  for (const FunctionSpec& function : wetspell::functions()) {
    json parameters = json::array();
    for (const ParameterSpec& parameter : function.parameters)
      parameters.push_back(
          {{"name", parameter.name}, {"help", parameter.help}, {"optional", parameter.optional()}});
    all.push_back({{"function", function.name},
                   {"in_documents", document_name(function)},
                   {"category", function.category},
                   {"summary", function.summary},
                   {"parameters", std::move(parameters)}});
  }
  return all;
}

std::string_view word(Role role) {
  return role == Role::typed ? "typed" : role == Role::derived ? "worked out" : "check";
}

std::string fields_text() {
  std::string out;
  for (const TableSpec& table : tables()) {
    out += fmt::format("{}{}: {}\n", out.empty() ? "" : "\n", table.name, table.help);
    for (const FieldSpec& field : wetspell::fields(table.table))
      out +=
          fmt::format("  {:<20} {:<26} {:<10} {}\n", field.name, field.heading, word(field.role), field.help);
  }
  return out;
}

json fields_entries() {
  json all = json::array();
  for (const FieldSpec& field : wetspell::fields())
    all.push_back({{"table", spec(field.table).name},
                   {"field", field.name},
                   {"heading", field.heading},
                   {"role", word(field.role)},
                   {"kind", field.type == FieldType::quantity ? json(name(field.kind)) : json(nullptr)},
                   {"required", field.required},
                   {"help", field.help}});
  return all;
}

std::string limits_text() {
  std::string out;
  for (const LimitSpec& limit : limits_catalogue())
    out +=
        fmt::format("  {:<26} {} {}\n      {}\n", limit.name, limit.value, symbol(limit.unit), limit.meaning);
  return out;
}

std::string figures_text() {
  std::string out;
  for (const FigureSpec* figure : figure_catalogue())
    out += fmt::format("  {:<26} {}\n      {}\n", figure->name, figure->title, figure->help);
  return out;
}

json figures_entries() {
  json all = json::array();
  for (const FigureSpec* figure : figure_catalogue())
    all.push_back({{"figure", figure->name},
                   {"title", figure->title},
                   {"help", figure->help},
                   {"source", figure->source}});
  return all;
}

json limits_entries() {
  json all = json::array();
  for (const LimitSpec& limit : limits_catalogue())
    all.push_back({{"limit", limit.name},
                   {"value", limit.value},
                   {"unit", symbol(limit.unit)},
                   {"meaning", limit.meaning},
                   {"source", limit.source}});
  return all;
}

} // namespace

Exit rules(const Arguments& arguments) {
  return list(arguments, "rules", {rules_text, rules_entries, rules_markdown});
}
Exit functions(const Arguments& arguments) {
  return list(arguments, "functions", {functions_text, functions_entries, functions_markdown});
}
Exit fields(const Arguments& arguments) {
  return list(arguments, "fields", {fields_text, fields_entries, fields_markdown});
}
Exit limits(const Arguments& arguments) {
  return list(arguments, "limits", {limits_text, limits_entries, limits_markdown});
}
Exit figures(const Arguments& arguments) {
  return list(arguments, "figures", {figures_text, figures_entries, figures_markdown});
}

} // namespace wetspell::command
