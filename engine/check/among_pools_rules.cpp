// Rules about a pool that does something else than the others in the same days.
#include "check/neighbours.hpp"
#include "check/readings.hpp"
#include "check/say.hpp"
#include "quantity/print.hpp"

#include <fmt/format.h>

#include <cmath>
#include <limits>

namespace wetspell {

namespace {

// What is always allowed for, however alike the pools were that week: judgement.
constexpr double depth_floor = 0.03;      // metres: two sticks in soft ground, an inch each
constexpr double fill_floor = 0.1;        // of one: judged by eye to the nearest tenth
constexpr double temperature_floor = 1.5; // °C: sun and shade, morning and afternoon
constexpr double no_bound = std::numeric_limits<double>::infinity();

/// Gathers one reading from every visit that has it; the others are undecided.
PoolReadings gather(const SeasonView& view, Verdicts& verdicts, double Compared::*reading) {
  PoolReadings readings;
  readings.all.reserve(view.compared.size());
  readings.ends.reserve(view.pool_visits.size());
  for (const auto& visits : view.pool_visits) {
    for (const std::uint32_t index : visits) {
      const Compared& visit = view.compared[index];
      if (std::isnan(visit.*reading)) {
        verdicts.undecided();
      } else {
        readings.all.push_back({index, visit.day, visit.*reading});
      }
    }
    readings.ends.push_back(readings.all.size());
  }
  return readings;
}

FarTest far_test(const SeasonView& view, double floor, double lowest, double highest) {
  const Limits& limits = view.season.limits;
  return {floor, lowest, highest, limits[Limit::neighbours_far], limits[Limit::neighbours_least]};
}

template <class Say> void put(const Aparts& found, Verdicts& verdicts, Say say_it) {
  verdicts.holds(found.holding);
  verdicts.undecided(found.undecided);
  for (const Apart& apart : found.failing) {
    verdicts.fails(apart.visit, say_it(apart));
  }
}

/// "rose by 3 in", "fell by 3 in", "stayed as they were".
std::string moved(const SeasonView& view, Kind kind, double change) {
  const std::string amount = say_difference(view, kind, std::abs(change));
  const bool still = amount == say_difference(view, kind, 0);
  return still ? "stayed as they were" : fmt::format("{} by {}", change > 0 ? "rose" : "fell", amount);
}

/// Depth or fill that went another way than in the other pools.
void compare(const SeasonView& view, Verdicts& verdicts, Field field, Kind kind, std::vector<Field> behind,
             const FarTest& test, double Compared::*reading) {
  const PoolReadings readings = gather(view, verdicts, reading);
  put(changes_apart(readings, test), verdicts, [&](const Apart& apart) {
    const bool later = view.visit(apart.other).date.si < view.visit(apart.visit).date.si;
    const std::uint32_t from = later ? apart.other : apart.visit;
    const std::uint32_t to = later ? apart.visit : apart.other;
    Doubt found =
        doubt(field,
              fmt::format("{} went from {} on {} to {} on {}, but {} other pools {} in those days.",
                          heading(field), say(view, kind, view.compared[from].*reading),
                          print_date(view.visit(from).date.si), say(view, kind, view.compared[to].*reading),
                          print_date(view.visit(to).date.si), apart.others, moved(view, kind, apart.usual)),
              behind);
    found.other_row = apart.other;
    return found;
  });
}

void depth_like_others(const SeasonView& view, Verdicts& verdicts) {
  compare(view, verdicts, Field::visit_depth, Kind::depth,
          {Field::visit_pool, Field::visit_date, Field::visit_water},
          far_test(view, depth_floor, 0, no_bound), &Compared::depth);
}

RuleSpec depth_unlike_others() {
  return {"depth-unlike-others",
          Family::among_pools,
          Level::ask,
          Scope::season,
          "The water of a pool rises and falls with that of the other pools in the same days",
          "Ask whether the depth was taken at the deepest point, in which unit, and whether the pool was let "
          "out.",
          "Was the depth taken at the deepest point, in which unit, and had the pool been let out or dammed?",
          "judgement: rain and drying reach all pools of a region; how far is far follows the season's own "
          "spread "
          "(median and median absolute deviation)",
          {Field::visit_pool, Field::visit_date, Field::visit_depth},
          &depth_like_others};
}

void fill_like_others(const SeasonView& view, Verdicts& verdicts) {
  compare(view, verdicts, Field::visit_fill, Kind::percent, {Field::visit_pool, Field::visit_date},
          far_test(view, fill_floor, 0, 1), &Compared::fill);
}

RuleSpec fill_unlike_others() {
  return {"fill-unlike-others",
          Family::among_pools,
          Level::ask,
          Scope::season,
          "Pools fill and empty together in the same days",
          "Ask what the per cent was judged against: the basin's highest mark, or the last visit.",
          "What was it judged against: the basin's highest mark, or the last visit?",
          "judgement: rain and drying reach all pools of a region; how far is far follows the season's own "
          "spread "
          "(median and median absolute deviation)",
          {Field::visit_pool, Field::visit_date, Field::visit_fill},
          &fill_like_others};
}

void temperature_like_others(const SeasonView& view, Verdicts& verdicts) {
  const PoolReadings readings = gather(view, verdicts, &Compared::temperature);
  put(levels_apart(readings, far_test(view, temperature_floor, -no_bound, no_bound)), verdicts,
      [&](const Apart& apart) {
        return doubt(
            temperature_fields[first_temperature(view.visit(apart.visit))],
            fmt::format("The mean of {} on {} is far from the {} of {} readings in other pools that day, "
                        "the day before and the day after.",
                        say(view, Kind::temperature, view.compared[apart.visit].temperature),
                        print_date(view.visit(apart.visit).date.si),
                        say(view, Kind::temperature, apart.usual), apart.others),
            {Field::visit_pool, Field::visit_date, Field::visit_temperature_2, Field::visit_temperature_3});
      });
}

RuleSpec temperature_unlike_others() {
  return {"temperature-unlike-others",
          Family::among_pools,
          Level::ask,
          Scope::season,
          "The water of a pool is about as warm as that of the other pools in the same days",
          "Ask for the unit of the thermometer and where in the water it was held.",
          "In which unit does the thermometer read, and where in the water was it held?",
          "judgement: the weather of a day reaches all pools of a region; how far is far follows the "
          "season's own "
          "spread (median and median absolute deviation)",
          {Field::visit_pool, Field::visit_date},
          &temperature_like_others,
          {temperature_fields.begin(), temperature_fields.end()}};
}

} // namespace

std::span<const RuleSpec> among_pools_rules() {
  static const std::vector<RuleSpec> all{depth_unlike_others(), fill_unlike_others(),
                                         temperature_unlike_others()};
  return all;
}

} // namespace wetspell
