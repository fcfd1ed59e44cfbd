// Wet spells: when a pool filled and dried, how long it held water, and the share of pools that still do.
#include "estimate/event_curve.hpp"
#include "estimate/groups.hpp"
#include "estimate/kaplan_meier.hpp"
#include "estimate/proportion.hpp"
#include "estimate/say_figure.hpp"
#include "estimate/wet_spell.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace wetspell {

namespace {

enum Entry : std::size_t {
  course,
  filled,
  dried,
  wet_days,
  all_wet_days,
  least_wet_days,
  spell_class,
  filled_again,
  pools_wet,
  pools_dried,
  half_dry,
  half_seen_dry,
  half_wet_days
};

constexpr std::string_view turnbull =
    "Turnbull 1976; Wellner and Zhan 1997; Efron 1981 (percentile bootstrap)";
constexpr std::string_view own_bounds = "common practice, no source";

constexpr std::array<FigureSpec, 13> catalogue{{
    {"water-course", "Water over the season", Figured::words,
     "What the visits saw of the water: filled, dried, filled again. n: days with a visit that says wet or "
     "dry.",
     own_bounds},
    {"filled-between", "Filled between", Figured::date,
     "After the last dry visit before the first wet one, by that wet one: the day itself is not known. Only "
     "an end when the pool held water at its first visit. n: days with a visit that says wet or dry.",
     own_bounds},
    {"dried-between", "Dried between", Figured::date,
     "After the last wet visit of the first wet spell, by the first dry visit after it: the day itself is "
     "not "
     "known. Only a beginning when it was never seen dry again. n: days with a visit that says wet or dry.",
     own_bounds},
    {"wet-days", "Days wet, first spell", Figured::days,
     "At least from the first wet visit to the last, and less than from the dry visit before to the dry "
     "visit "
     "after; open where there is no such visit. That the pool dried and filled again between two wet visits "
     "is not seen. n: days with a visit that says wet or dry.",
     own_bounds},
    {"wet-days-all", "Days wet, all spells", Figured::days,
     "The same for all wet spells of the season together. n: days with a visit that says wet or dry.",
     own_bounds},
    {"wet-days-least", "Days wet at least", Figured::days,
     "The lower bound of the days wet in all spells, as a number to sort by and to take together over pools: "
     "the "
     "pool held water for so long or longer. n: days with a visit that says wet or dry.",
     own_bounds},
    {"wet-class", "Wet spell class", Figured::words,
     "Class of the first wet spell by the table of wet spell classes: one class when both bounds fall into "
     "it, otherwise the classes it may be. n: days with a visit that says wet or dry.",
     "judgement, no source"},
    {"filled-again", "Filled again", Figured::count,
     "How many times water was seen again after the pool had been seen dry. n: days with a visit that says "
     "wet or dry.",
     own_bounds},
    {"pools-seen-wet", "Pools seen with water", Figured::share,
     "Share of the pools with a visit that says wet or dry that held water at one at least, with the Wilson "
     "interval. n: those pools.",
     "Wilson 1927"},
    {"pools-seen-dry-again", "Pools seen dry after water", Figured::share,
     "Share of the pools that were seen with water that were seen dry after it, with the Wilson interval. "
     "Others may have dried after their last visit. n: pools seen with water.",
     "Wilson 1927"},
    {"half-dry-by", "Half of the pools dry by", Figured::date,
     "The day by which half of the pools had dried for the first time, from the intervals in which each did; "
     "pools never seen dry count as dry after their last wet visit, pools never seen wet as dry by their "
     "first. n: pools with a visit that says wet or dry.",
     turnbull},
    {"half-seen-dry-by", "Half of the pools seen dry by", Figured::date,
     "The same with the first dry visit taken as the day of drying: the estimate of Kaplan and Meier with "
     "its "
     "log-log interval. Late by up to the time between two visits; beside the figure above it shows how much "
     "that is. n: pools with a visit that says wet or dry.",
     "Kaplan and Meier 1958; Greenwood 1926; Brookmeyer and Crowley 1982"},
    {"half-wet-days", "Half of the first wet spells ended within", Figured::days,
     "The number of days within which half of the first wet spells ended, from the bounds of each. n: pools "
     "seen with water.",
     turnbull},
}};

/// A figure that is nothing but two bounds that hold for certain, each of which may be open.
Figure bounds(Entry entry, double low, double high, const PoolWater& water, std::string note = {}) {
  Figure figure = cannot_say(catalogue[entry], std::move(note), water.days);
  if (std::isfinite(low))
    figure.low = low;
  if (std::isfinite(high))
    figure.high = high;
  return figure;
}

std::string course_of(const PoolWater& water) {
  if (water.spells.empty())
    return "dry at every visit";
  const std::size_t again = water.spells.size() - 1;
  std::string words = water.wet_at_first ? "" : "filled";
  const auto add = [&](std::string_view more) {
    words += fmt::format("{}{}", words.empty() ? "" : ", ", more);
  };
  if (again == 0 && water.wet_at_first && water.wet_at_last)
    return "wet at every visit";
  for (std::size_t i = 0; i <= again; ++i) {
    if (i > 0)
      add("filled again");
    if (i < again || !water.wet_at_last)
      add(i == 0 ? "dried" : "dried again");
  }
  return words;
}

/// The classes between those of both bounds.
std::string class_of(const ClassTable& table, const DaysBetween& days) {
  const auto first = classify(table, days.least, table.unit);
  if (!first)
    return {};
  // Fewer than `most` days: on a limit the most it can be is the class below.
  const auto last = std::isfinite(days.most)
                        ? classify(table, std::max(days.least, days.most - 1), table.unit)
                        : Result<std::size_t>(table.rows.size() - 1);
  if (!last)
    return {};
  const std::string& from = table.rows[first.value()].label;
  if (first.value() == last.value())
    return from;
  const std::string& to = table.rows[last.value()].label;
  return std::isfinite(days.most) ? fmt::format("{} to {}", from, to) : fmt::format("{} or longer", from);
}

void of_pool(const SummaryRun& run, const PoolHistory& pool, PoolSummary& summary) {
  const PoolWater water = water_of(pool.visits);
  auto& figures = summary.figures;
  const auto none = [&](const std::string& why) {
    for (const Entry entry :
         {filled, dried, wet_days, all_wet_days, least_wet_days, spell_class, filled_again})
      figures.push_back(cannot_say(catalogue[entry], why, water.days));
  };
  if (water.days == 0) {
    figures.push_back(cannot_say(catalogue[course], "no visit says whether there was water"));
    none("no visit says whether there was water");
    return;
  }
  Figure words = cannot_say(catalogue[course], {}, water.days);
  words.words = course_of(water);
  figures.push_back(std::move(words));
  if (water.spells.empty()) {
    none("never seen wet");
    return;
  }
  const WetSpell& first = water.spells.front();
  figures.push_back(bounds(filled, first.filled.after, first.filled.by, water,
                           water.wet_at_first ? "wet at the first visit already" : ""));
  figures.push_back(bounds(dried, first.dried.after, first.dried.by, water,
                           std::isfinite(first.dried.by) ? "" : "never seen dry again"));
  const DaysBetween days = days_wet(first);
  figures.push_back(bounds(wet_days, days.least, days.most, water));
  const DaysBetween all = days_wet(water.spells);
  figures.push_back(bounds(all_wet_days, all.least, all.most, water));
  figures.push_back(plain_figure(catalogue[least_wet_days], all.least, water.days));
  Figure classed = cannot_say(catalogue[spell_class], "no class holds it", water.days);
  classed.words = class_of(run.season().spell_classes, days);
  if (!classed.words.empty())
    classed.note.clear();
  figures.push_back(std::move(classed));
  Figure again = counted_figure(catalogue[filled_again], water.spells.size() - 1);
  again.n = water.days;
  figures.push_back(std::move(again));
}

/// What one group's pools say together.
struct GroupWater {
  std::size_t seen_wet = 0, seen_dry_again = 0;
  std::vector<Between> drying, lasting;
  std::vector<FollowedUp> seen;
};

GroupWater water_of(const SeasonHistory& history, const PoolGroup& group) {
  GroupWater all;
  for (const std::uint32_t pool : group.pools) {
    const PoolWater water = water_of(history.pools[pool].visits);
    if (water.days == 0)
      continue;
    if (water.spells.empty()) {
      all.drying.push_back({Between{}.after, water.first_day});
      all.seen.push_back({water.first_day, true});
      continue;
    }
    const WetSpell& first = water.spells.front();
    const bool dry_again = std::isfinite(first.dried.by);
    ++all.seen_wet;
    all.seen_dry_again += dry_again;
    all.drying.push_back(first.dried);
    all.seen.push_back({dry_again ? first.dried.by : first.dried.after, dry_again});
    const DaysBetween days = days_wet(first);
    all.lasting.push_back({days.least, days.most});
  }
  return all;
}

Figure share_figure(Entry entry, std::size_t some, std::size_t all, double level, std::string_view of_what) {
  if (all == 0)
    return cannot_say(catalogue[entry], fmt::format("no {}", of_what));
  const auto count = [](std::size_t number) { return static_cast<double>(number); };
  const auto interval = wilson_interval(count(some), count(all), level);
  if (!interval)
    return cannot_say(catalogue[entry], interval.error().text, all);
  return interval_figure(catalogue[entry], count(some) / count(all), interval.value().low,
                         interval.value().high, all, level);
}

constexpr std::size_t fewest_pools = 5; // below, a half of the pools means nothing: judgement

/// The moment by which half have had their event; the band at `moments` on the way.
Figure half_figure(const SummaryRun& run, Entry entry, std::span<const Between> events,
                   std::span<const double> moments, std::vector<Interval>* band) {
  if (events.size() < fewest_pools)
    return cannot_say(catalogue[entry], too_few(events.size(), "pool", "pools"), events.size());
  const auto curve = event_curve(events);
  const auto draws =
      event_bootstrap(events, 0.5, moments,
                      {.draws = run.options.draws, .seed = run.options.seed, .level = run.options.level});
  if (!curve || !draws)
    return cannot_say(catalogue[entry], curve ? draws.error().text : curve.error().text, events.size());
  if (band != nullptr)
    *band = draws.value().band;
  Figure figure = cannot_say(catalogue[entry], {}, events.size());
  figure.value = event_quantile_within(curve.value(), 0.5);
  if (!figure.value) {
    const Between where = event_quantile(curve.value(), 0.5);
    if (std::isfinite(where.after)) {
      figure.low = where.after;
      figure.note = entry == half_dry ? "more than half were not seen dry"
                                      : "half of the wet spells have no dry visit before them or after them";
    } else {
      figure.high = where.by;
      figure.note = "half were dry at their first visit";
    }
    return figure;
  }
  if (std::isfinite(draws.value().quantile.low))
    figure.low = draws.value().quantile.low;
  if (std::isfinite(draws.value().quantile.high))
    figure.high = draws.value().quantile.high;
  figure.level = run.options.level;
  return figure;
}

Figure half_seen_figure(const SummaryRun& run, std::span<const FollowedUp> seen) {
  if (seen.size() < fewest_pools)
    return cannot_say(catalogue[half_seen_dry], too_few(seen.size(), "pool", "pools"), seen.size());
  const auto steps = kaplan_meier(seen, run.options.level);
  if (!steps)
    return cannot_say(catalogue[half_seen_dry], steps.error().text, seen.size());
  const LeftMedian median = median_of(steps.value());
  if (!median.median)
    return cannot_say(catalogue[half_seen_dry], "more than half were not seen dry", seen.size());
  return interval_figure(catalogue[half_seen_dry], *median.median, median.low, median.high, seen.size(),
                         run.options.level);
}

/// The days on which the curve falls, with the first and the last day of all visits around them.
std::vector<double> curve_days(const SeasonHistory& history, const EventCurve& curve) {
  std::vector<double> days;
  for (const PoolHistory& pool : history.pools)
    if (const PoolWater water = water_of(pool.visits); water.days > 0)
      for (const double day : {water.first_day, water.last_day})
        days.push_back(day);
  const auto [first, last] = std::minmax_element(days.begin(), days.end());
  days = {*first, *last};
  for (const EventMass& mass : curve.masses)
    if (std::isfinite(mass.where.by))
      days.push_back(mass.where.by);
  std::sort(days.begin(), days.end());
  days.erase(std::unique(days.begin(), days.end()), days.end());
  return days;
}

/// Where all draws agree they say nothing of how sure the share is: then it is that of so many pools.
Interval widened(const Interval& band, double share, std::size_t n, double level) {
  if (band.low < band.high)
    return band;
  const auto count = static_cast<double>(n);
  const auto wilson = wilson_interval(std::round(share * count), count, level);
  return wilson ? wilson.value() : band;
}

void of_programme(const SummaryRun& run, SeasonSummary& summary) {
  for (const PoolGroup& group : pool_groups(run)) {
    const GroupWater water = water_of(run.history, group);
    const auto add = [&](Figure figure) {
      summary.programme.push_back({group.column, group.group, std::move(figure)});
    };
    const bool whole = group.column.empty();
    std::vector<double> days;
    std::vector<Interval> band;
    const auto curve = event_curve(water.drying);
    if (whole && curve)
      days = curve_days(run.history, curve.value());
    add(share_figure(pools_wet, water.seen_wet, water.drying.size(), run.options.level, "visited pool"));
    add(share_figure(pools_dried, water.seen_dry_again, water.seen_wet, run.options.level,
                     "pool with water"));
    add(half_figure(run, half_dry, water.drying, days, &band));
    add(half_seen_figure(run, water.seen));
    if (!whole)
      continue;
    add(half_figure(run, half_wet_days, water.lasting, {}, nullptr));
    for (std::size_t i = 0; i < band.size(); ++i) {
      const double share = share_after(curve.value(), days[i]);
      const Interval around = widened(band[i], share, water.drying.size(), run.options.level);
      summary.still_wet.push_back({days[i], share, around.low, around.high});
    }
  }
}

} // namespace

SummaryTopic wet_spell_topic() {
  return {catalogue, of_pool, of_programme};
}

} // namespace wetspell
