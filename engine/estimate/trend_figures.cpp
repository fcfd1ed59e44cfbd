#include "estimate/trend_figures.hpp"

#include "quantity/calendar.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <tuple>

namespace wetspell {

namespace {

constexpr double shown_by = 0.05; // chance below which a trend is called one: common practice

/// What makes two figures of different years the same one.
using Key = std::tuple<std::string, std::string, std::string, std::string_view, std::string>;

struct Gathered {
  const FigureSpec* spec = nullptr;
  std::map<int, double> by_year;
};

double first_of_january(int year) {
  return serial_of({.year = year, .month = 1, .day = 1}).value_or(0);
}

class Gathering {
public:
  void take(int year, const std::string& pool, const std::string& column, const std::string& group,
            const Figure& figure) {
    if (!figure.value || figure.spec->figured == Figured::words)
      return;
    const Key key{pool, column, group, figure.spec->name, figure.of};
    const auto [at, fresh] = all_.try_emplace(key);
    if (fresh)
      order_.push_back(key);
    at->second.spec = figure.spec;
    at->second.by_year[year] =
        figure.spec->figured == Figured::date ? *figure.value - first_of_january(year) : *figure.value;
  }

  [[nodiscard]] const std::vector<Key>& order() const { return order_; }
  [[nodiscard]] const Gathered& at(const Key& key) const { return all_.at(key); }

private:
  std::map<Key, Gathered> all_;
  std::vector<Key> order_;
};

Trend trend_of(const Key& key, const Gathered& gathered, double level) {
  Trend trend;
  std::tie(trend.pool, trend.column, trend.group, std::ignore, trend.of) = key;
  trend.spec = gathered.spec;
  for (const auto& [year, value] : gathered.by_year) {
    trend.values.x.push_back(year);
    trend.values.y.push_back(value);
  }
  if (auto kendall = mann_kendall(trend.values))
    trend.kendall = kendall.value();
  if (auto sen = theil_sen(trend.values.x, trend.values.y, level))
    trend.sen = sen.value();
  if (trend.values.x.size() < fewest_for(shown_by))
    trend.note = best_of_years(trend.values.x.size());
  return trend;
}

} // namespace

Figured change_of(Figured figured) {
  if (figured == Figured::temperature)
    return Figured::temperature_apart;
  return figured == Figured::date ? Figured::days : figured;
}

std::string best_of_years(std::size_t years) {
  if (years < 2)
    return "one year shows no trend";
  const double best =
      std::min(1.0, 2 * kendall_upper_tail(years, static_cast<std::int64_t>(years * (years - 1) / 2)));
  return fmt::format("with {} years even a steady rise or fall has p = {:.2f}; it takes {} to show a trend",
                     years, best, fewest_for(shown_by));
}

std::vector<Trend> trends(std::span<const SeasonOfYear> seasons, double level) {
  std::vector<const SeasonOfYear*> newest_first;
  for (const SeasonOfYear& season : seasons)
    newest_first.push_back(&season);
  std::stable_sort(
      newest_first.begin(), newest_first.end(),
      [](const SeasonOfYear* one, const SeasonOfYear* other) { return one->year > other->year; });
  Gathering gathering;
  for (const SeasonOfYear* season : newest_first)
    for (const ProgrammeFigure& each : season->summary->programme)
      gathering.take(season->year, {}, each.column, each.group, each.figure);
  for (const SeasonOfYear* season : newest_first)
    for (const PoolSummary& pool : season->summary->pools)
      for (const Figure& figure : pool.figures)
        gathering.take(season->year, season->season->pools[pool.pool].code, {}, {}, figure);
  std::vector<Trend> all;
  for (const Key& key : gathering.order())
    if (gathering.at(key).by_year.size() >= fewest_years)
      all.push_back(trend_of(key, gathering.at(key), level));
  return all;
}

std::string in_words(const Trend& trend, const Settings& settings) {
  if (!trend.sen || !trend.kendall)
    return trend.note;
  const Figured figured = change_of(trend.spec->figured);
  const double slope = trend.sen->slope;
  const std::string much = in_words(std::abs(slope), figured, settings);
  std::string text = slope == 0 ? "the same over the years"
                                : fmt::format("{} by {} a year", slope > 0 ? "rises" : "falls", much);
  text += " (";
  if (trend.sen->low && trend.sen->high)
    text += fmt::format("{} to {}; ", in_words(*trend.sen->low, figured, settings),
                        in_words(*trend.sen->high, figured, settings));
  text += fmt::format("{} years, p = {:.2g}): {}", trend.values.x.size(), trend.kendall->p,
                      trend.kendall->p <= shown_by ? "a trend" : "no trend shown");
  return trend.note.empty() ? text : text + "; " + trend.note;
}

} // namespace wetspell
