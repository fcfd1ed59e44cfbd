// A pool's basin and the water in it: shape, volumes, and how full it is by its depth.
#include "estimate/say_figure.hpp"
#include "estimate/summary.hpp"
#include "measure/basin.hpp"
#include "quantity/print.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace wetspell {

namespace {

enum Entry : std::size_t { basin_shape, area_at_one_metre, volume_latest, volume_brim, fill_by_depth };

constexpr std::string_view hayashi =
    "Hayashi and van der Kamp (2000), J. Hydrology 237, 74-85; JCGM 100:2008";
constexpr std::string_view hayashi_drawn =
    "Hayashi and van der Kamp (2000), J. Hydrology 237, 74-85; JCGM 100:2008; JCGM 101:2008";

constexpr std::array<FigureSpec, 5> catalogue{{
    {"basin-shape", "Shape of the basin", Figured::number,
     "How the basin widens upwards: 1 a cone, 2 a bowl, more a tub. From depth and area of two visits or "
     "more; "
     "else the shape in the settings. n: visits with both.",
     hayashi},
    {"basin-area", "Area at a depth of 1 m", Figured::area,
     "Scale of the basin: the area that its water would have at a depth of 1 m (39.4 in). n: visits with "
     "depth "
     "and area.",
     hayashi},
    {"volume-latest", "Volume, latest visit", Figured::volume,
     "Water in the pool on the latest visit with a depth. n: visits with depth and area, from which the "
     "basin "
     "is known.",
     hayashi_drawn},
    {"volume-brim", "Volume when full", Figured::volume,
     "What the basin holds at the greatest depth ever read, in the table of pools or on a visit. n: visits "
     "with depth and area.",
     hayashi_drawn},
    {"fill-by-depth", "Fill by depth", Figured::share,
     "Share of the volume when full on the latest visit with a depth, worked out from that depth: a second "
     "look at the fill as judged. n: visits with depth and area.",
     hayashi},
}};

/// Above this share of itself an exponent's uncertainty says that the depths cannot tell the shape.
constexpr double shape_not_told = 0.5;

struct Water {
  std::optional<Basin> basin;
  std::string why;                           ///< no basin; or what is to be said of it
  std::size_t n = 0;                         ///< visits with depth and area
  const CountedVisit* latest = nullptr;      ///< with a depth
  std::optional<std::size_t> latest_reading; ///< of the fit, if the latest visit is part of it
  std::optional<Measured> brim;
};

bool doubted_brim(const SummaryRun& run, const PoolHistory& pool) {
  return std::ranges::any_of(run.history.left_out, [&](const LeftOut& out) {
    return out.table == TableKind::pools && out.record == pool.pool && out.field == Field::pool_deepest;
  });
}

std::optional<Measured> brim_of(const SummaryRun& run, const PoolHistory& pool) {
  std::optional<Measured> brim;
  if (!doubted_brim(run, pool))
    brim = deepest_ever(run.season().pools[pool.pool]);
  for (const CountedVisit& visit : pool.visits)
    if (visit.depth && visit.depth->value > 0 && (!brim || visit.depth->value > brim->value))
      brim = visit.depth;
  return brim;
}

void choose_basin(const SummaryRun& run, Water& water, std::span<const BasinReading> readings) {
  if (readings.empty()) {
    water.why = "no visit with both depth and area";
    return;
  }
  const double usual = run.season().settings.basin_shape;
  const auto fitted = basin_from_readings(readings);
  const bool told = fitted && fitted.value().exponent_uncertainty > 0 &&
                    fitted.value().exponent_uncertainty <= shape_not_told * fitted.value().exponent;
  if (told) {
    water.basin = fitted.value();
    return;
  }
  const auto given = basin_with_shape(readings.back(), usual);
  if (!given)
    return;
  water.basin = given.value();
  // The fit would have been made from all of them, this one has the last visit alone.
  if (water.latest_reading)
    water.latest_reading =
        *water.latest_reading + 1 == readings.size() ? std::optional<std::size_t>(0) : std::nullopt;
  if (readings.size() == 1)
    water.why = fmt::format("one visit with depth and area: the shape is taken as {}", plain(usual));
  else if (fitted)
    water.why =
        fmt::format("the depths lie too near each other to tell the shape: taken as {}", plain(usual));
  else if (fitted.error().kind == ProblemKind::not_enough)
    water.why = fmt::format("the same depth on all visits: the shape is taken as {}", plain(usual));
  else
    water.why = fmt::format("the area did not grow with depth: the shape is taken as {}", plain(usual));
}

Water water_in(const SummaryRun& run, const PoolHistory& pool) {
  Water water;
  std::vector<BasinReading> readings;
  for (const CountedVisit& visit : pool.visits) {
    if (!visit.depth)
      continue;
    water.latest = &visit;
    water.latest_reading.reset();
    if (visit.depth->value > 0 && visit.area && visit.area->value > 0) {
      water.latest_reading = readings.size();
      readings.push_back({*visit.depth, *visit.area});
    }
  }
  water.n = readings.size();
  water.brim = brim_of(run, pool);
  choose_basin(run, water, readings);
  return water;
}

/// A positive number's interval is as wide upwards as downwards in its logarithm.
Figure positive(const FigureSpec& spec, const Measured& measured, std::size_t n, double level) {
  if (!(measured.uncertainty > 0))
    return plain_figure(spec, measured.value, n);
  const Interval ends = spread_of(measured, level);
  return interval_figure(spec, measured.value, ends.low, ends.high, n, level);
}

Figure volume(const SummaryRun& run, Entry entry, const Water& water, const Measured& depth,
              std::optional<std::size_t> reading) {
  const auto found = volume_at(*water.basin, depth, reading);
  if (!found)
    return cannot_say(catalogue[entry], "too large to be worked out", water.n);
  const Measured& volume = found.value();
  if (volume.uncertainty <= large_uncertainty * volume.value)
    return with_note(positive(catalogue[entry], volume, water.n, run.options.level), water.why);
  const auto drawn =
      volume_drawn(*water.basin, depth, reading, run.options.level, run.options.draws, run.options.seed);
  if (!drawn)
    return cannot_say(catalogue[entry], drawn.error().text, water.n);
  return with_note(interval_figure(catalogue[entry], drawn.value().volume.value, drawn.value().interval.low,
                                   drawn.value().interval.high, water.n, run.options.level),
                   water.why);
}

Figure shape(const SummaryRun& run, const Water& water) {
  const Measured shape = water.basin->shape();
  if (water.basin->shape_given)
    return with_note(plain_figure(catalogue[basin_shape], shape.value, water.n), water.why);
  return positive(catalogue[basin_shape], shape, water.n, run.options.level);
}

Figure fill(const SummaryRun& run, const Water& water) {
  if (!water.brim)
    return cannot_say(catalogue[fill_by_depth], "no depth", water.n);
  const auto found = fill_from_depth(*water.basin, *water.latest->depth, *water.brim);
  if (!found)
    return cannot_say(catalogue[fill_by_depth], "too large to be worked out", water.n);
  Figure figure = measured_figure(catalogue[fill_by_depth], found.value(), water.n, run.options.level);
  if (water.latest->fill)
    figure.note = fmt::format("judged {} full on that visit",
                              in_words(water.latest->fill->value, Figured::share, run.season().settings));
  return figure;
}

void of_pool(const SummaryRun& run, const PoolHistory& pool, PoolSummary& summary) {
  const Water water = water_in(run, pool);
  if (!water.basin) {
    for (const FigureSpec& spec : catalogue)
      summary.figures.push_back(cannot_say(spec, water.why));
    return;
  }
  summary.figures.push_back(shape(run, water));
  summary.figures.push_back(with_note(
      positive(catalogue[area_at_one_metre], water.basin->scale(), water.n, run.options.level), water.why));
  summary.figures.push_back(volume(run, volume_latest, water, *water.latest->depth, water.latest_reading));
  summary.figures.push_back(volume(run, volume_brim, water, *water.brim, {}));
  summary.figures.push_back(fill(run, water));
}

} // namespace

SummaryTopic basin_topic() {
  return {catalogue, of_pool, nullptr};
}

} // namespace wetspell
