// The pools' figures taken together: over the programme, and over each group of pools.
#include "estimate/groups.hpp"
#include "estimate/say_figure.hpp"
#include "estimate/summary.hpp"
#include "measure/describe.hpp"
#include "measure/distribution.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <deque>

namespace wetspell {

namespace {

/// A pool's figure that is taken together over pools.
struct Base {
  std::string_view name;
  bool adds_up; ///< a total over pools means something
};

constexpr std::array bases{
    Base{"area-largest", true}, Base{"deepest", false}, Base{"volume-brim", true},
    Base{"warmest", false},     Base{"coldest", false}, Base{"wet-days-least", false},
};

enum Statistic : std::size_t {
  pools,
  smallest,
  lower_quartile,
  median,
  mean,
  mean_drawn,
  upper_quartile,
  largest,
  deviation,
  total_of_all
};

struct StatisticSpec {
  std::string_view name, title, help, source;
};

constexpr std::string_view definition_7 = "Hyndman and Fan (1996), definition 7";

constexpr std::array<StatisticSpec, 10> statistics{{
    {"pools", "pools", "How many pools have this figure.", "common practice, no source"},
    {"smallest", "smallest", "Smallest of the pools. n: pools.", "common practice, no source"},
    {"lower-quartile", "lower quartile", "A quarter of the pools lie below it. n: pools.", definition_7},
    {"median", "median", "Half of the pools lie below it. n: pools.", definition_7},
    {"mean", "mean",
     "Mean of the pools with Student's interval, as if they were drawn at random from many such pools. n: "
     "pools.",
     "JCGM 100:2008 (GUM) 4.2, G.3; checked against NIST/SEMATECH e-Handbook 1.3.5.2"},
    {"mean-drawn", "mean, by drawing again",
     "The same mean with the interval of the studentised bootstrap, which takes the pools as lopsided as "
     "they are. "
     "n: pools.",
     "Efron and Tibshirani (1993), 12.5"},
    {"upper-quartile", "upper quartile", "A quarter of the pools lie above it. n: pools.", definition_7},
    {"largest", "largest", "Largest of the pools. n: pools.", "common practice, no source"},
    {"deviation", "standard deviation", "Scatter from pool to pool (n - 1). n: pools.",
     "JCGM 100:2008 (GUM) 4.2"},
    {"total", "total",
     "Sum over the pools that were measured; the interval is that of the measuring, errors of pools "
     "independent. "
     "n: pools.",
     "JCGM 100:2008 (GUM) 5.1.2"},
}};

/// The pools' topics whose figures may be taken together.
const FigureSpec* pool_entry(std::string_view name) {
  for (const SummaryTopic& topic : {visit_topic(), size_topic(), basin_topic(), wet_spell_topic()})
    for (const FigureSpec& spec : topic.figures)
      if (spec.name == name)
        return &spec;
  return nullptr;
}

Figured figured_as(Figured base, Statistic statistic) {
  if (statistic == pools)
    return Figured::count;
  return statistic == deviation && base == Figured::temperature ? Figured::temperature_apart : base;
}

/// Entries for every statistic of every base, made once from both tables.
class Catalogue {
public:
  Catalogue() {
    for (const Base& base : bases) {
      const FigureSpec* of = pool_entry(base.name);
      for (std::size_t i = 0; of != nullptr && i < statistics.size(); ++i) {
        const StatisticSpec& one = statistics[i];
        specs_.push_back({keep(fmt::format("{}-{}", of->name, one.name)),
                          keep(fmt::format("{}: {}", of->title, one.title)),
                          figured_as(of->figured, static_cast<Statistic>(i)),
                          keep(fmt::format("Of the pools' \"{}\". {}", of->title, one.help)), one.source});
      }
    }
  }
  [[nodiscard]] std::span<const FigureSpec> all() const { return specs_; }
  [[nodiscard]] const FigureSpec& of(std::size_t base, Statistic statistic) const {
    return specs_[base * statistics.size() + statistic];
  }

private:
  std::string_view keep(std::string text) { return texts_.emplace_back(std::move(text)); }

  std::deque<std::string> texts_; // a deque, so that what was given out stays where it is
  std::vector<FigureSpec> specs_;
};

const Catalogue& catalogue() {
  static const Catalogue all;
  return all;
}

const Figure* figure_of(const PoolSummary& pool, std::string_view name) {
  const auto found =
      std::ranges::find_if(pool.figures, [&](const Figure& figure) { return figure.spec->name == name; });
  return found == pool.figures.end() || !found->value ? nullptr : &*found;
}

/// A figure's standard uncertainty, found again behind its interval; not known (0) where that is open.
Measured measured(const Figure& figure) {
  if (!figure.low || !figure.high || !(figure.level > 0))
    return {*figure.value, 0};
  return {*figure.value, (*figure.high - *figure.low) / 2 / normal_factor(figure.level)};
}

std::vector<Measured> values_of(const SeasonSummary& summary, const PoolGroup& group, std::string_view name) {
  std::vector<Measured> values;
  for (const std::uint32_t pool : group.pools)
    if (const Figure* figure = figure_of(summary.pools[pool], name))
      values.push_back(measured(*figure));
  return values;
}

/// Pools with a volume whose basin has the shape in the settings: one error that they all share.
std::size_t given_shapes(const SeasonSummary& summary, const PoolGroup& group) {
  return static_cast<std::size_t>(std::ranges::count_if(group.pools, [&](std::uint32_t pool) {
    const Figure* shape = figure_of(summary.pools[pool], "basin-shape");
    return shape != nullptr && !shape->low && figure_of(summary.pools[pool], "volume-brim") != nullptr;
  }));
}

class Telling {
public:
  Telling(const SummaryRun& run, const PoolGroup& group, SeasonSummary& summary)
      : run_(run), group_(group), summary_(summary) {}

  void tell(std::size_t base) {
    const std::vector<Measured> parts = values_of(summary_, group_, bases[base].name);
    std::vector<double> values;
    values.reserve(parts.size());
    for (const Measured& part : parts)
      values.push_back(part.value);
    const SummaryOptions& options = run_.options;
    const auto described = describe(values, {options.level, options.draws, options.seed});
    add(counted_figure(entry(base, pools), parts.size()));
    if (!described)
      return;
    const Description& all = described.value();
    plain(base, smallest, all.smallest, all.n);
    plain(base, lower_quartile, all.lower_quartile, all.n);
    plain(base, median, all.median, all.n);
    with_interval(base, mean, all, all.mean_by_t);
    with_interval(base, mean_drawn, all, all.mean_by_draws);
    plain(base, upper_quartile, all.upper_quartile, all.n);
    plain(base, largest, all.largest, all.n);
    if (all.n > 1)
      plain(base, deviation, all.deviation, all.n);
    else
      add(cannot_say(entry(base, deviation), too_few(all.n, "pool", "pools"), all.n));
    if (bases[base].adds_up)
      if (const auto sum = total(parts))
        add(with_note(measured_figure(entry(base, total_of_all), sum.value(), all.n, options.level),
                      caution(bases[base])));
  }

private:
  [[nodiscard]] std::string caution(const Base& base) const {
    const std::size_t given = base.name == "volume-brim" ? given_shapes(summary_, group_) : 0;
    return given == 0 ? std::string()
                      : fmt::format("{} of them with the shape in the settings, whose error they share: the "
                                    "interval is too narrow",
                                    given);
  }
  static const FigureSpec& entry(std::size_t base, Statistic statistic) {
    return catalogue().of(base, statistic);
  }
  void add(Figure figure) { summary_.programme.push_back({group_.column, group_.group, std::move(figure)}); }
  void plain(std::size_t base, Statistic statistic, double value, std::size_t n) {
    add(plain_figure(entry(base, statistic), value, n));
  }
  void with_interval(std::size_t base, Statistic statistic, const Description& all,
                     const std::optional<Interval>& interval) {
    if (interval)
      add(interval_figure(entry(base, statistic), all.mean, interval->low, interval->high, all.n,
                          run_.options.level));
    else
      add(with_note(plain_figure(entry(base, statistic), all.mean, all.n), "too few pools for an interval"));
  }

  const SummaryRun& run_;
  const PoolGroup& group_;
  SeasonSummary& summary_;
};

void of_programme(const SummaryRun& run, SeasonSummary& summary) {
  for (const PoolGroup& group : pool_groups(run)) {
    Telling telling(run, group, summary);
    for (std::size_t base = 0; base < bases.size(); ++base)
      telling.tell(base);
  }
}

} // namespace

SummaryTopic programme_topic() {
  return {catalogue().all(), nullptr, of_programme};
}

} // namespace wetspell
