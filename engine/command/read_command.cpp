#include "command/command.hpp"
#include "command/options.hpp"
#include "quantity/answer.hpp"
#include "quantity/read.hpp"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <iostream>
#include <string>
#include <variant>

namespace wetspell::command {

namespace {

using json = nlohmann::ordered_json;

json as_json(const AnswerValue& value) {
  if (const auto* number = std::get_if<double>(&value))
    return *number;
  if (const auto* text = std::get_if<std::string>(&value))
    return *text;
  return nullptr;
}

json as_json(const Answer& answer) {
  return {{"text", answer.text},
          {"status", answer.status},
          {"si", as_json(answer.si)},
          {"si_high", as_json(answer.si_high)},
          {"count", as_json(answer.count)},
          {"unit", answer.unit.empty() ? json(nullptr) : json(answer.unit)},
          {"reason", answer.reason.empty() ? json(nullptr) : json(answer.reason)}};
}

} // namespace

Exit read(const Arguments& arguments) {
  namespace po = boost::program_options;
  po::options_description options;
  options.add_options()("kind,k", po::value<std::string>()->default_value(""),
                        "temperature, depth, length, area, volume, percent, date, time, count or truth")(
      "assume,a", po::value<std::string>()->default_value(""),
      "unit of numbers that stand without one: in, °F, m ...")(
      "date-order", po::value<std::string>()->default_value(""),
      "day-first or month-first; refused when left out");
  const auto parsed = parse(arguments, "read", options, "");
  if (!parsed)
    return refuse("read", parsed.error().text);
  if (!parsed.value())
    return Exit::nothing_to_fix;
  const auto& values = *parsed.value();

  const auto& kind_word = values["kind"].as<std::string>();
  const auto kind = kind_named(kind_word);
  if (!kind)
    return refuse("read",
                  fmt::format("--kind is temperature, depth, length, area, volume, percent, date, time, "
                              "count or truth, not '{}'.",
                              kind_word));
  ReadOptions how;
  how.kind = *kind;
  if (const auto& word = values["assume"].as<std::string>(); !word.empty()) {
    const auto unit = unit_named(word);
    if (!unit || !fits(*unit, *kind))
      return refuse("read", fmt::format("'{}' is not a unit of {}.", word, name(*kind)));
    how.assume = *unit;
  }
  if (const auto& order = values["date-order"].as<std::string>(); !order.empty()) {
    if (order != "day-first" && order != "month-first")
      return refuse("read", fmt::format("--date-order is day-first or month-first, not '{}'.", order));
    how.date_order = order == "day-first" ? DateOrder::day_first : DateOrder::month_first;
  }

  for (std::string line; std::getline(std::cin, line);) {
    if (!line.empty() && line.back() == '\r')
      line.pop_back();
    const json out = as_json(answer(line, wetspell::read(line, how), *kind));
    fmt::print("{}\n", out.dump(-1, ' ', false, json::error_handler_t::replace));
  }
  return Exit::nothing_to_fix;
}

} // namespace wetspell::command
