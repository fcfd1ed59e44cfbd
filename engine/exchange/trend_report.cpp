#include "exchange/trend_report.hpp"

#include "exchange/csv.hpp"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <array>
#include <optional>

namespace wetspell {

namespace {

using json = nlohmann::ordered_json;

std::string group_of(const Trend& trend) {
  return trend.column.empty() ? std::string() : fmt::format("{}: {}", trend.column, trend.group);
}

std::string name_of(const Trend& trend, std::string_view name) {
  return trend.of.empty() ? std::string(name) : fmt::format("{}: {}", name, trend.of);
}

/// What stands above the trends of one pool, of one group, or of all pools.
std::string heading_of(const Trend& trend) {
  if (!trend.pool.empty())
    return "Pool " + trend.pool;
  return trend.compared == Comparison::years ? group_of(trend)
                                             : fmt::format("All pools, {}", in_words(trend.compared));
}

/// A change a year in the unit that is shown.
std::optional<double> change(const Trend& trend, const std::optional<double>& si, const Settings& settings) {
  return si ? std::optional(shown(*si, change_of(trend.spec->figured), settings)) : std::nullopt;
}

struct Slope {
  std::optional<double> slope, low, high, p;
};

Slope slope_of(const Trend& trend, const Settings& settings) {
  Slope found;
  if (trend.sen)
    found = {change(trend, trend.sen->slope, settings), change(trend, trend.sen->low, settings),
             change(trend, trend.sen->high, settings), std::nullopt};
  if (trend.kendall)
    found.p = trend.kendall->p;
  return found;
}

json number(const std::optional<double>& value) {
  return value ? json(*value) : json(nullptr);
}

Cell cell(const std::optional<double>& value) {
  return value ? Cell::of_number(*value) : Cell{};
}

} // namespace

std::string trends_text(std::span<const Trend> trends, std::size_t seasons, const Settings& settings) {
  std::string out = fmt::format("Over {} seasons\n", seasons);
  if (trends.empty())
    return out +
           fmt::format("  No figure has a value in {} of them: no trend can be looked for.\n", fewest_years);
  std::string heading;
  for (const Trend& trend : trends) {
    const std::string now = heading_of(trend);
    if (now != heading)
      out += fmt::format("\n{}\n", now);
    heading = now;
    out += fmt::format("  {:<34} {}\n", name_of(trend, trend.spec->title), in_words(trend, settings));
  }
  return out;
}

std::string trends_csv(std::span<const Trend> trends, const Settings& settings) {
  constexpr std::array columns{"Pool", "Group", "Name", "Figure", "Change a year", "Unit",
                               "From", "To",    "p",    "Years",  "Note",          "Comparison"};
  Table table(Place{"trends", 1, 0}, trends.size() + 1, columns.size());
  for (std::size_t c = 0; c < columns.size(); ++c)
    table.at(0, c) = Cell::of_text(columns[c]);
  for (std::size_t i = 0; i < trends.size(); ++i) {
    const Trend& trend = trends[i];
    const Slope slope = slope_of(trend, settings);
    const std::array cells{Cell::of_text(trend.pool),
                           Cell::of_text(group_of(trend)),
                           Cell::of_text(name_of(trend, trend.spec->name)),
                           Cell::of_text(name_of(trend, trend.spec->title)),
                           cell(slope.slope),
                           Cell::of_text(shown_unit(change_of(trend.spec->figured), settings)),
                           cell(slope.low),
                           cell(slope.high),
                           cell(slope.p),
                           Cell::of_number(static_cast<double>(trend.years)),
                           Cell::of_text(trend.note),
                           Cell::of_text(std::string(in_words(trend.compared)))};
    for (std::size_t c = 0; c < cells.size(); ++c)
      table.at(i + 1, c) = cells[c];
  }
  return csv_from_table(table);
}

std::string trends_json(std::span<const Trend> trends, const Settings& settings) {
  json all = json::array();
  for (const Trend& trend : trends) {
    const Slope slope = slope_of(trend, settings);
    json years = nullptr;
    json values = nullptr;
    if (trend.compared == Comparison::years) {
      years = trend.series.front().x;
      values = json::array();
      for (const double si : trend.series.front().y)
        values.push_back(trend.spec->figured == Figured::date ? si
                                                              : shown(si, trend.spec->figured, settings));
    }
    all.push_back({{"pool", trend.pool.empty() ? json(nullptr) : json(trend.pool)},
                   {"group", trend.column.empty() ? json(nullptr) : json(group_of(trend))},
                   {"name", name_of(trend, trend.spec->name)},
                   {"unit", shown_unit(change_of(trend.spec->figured), settings)},
                   {"compared", in_words(trend.compared)},
                   {"series", trend.series.size()},
                   {"years", std::move(years)},
                   {"values", std::move(values)},
                   {"slope", number(slope.slope)},
                   {"low", number(slope.low)},
                   {"high", number(slope.high)},
                   {"p", number(slope.p)},
                   {"n", trend.kendall ? trend.kendall->n : 0},
                   {"note", trend.note}});
  }
  return json{{"trends", std::move(all)}}.dump(2, ' ', false, json::error_handler_t::replace) + "\n";
}

} // namespace wetspell
