#include "estimate/trend_figures.hpp"

#include "quantity/calendar.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <map>
#include <set>
#include <utility>

namespace wetspell {

namespace {

constexpr double shown_by = 0.05; // chance below which a trend is called one: common practice
// Hirsch and Slack (1984): the test with covariances holds its level well from so many years on (from
// memory).
constexpr std::size_t enough_for_covariances = 10;

/// What makes two figures of different years the same one.
struct Key {
  std::string pool = {}, column = {}, group = {};
  Comparison compared = Comparison::years;
  std::string_view name = {};
  std::string of = {};
  auto operator<=>(const Key&) const = default; // NOLINT: the 0 it sees is the compiler's own, no pointer
};

/// The pool and the month whose values are compared with each other; both empty where years are.
using Block = std::pair<std::string, unsigned>;

struct Gathered {
  const FigureSpec* spec = nullptr;
  std::map<Block, std::map<int, double>> by_year;
};

double first_of_january(int year) {
  return serial_of({.year = year, .month = 1, .day = 1}).value_or(0);
}

class Gathering {
public:
  void take(Key key, const FigureSpec* spec, const Block& block, int year, double value) {
    key.name = spec->name;
    const auto [at, fresh] = all_.try_emplace(key);
    if (fresh)
      order_.push_back(std::move(key));
    at->second.spec = spec;
    at->second.by_year[block][year] = value;
  }

  void take(Key key, const Figure& figure, const Block& block, int year) {
    if (!figure.value || figure.spec->figured == Figured::words)
      return;
    key.of = figure.of;
    take(std::move(key), figure.spec, block, year,
         figure.spec->figured == Figured::date ? *figure.value - first_of_january(year) : *figure.value);
  }

  [[nodiscard]] const std::vector<Key>& order() const { return order_; }
  [[nodiscard]] const Gathered& at(const Key& key) const { return all_.at(key); }

private:
  std::map<Key, Gathered> all_;
  std::vector<Key> order_;
};

/// The series in which years can be compared: two values at least.
std::vector<Series> series_of(const Gathered& gathered) {
  std::vector<Series> all;
  for (const auto& [block, by_year] : gathered.by_year) {
    if (by_year.size() < 2)
      continue;
    Series& series = all.emplace_back();
    for (const auto& [year, value] : by_year) {
      series.x.push_back(year);
      series.y.push_back(value);
    }
  }
  return all;
}

std::size_t years_in(std::span<const Series> all) {
  std::set<double> years;
  for (const Series& series : all)
    years.insert(series.x.begin(), series.x.end());
  return years.size();
}

void judge_years(Trend& trend, double level) {
  const Series& only = trend.series.front();
  if (auto kendall = mann_kendall(only))
    trend.kendall = kendall.value();
  if (auto sen = theil_sen(only.x, only.y, level))
    trend.sen = sen.value();
  if (trend.years < fewest_for(shown_by))
    trend.note = best_of_years(trend.years);
}

void judge_blocks(Trend& trend, double level) {
  if (auto kendall = seasonal_kendall(trend.series, Together::dependent))
    trend.kendall = kendall.value();
  if (auto sen = seasonal_sen(trend.series, level, Together::dependent))
    trend.sen = sen.value();
  if (trend.years < enough_for_covariances)
    trend.note = fmt::format("p and interval are rough with fewer than {} years", enough_for_covariances);
}

std::optional<Trend> trend_of(const Key& key, const Gathered& gathered, double level) {
  Trend trend;
  trend.pool = key.pool;
  trend.column = key.column;
  trend.group = key.group;
  trend.spec = gathered.spec;
  trend.of = key.of;
  trend.compared = key.compared;
  trend.series = series_of(gathered);
  trend.years = years_in(trend.series);
  if (trend.years < fewest_years)
    return std::nullopt;
  if (key.compared == Comparison::years)
    judge_years(trend, level);
  else if (trend.series.size() > 1)
    judge_blocks(trend, level);
  else
    return std::nullopt; // one pool, or one month: nothing that the comparison of years does not say
  return trend;
}

/// Seasons, the newest first, of two of one year the later in the list.
std::vector<const SeasonOfYear*> newest_first(std::span<const SeasonOfYear> seasons) {
  std::vector<const SeasonOfYear*> all;
  all.reserve(seasons.size());
  for (const SeasonOfYear& season : seasons)
    all.push_back(&season);
  std::ranges::stable_sort(all, std::ranges::greater(), &SeasonOfYear::year);
  return all;
}

Gathering gathered(std::span<const SeasonOfYear> seasons) {
  const auto ordered = newest_first(seasons);
  Gathering all;
  for (const SeasonOfYear* season : ordered)
    for (const ProgrammeFigure& each : season->summary->programme)
      all.take({.column = each.column, .group = each.group}, each.figure, {}, season->year);
  for (const Comparison compared : {Comparison::pools, Comparison::months, Comparison::years})
    for (const SeasonOfYear* season : ordered) {
      const auto code = [&](std::uint32_t pool) { return season->season->pools[pool].code; };
      for (const PoolSummary& pool : season->summary->pools)
        for (const Figure& figure : pool.figures) {
          if (compared == Comparison::pools)
            all.take({.compared = compared}, figure, {code(pool.pool), 0}, season->year);
          else if (compared == Comparison::years)
            all.take({.pool = code(pool.pool)}, figure, {}, season->year);
        }
      for (const MonthMean& mean : season->summary->months) {
        const Block block{code(mean.pool), mean.month};
        if (compared == Comparison::months)
          all.take({.compared = compared}, mean.spec, block, season->year, mean.value);
        else if (compared == Comparison::years)
          all.take({.pool = block.first, .compared = Comparison::months}, mean.spec, block, season->year,
                   mean.value);
      }
    }
  return all;
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

std::string_view in_words(Comparison compared) {
  switch (compared) {
  case Comparison::pools:
    return "each pool compared with itself";
  case Comparison::months:
    return "each month compared with the same month";
  case Comparison::years:
    break;
  }
  return "year by year";
}

std::vector<Trend> trends(std::span<const SeasonOfYear> seasons, double level) {
  const Gathering all = gathered(seasons);
  std::vector<Trend> found;
  for (const Key& key : all.order())
    if (auto trend = trend_of(key, all.at(key), level))
      found.push_back(*std::move(trend));
  return found;
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
  text += fmt::format("{} years, p = {:.2g}): {}", trend.years, trend.kendall->p,
                      trend.kendall->p <= shown_by ? "a trend" : "no trend shown");
  return trend.note.empty() ? text : text + "; " + trend.note;
}

} // namespace wetspell
