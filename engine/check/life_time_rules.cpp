// Rules that hold counts of life against the season, the visits of that day, and earlier counts.
#include "check/life_family.hpp"
#include "check/say.hpp"
#include "quantity/print.hpp"
#include "season/species.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wetspell {

namespace {

/// The pool's visits on the day of the count.
std::span<const std::uint32_t> visits_that_day(const SeasonView& view, const LifeCount& life) {
  const auto& visits = view.pool_visits[static_cast<std::size_t>(life.pool.index)];
  const double day = std::floor(life.date.si);
  const auto on_or_after = [&](double from) {
    return std::partition_point(visits.begin(), visits.end(),
                                [&](std::uint32_t index) { return view.visit(index).date.si < from; });
  };
  return {on_or_after(day), on_or_after(day + 1)};
}

bool placed(const LifeCount& life) {
  return life.pool.known() && life.date.has_value();
}

Outcome eggs_in_water(const SeasonView& view, const LifeCount& life, Doubts& doubts) {
  const auto count = counted_animals(life);
  const bool of_water = life.seen_as.is(SeenAs::egg_masses) || life.seen_as.is(SeenAs::larvae);
  if (!placed(life) || !count || !life.seen_as.chosen()) {
    return Outcome::undecided;
  }
  if (!of_water || *count <= 0) {
    return Outcome::holds;
  }
  bool any = false;
  for (const std::uint32_t index : visits_that_day(view, life)) {
    const Visit& visit = view.visit(index);
    any = any || visit.water.chosen();
    if (visit.water.chosen() && !visit.water.is(Water::none)) {
      return Outcome::holds;
    }
  }
  if (!any) {
    return Outcome::undecided;
  }
  doubts.push_back(
      doubt(life.by_first.has_value() ? Field::life_by_first : Field::life_by_second,
            fmt::format("{} of {} were counted, but the visit of {} says that there was no standing water.",
                        plain(*count, 2), animal_words(view.season, life), print_date(life.date.si)),
            {Field::life_pool, Field::life_seen_as}));
  return Outcome::fails;
}

RuleSpec eggs_without_water() {
  return {"eggs-without-water",
          Family::life,
          Level::ask,
          Scope::season,
          "Egg masses and larvae are seen where there is standing water",
          "Ask whether the masses lay dry, and write it into the notes; otherwise correct the water.",
          "Did they lie dry, or was there water after all?",
          "common practice, no source",
          {Field::life_seen_as, Field::life_by_first, Field::visit_water},
          &eggs_in_water};
}

Outcome in_its_season(const SeasonView& view, const LifeCount& life, Doubts& doubts) {
  const auto count = counted_animals(life);
  if (!life.species.known() || !life.date.has_value() || !count) {
    return Outcome::undecided;
  }
  const Species* expected = nullptr;
  for (const Species& species : view.season.species) {
    const bool form = !species.seen_as.chosen() || species.seen_as.index == life.seen_as.index;
    if (form && (species.first_day != 0 || species.last_day != 0) &&
        species.name == view.season.species_names[static_cast<std::size_t>(life.species.index)]) {
      expected = &species;
      if (species.seen_as.chosen()) {
        break; // a row for the form goes before one for any form
      }
    }
  }
  if (expected == nullptr) {
    return Outcome::undecided;
  }
  if (*count <= 0 || within_days(life.date.si, expected->first_day, expected->last_day)) {
    return Outcome::holds;
  }
  doubts.push_back(
      doubt(Field::life_date,
            fmt::format("{} of {} were counted on {}; they are expected from {} to {}.", plain(*count, 2),
                        animal_words(view.season, life), print_date(life.date.si),
                        expected->first_day == 0 ? "January 1" : day_of_year_text(expected->first_day),
                        expected->last_day == 0 ? "December 31" : day_of_year_text(expected->last_day)),
            {Field::life_species, Field::life_seen_as, Field::life_by_first}));
  return Outcome::fails;
}

RuleSpec out_of_its_season() {
  return {"out-of-its-season",
          Family::life,
          Level::ask,
          Scope::visit,
          "A species is seen in a form at the time of year at which it has that form",
          "Ask for the day and for a photograph; the species or the form may be another.",
          "Is the day right, and is there a photograph? It may have been another animal or another form.",
          "common practice, no source",
          {Field::life_species, Field::life_date, Field::life_by_first},
          &in_its_season};
}

Outcome counted_once(const SeasonView& view, const LifeCount& before, const LifeCount& now, Doubts& doubts) {
  if (std::floor(before.date.si) != std::floor(now.date.si)) {
    return Outcome::holds;
  }
  const auto then = counted_animals(before);
  const auto here = counted_animals(now);
  doubts.push_back({Field::life_species,
                    fmt::format("Two rows count {} on {}: {} and {}.", animal_words(view.season, now),
                                print_date(now.date.si), then ? plain(*then, 2) : "nothing",
                                here ? plain(*here, 2) : "nothing"),
                    {},
                    {},
                    {Field::life_pool, Field::life_seen_as, Field::life_by_first},
                    static_cast<std::uint32_t>(&before - view.season.life.data())});
  return Outcome::fails;
}

RuleSpec counted_twice() {
  return {"counted-twice",
          Family::life,
          Level::ask,
          Scope::pool_over_time,
          "A pool has one row for each species and form on one day",
          "Write the counts of two people into one row; leave only one of two equal rows.",
          "Are these two counts, or one that was written down twice?",
          "common practice, no source",
          {Field::life_pool, Field::life_date, Field::life_species, Field::life_seen_as},
          &counted_once};
}

// A few animals more or less are chance, whatever the ratio.
constexpr double chance_apart = 10;

/// Egg masses only: animals come and go, masses are laid within days and stay until they hatch.
template <bool grows>
Outcome count_steady(const SeasonView& view, const LifeCount& before, const LifeCount& now, Doubts& doubts) {
  const auto then = counted_animals(before);
  const auto here = counted_animals(now);
  if (!now.seen_as.is(SeenAs::egg_masses) || !then || !here ||
      std::floor(before.date.si) == std::floor(now.date.si)) {
    return Outcome::undecided;
  }
  const double most = view.season.limits[Limit::count_change];
  constexpr double hatched_after = 21; // days: masses of spring hatch and fall apart in three weeks or more
  const double days = now.date.si - before.date.si;
  const double small = grows ? *then : *here;
  const double large = grows ? *here : *then;
  const bool beginning = grows && small <= 0; // laying begins between two visits
  const bool hatched = !grows && days > hatched_after;
  if (large - small <= chance_apart || large <= most * small || beginning || hatched) {
    return Outcome::holds;
  }
  doubts.push_back({now.by_first.has_value() ? Field::life_by_first : Field::life_by_second,
                    fmt::format("{}: {} on {}, but {} on {}, {} before; {} is doubtful.",
                                animal_words(view.season, now), plain(*here, 2), print_date(now.date.si),
                                plain(*then, 2), print_date(before.date.si), say_days(days),
                                grows ? fmt::format("more than {} times as many", plain(most, 2))
                                      : fmt::format("less than one part in {}", plain(most, 2))),
                    {},
                    {},
                    {Field::life_pool, Field::life_species, Field::life_by_second},
                    static_cast<std::uint32_t>(&before - view.season.life.data())});
  return Outcome::fails;
}

/// The pool's nearest count of the same species and form before (step -1) or after (1) this one.
const LifeCount* like_it(const SeasonView& view, const LifeCount& life, std::ptrdiff_t step) {
  constexpr int looked_through = 40; // rows: a few visits, all species
  const auto& rows = view.pool_life[static_cast<std::size_t>(life.pool.index)];
  const auto record = static_cast<std::uint32_t>(&life - view.season.life.data());
  const auto day = [&](std::uint32_t row) { return view.season.life[row].date.si; };
  auto at = std::partition_point(rows.begin(), rows.end(),
                                 [&](std::uint32_t row) { return day(row) < life.date.si; }) -
            rows.begin();
  const auto end = static_cast<std::ptrdiff_t>(rows.size());
  while (at < end && rows[static_cast<std::size_t>(at)] != record)
    ++at;
  for (int looked = 0; looked < looked_through; ++looked) {
    at += step;
    if (at < 0 || at >= end)
      return nullptr;
    const LifeCount& one = view.season.life[rows[static_cast<std::size_t>(at)]];
    if (one.species == life.species && one.seen_as.index == life.seen_as.index)
      return &one;
  }
  return nullptr;
}

Outcome nought_like_others(const SeasonView& view, const LifeCount& life, Doubts& doubts) {
  constexpr double suspicious = 50; // smaller counts leap about by themselves
  constexpr double close = 1.6;     // how near a tenth of it must come to the counts before and after
  const auto count = counted_animals(life);
  if (!count || !placed(life) || !life.species.known())
    return Outcome::undecided;
  if (*count < suspicious || std::fmod(*count, 10) != 0)
    return Outcome::holds;
  const double meant = *count / 10;
  const LifeCount* beside = nullptr;
  for (const std::ptrdiff_t step : {-1, 1}) {
    const LifeCount* one = like_it(view, life, step);
    const auto number = one == nullptr ? std::nullopt : counted_animals(*one);
    if (!number)
      continue;
    if (*number > close * meant || meant > close * *number)
      return Outcome::holds;
    beside = beside == nullptr ? one : beside;
  }
  if (beside == nullptr)
    return Outcome::undecided;
  const bool first = life.by_first.has_value() && life.by_first.si >= *count;
  const Field field = first ? Field::life_by_first : Field::life_by_second;
  doubts.push_back(
      doubt(field,
            fmt::format("The count of {} is {}, but was {} on {}; it may have a nought too many.",
                        animal_words(view.season, life), plain(*count, 2),
                        plain(*counted_animals(*beside), 2), print_date(beside->date.si)),
            {Field::life_pool, Field::life_date, Field::life_species, Field::life_seen_as},
            {{field, Cell::of_number(meant)}}));
  doubts.back().other_row = static_cast<std::uint32_t>(beside - view.season.life.data());
  return Outcome::fails;
}

std::vector<Field> count_needs() {
  return {Field::life_pool, Field::life_date, Field::life_species, Field::life_seen_as, Field::life_by_first};
}

RuleSpec nought_too_many() {
  return {"nought-too-many",
          Family::life,
          Level::ask,
          Scope::pool_over_time,
          "A count does not stand tenfold between the counts before and after it",
          "Look at the field sheet for the number of digits.",
          "How many were there, and is the last nought right?",
          "judgement: a tenth of it fits the pool's other counts of the same kind",
          count_needs(),
          &nought_like_others};
}

RuleSpec count_leaps() {
  return {"count-leaps",
          Family::life,
          Level::ask,
          Scope::pool_over_time,
          "Egg masses do not multiply between two counts of a pool",
          "Ask both people whether they searched the same parts of the pool.",
          "Which parts of the pool were searched at each of the two counts?",
          "judgement: laying lasts days; a count doubles between visits, rarely more",
          count_needs(),
          &count_steady<true>};
}

RuleSpec count_shrinks() {
  return {"count-shrinks",
          Family::life,
          Level::ask,
          Scope::pool_over_time,
          "Egg masses do not vanish between two counts within three weeks",
          "Ask whether the whole pool was searched, or whether the masses had hatched or frozen.",
          "Was the whole pool searched, or had the masses hatched or frozen?",
          "judgement: masses stay in sight until they hatch; what is left of many is seldom a few",
          count_needs(),
          &count_steady<false>};
}

} // namespace

std::vector<RuleSpec> life_time_rules() {
  return {nought_too_many(), out_of_its_season(), eggs_without_water(),
          counted_twice(),   count_leaps(),       count_shrinks()};
}

} // namespace wetspell
