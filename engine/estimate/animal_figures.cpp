// Animals: the highest counts, how many there were by two people's counts, and in which pools a species bred.
#include "estimate/groups.hpp"
#include "estimate/looks.hpp"
#include "estimate/occupancy.hpp"
#include "estimate/proportion.hpp"
#include "estimate/say_figure.hpp"
#include "estimate/two_counts.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <optional>

namespace wetspell {

namespace {

enum Entry : std::size_t {
  highest,
  number,
  first_finds,
  second_finds,
  bred,
  bred_exact,
  used,
  found_per_look,
  looks_needed
};

constexpr std::array<FigureSpec, 9> catalogue{{
    {"highest-count", "Highest count", Figured::count,
     "The highest count of the season in one pool. Where two people counted and say how many both saw, their "
     "count is what one or both saw; otherwise it is the greater of the two. n: counts.",
     "common practice, no source"},
    {"estimated-number", "Estimated number", Figured::count,
     "How many there were on the day of the highest such count, with those that both people missed, from two "
     "counts made without help from each other and matched afterwards. Too small where some are hard to see "
     "for everybody. Without the number that both saw there is no estimate, only bounds. n: counts by two.",
     "Chapman 1951; Seber 1982; interval of the profile likelihood"},
    {"found-by-first", "Found by the first person", Figured::share,
     "Share of what the second person saw that the first saw as well, with the Wilson interval. n: seen by "
     "the second person.",
     "Magnusson et al. 1978; Wilson 1927"},
    {"found-by-second", "Found by the second person", Figured::share,
     "Share of what the first person saw that the second saw as well, with the Wilson interval. n: seen by "
     "the first person.",
     "Magnusson et al. 1978; Wilson 1927"},
    {"pools-bred", "Pools in which it bred", Figured::share,
     "Share of the pools in which the species was looked for at its time that had its egg masses or larvae, "
     "with the Wilson interval. n: pools looked at.",
     "Wilson 1927"},
    {"pools-bred-exact", "Pools in which it bred, exact interval", Figured::share,
     "The same share with the interval of Clopper and Pearson, which holds its level whatever the share and "
     "is wider. n: pools looked at.",
     "Clopper and Pearson 1934"},
    {"pools-used", "Pools used, overlooked ones included", Figured::share,
     "Share of pools estimated to have its egg masses or larvae when looks can miss them: one chance of use "
     "and one of finding for all pools and days. A look is a day on which animals were recorded in a pool "
     "with water, at the species' time; a row with 0 is a look that found none. n: pools looked at.",
     "MacKenzie et al. 2002"},
    {"found-per-look", "Found at one look", Figured::share,
     "Chance that one look at a pool that is used finds egg masses or larvae. n: looks.",
     "MacKenzie et al. 2002"},
    {"looks-needed", "Looks needed", Figured::count,
     "How many looks without a find it takes to be as sure as the intervals are that a pool is not used. n: "
     "looks behind the chance of finding.",
     "Kery 2002"},
}};

double count_of(std::size_t count) {
  return static_cast<double>(count);
}

/// What one row says was seen: by one or both where that is known, otherwise the greater number.
std::optional<double> seen(const CountedLife& life) {
  if (life.by_first && life.by_second && life.by_both)
    return std::max({*life.by_first, *life.by_second, *life.by_first + *life.by_second - *life.by_both});
  std::optional<double> most;
  for (const auto& each : {life.by_first, life.by_second, life.by_both})
    if (each && (!most || *each > *most))
      most = each;
  return most;
}

std::string name_of(const Season& season, const CountedLife& life) {
  std::string name = season.species_names[static_cast<std::size_t>(life.species)];
  if (life.seen_as.chosen())
    name += fmt::format(", {}", seen_as_words().words[static_cast<std::size_t>(life.seen_as.index)].label);
  return name;
}

/// One species in one form in one pool.
struct Counts {
  std::string name;
  std::size_t counts = 0;
  std::size_t by_two = 0;
  const CountedLife* highest = nullptr;
  const CountedLife* both_known = nullptr; ///< the highest of those that say how many both saw
  const CountedLife* two = nullptr;        ///< the highest of those by two people
};

/// In the order in which they are first met.
std::vector<Counts> counts_of(const Season& season, const PoolHistory& pool) {
  std::vector<Counts> all;
  std::map<std::pair<std::int32_t, std::int16_t>, std::size_t> known;
  for (const CountedLife& life : pool.life) {
    const auto here = seen(life);
    if (!here)
      continue;
    const auto [at, fresh] = known.try_emplace({life.species, life.seen_as.index}, all.size());
    if (fresh)
      all.push_back({name_of(season, life)});
    Counts& counts = all[at->second];
    ++counts.counts;
    const auto higher = [&](const CountedLife*& than) {
      if (than == nullptr || *here > *seen(*than))
        than = &life;
    };
    higher(counts.highest);
    if (!life.by_first || !life.by_second)
      continue;
    ++counts.by_two;
    higher(counts.two);
    if (life.by_both)
      higher(counts.both_known);
  }
  return all;
}

Figure found_figure(Entry entry, const std::optional<FoundOfOther>& found, double of, double level) {
  const auto n = static_cast<std::size_t>(of);
  if (!found)
    return cannot_say(catalogue[entry], "the other person saw none", n);
  return interval_figure(catalogue[entry], found->share, found->interval.low, found->interval.high, n, level);
}

/// How many there were; never a number where two counts do not say what both saw.
std::vector<Figure> number_figures(const Counts& counts, double level) {
  if (counts.both_known == nullptr) {
    Figure figure =
        cannot_say(catalogue[number], "two counts, but not how many both saw: no estimate", counts.by_two);
    figure.low = std::max(*counts.two->by_first, *counts.two->by_second);
    return {std::move(figure)};
  }
  const CountedLife& life = *counts.both_known;
  const auto two = two_counts(*life.by_first, *life.by_second, *life.by_both, level);
  if (!two)
    return {cannot_say(catalogue[number], two.error().text, counts.by_two)};
  Figure figure = cannot_say(catalogue[number], {}, counts.by_two);
  figure.low = two.value().interval.low;
  if (*life.by_both == 0) {
    figure.note =
        two.value().seen == 0 ? "neither saw any: no estimate" : "nothing was seen by both: no estimate";
  } else {
    figure.value = two.value().estimate;
    figure.high = two.value().interval.high;
    figure.level = level;
  }
  return {std::move(figure), found_figure(first_finds, two.value().first_finds, *life.by_second, level),
          found_figure(second_finds, two.value().second_finds, *life.by_first, level)};
}

void of_pool(const SummaryRun& run, const PoolHistory& pool, PoolSummary& summary) {
  for (const Counts& counts : counts_of(run.season(), pool)) {
    std::vector<Figure> figures{plain_figure(catalogue[highest], *seen(*counts.highest), counts.counts)};
    if (counts.two != nullptr)
      for (Figure& each : number_figures(counts, run.options.level))
        figures.push_back(std::move(each));
    for (Figure& each : figures) {
      each.of = counts.name;
      summary.figures.push_back(std::move(each));
    }
  }
}

Figure share_figure(Entry entry, std::size_t some, std::size_t all, const Result<Interval>& interval,
                    double level) {
  if (!interval)
    return cannot_say(catalogue[entry], "no pool was looked at");
  return interval_figure(catalogue[entry], count_of(some) / count_of(all), interval.value().low,
                         interval.value().high, all, level);
}

std::vector<Figure> bred_figures(std::span<const Looks> pools, double level) {
  std::size_t looked = 0, with = 0;
  for (const Looks& pool : pools) {
    looked += pool.looks > 0;
    with += pool.found > 0;
  }
  return {
      share_figure(bred, with, looked, wilson_interval(count_of(with), count_of(looked), level), level),
      share_figure(bred_exact, with, looked, exact_interval(count_of(with), count_of(looked), level), level)};
}

std::vector<Figure> used_figures(std::span<const Looks> pools, double level) {
  const auto found = occupancy(pools, level);
  if (!found)
    return {cannot_say(catalogue[used], found.error().text)};
  const Occupancy& result = found.value();
  const auto figure = [&](Entry entry, double value, const Interval& interval, std::size_t n) {
    return with_note(interval_figure(catalogue[entry], value, interval.low, interval.high, n, level),
                     result.caution);
  };
  std::vector<Figure> all{figure(used, result.used, result.used_interval, result.pools),
                          figure(found_per_look, result.found_per_look, result.found_interval, result.looks)};
  if (const auto needed = looks_to_be_sure(result.found_per_look, level))
    all.push_back(plain_figure(catalogue[looks_needed], std::ceil(needed.value()), result.looks));
  return all;
}

void of_programme(const SummaryRun& run, SeasonSummary& summary) {
  for (const PoolHistory& pool : run.history.pools)
    for (const Counts& counts : counts_of(run.season(), pool))
      if (const double most = *seen(*counts.highest); most > 0)
        summary.species.push_back({pool.pool, counts.name, most});
  const std::vector<PoolGroup> groups = pool_groups(run);
  for (const std::int32_t species : species_looked_for(run.history)) {
    const std::vector<Looks> looks = breeding_looks(run.history, species);
    for (const PoolGroup& group : groups) {
      std::vector<Looks> here;
      for (const std::uint32_t pool : group.pools)
        here.push_back(looks[pool]);
      std::vector<Figure> figures = bred_figures(here, run.options.level);
      if (group.column.empty())
        for (Figure& each : used_figures(here, run.options.level))
          figures.push_back(std::move(each));
      for (Figure& each : figures) {
        each.of = run.season().species_names[static_cast<std::size_t>(species)];
        summary.programme.push_back({group.column, group.group, std::move(each)});
      }
    }
  }
}

} // namespace

SummaryTopic animal_topic() {
  return {catalogue, of_pool, of_programme};
}

} // namespace wetspell
