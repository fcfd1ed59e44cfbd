// Rules about the counts of one row: what the first person, the second and both of them saw.
#include "check/life_family.hpp"
#include "check/say.hpp"
#include "quantity/print.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace wetspell {

namespace {

struct CountField {
  Field field;
  Quantity LifeCount::*member;
  std::string_view what;
};
constexpr std::array count_fields{
    CountField{Field::life_by_first, &LifeCount::by_first, "count of the first person"},
    CountField{Field::life_by_second, &LifeCount::by_second, "count of the second person"},
    CountField{Field::life_by_both, &LifeCount::by_both, "count seen by both"},
};

std::string count_words(double count) {
  return plain(count, 2);
}

Outcome counts_whole(const SeasonView& view, const LifeCount& life, Doubts& doubts) {
  bool any = false;
  for (const CountField& one : count_fields) {
    const Quantity& count = life.*one.member;
    any = any || count.typed();
    const std::string_view why = text(count.reason);
    const bool odd = count.has_value() && (count.si < 0 || count.si != std::floor(count.si));
    if (count.status == Status::bad) {
      doubts.push_back(doubt(one.field, fmt::format("The {} {} cannot be read: {}.", one.what,
                                                    as_typed(view, one.field, life.row), why)));
    } else if (odd) {
      doubts.push_back(doubt(
          one.field, fmt::format("The {} is {}, but animals and egg masses come in whole numbers from 0 on.",
                                 one.what, as_typed(view, one.field, life.row))));
    }
  }
  return doubts.empty() ? (any ? Outcome::holds : Outcome::undecided) : Outcome::fails;
}

RuleSpec count_unreadable() {
  return {"count-unreadable",
          Family::life,
          Level::fix,
          Scope::reading,
          "A count is a whole number, 0 or more",
          "Look on the field sheet and write the number alone; words belong into the notes.",
          "How many were there, as one whole number?",
          "common practice, no source",
          {Field::life_by_first},
          &counts_whole};
}

Outcome both_within_each(const SeasonView& view, const LifeCount& life, Doubts& doubts) {
  (void)view;
  if (!life.by_both.has_value() || (!life.by_first.has_value() && !life.by_second.has_value())) {
    return Outcome::undecided;
  }
  for (const CountField& one : {count_fields[0], count_fields[1]}) {
    const Quantity& alone = life.*one.member;
    if (alone.has_value() && life.by_both.si > alone.si) {
      doubts.push_back(doubt(Field::life_by_both,
                             fmt::format("Both saw {}, but the {} is only {}.", count_words(life.by_both.si),
                                         one.what, count_words(alone.si)),
                             {Field::life_by_first, Field::life_by_second}));
      return Outcome::fails;
    }
  }
  return Outcome::holds;
}

RuleSpec both_over_either() {
  return {"both-over-either",
          Family::life,
          Level::fix,
          Scope::visit,
          "What both saw is not more than either of them counted",
          "Ask for the three counts; what both saw is part of each person's count.",
          "How many did each of you count, and how many of these did both see?",
          "common practice, no source",
          {Field::life_by_first, Field::life_by_both},
          &both_within_each};
}

Outcome second_person_named(const SeasonView& view, const LifeCount& life, Doubts& doubts) {
  (void)view;
  if (!life.by_second.has_value() && !life.by_both.has_value()) {
    return Outcome::undecided;
  }
  if (life.second_person.typed()) {
    return Outcome::holds;
  }
  const bool second = life.by_second.has_value();
  doubts.push_back(doubt(Field::life_second_person,
                         fmt::format("The {} is {}, but no second person is named.",
                                     second ? count_fields[1].what : count_fields[2].what,
                                     count_words(second ? life.by_second.si : life.by_both.si)),
                         {Field::life_by_second, Field::life_by_both}));
  return Outcome::fails;
}

RuleSpec second_count_of_nobody() {
  return {"second-count-of-nobody",
          Family::life,
          Level::ask,
          Scope::visit,
          "A second count names the second person",
          "Ask who counted for themselves beside the first person.",
          "Who made the second count?",
          "common practice, no source",
          {Field::life_by_second, Field::life_second_person},
          &second_person_named};
}

Outcome both_need_two(const SeasonView& view, const LifeCount& life, Doubts& doubts) {
  (void)view;
  if (!life.by_both.has_value()) {
    return Outcome::undecided;
  }
  if (life.by_first.typed() && life.by_second.typed()) {
    return Outcome::holds;
  }
  const CountField& lacking = life.by_first.typed() ? count_fields[1] : count_fields[0];
  doubts.push_back(
      doubt(lacking.field,
            fmt::format("Both saw {}, but the {} is blank.", count_words(life.by_both.si), lacking.what),
            {Field::life_by_both}));
  return Outcome::fails;
}

RuleSpec both_without_each() {
  return {"both-without-each",
          Family::life,
          Level::ask,
          Scope::visit,
          "What both saw stands beside what each of them counted",
          "Ask for each person's own count; without both counts the number missed cannot be worked out.",
          "How many did each of you count?",
          "common practice, no source",
          {Field::life_by_first, Field::life_by_second, Field::life_by_both},
          &both_need_two};
}

constexpr double few_apart = 5; // counts this near say nothing about the people

Outcome two_counts_agree(const SeasonView& view, const LifeCount& life, Doubts& doubts) {
  if (!life.by_first.has_value() || !life.by_second.has_value()) {
    return Outcome::undecided;
  }
  const double apart = std::abs(life.by_first.si - life.by_second.si);
  const double larger = std::max(life.by_first.si, life.by_second.si);
  const double most = view.season.limits[Limit::observers_differ];
  if (apart <= few_apart || apart <= most * larger) {
    return Outcome::holds;
  }
  doubts.push_back(doubt(
      Field::life_by_second,
      fmt::format("The first person counted {}, the second {}: {:.0f} per cent apart, more than {:.0f}.",
                  count_words(life.by_first.si), count_words(life.by_second.si), 100 * apart / larger,
                  100 * most),
      {Field::life_by_first}));
  return Outcome::fails;
}

RuleSpec two_counts_apart() {
  return {"two-counts-apart",
          Family::life,
          Level::ask,
          Scope::visit,
          "Two people's counts of the same animals agree roughly",
          "Ask whether both searched the whole pool, and for a recount of the egg masses.",
          "Was the whole pool searched by both, and could the egg masses be counted once more?",
          "judgement: twice the 12 per cent between two people in Crouch and Paton 2000, Wildlife Society "
          "Bulletin 28:895-901",
          {Field::life_by_first, Field::life_by_second},
          &two_counts_agree};
}

/// The most that the species table allows for this animal in this form; 0 where it names no limit. A row for
/// the form goes before one for any form.
double most_expected(const Season& season, const LifeCount& life) {
  double any_form = 0;
  for (const Species& species : season.species) {
    if (species.name != season.species_names[static_cast<std::size_t>(life.species.index)]) {
      continue;
    }
    if (species.seen_as.index == life.seen_as.index && life.seen_as.chosen()) {
      return species.most;
    }
    any_form = species.seen_as.chosen() ? any_form : species.most;
  }
  return any_form;
}

Outcome count_within_most(const SeasonView& view, const LifeCount& life, Doubts& doubts) {
  const auto count = counted_animals(life);
  if (!count) {
    return Outcome::undecided;
  }
  const double own = life.species.known() ? most_expected(view.season, life) : 0;
  const double most = own > 0 ? own : view.season.limits[Limit::count_most];
  if (*count <= most) {
    return Outcome::holds;
  }
  const bool first = life.by_first.has_value() && life.by_first.si >= *count;
  doubts.push_back(doubt(first ? Field::life_by_first : Field::life_by_second,
                         fmt::format("The count of {} is {}, more than the {} at most in one pool.",
                                     animal_words(view.season, life), count_words(*count), count_words(most)),
                         {Field::life_species, Field::life_seen_as}));
  return Outcome::fails;
}

RuleSpec count_beyond_most() {
  return {"count-beyond-most",
          Family::life,
          Level::ask,
          Scope::visit,
          "A count is not above the most that the species reaches in one pool",
          "Ask whether egg masses were counted, not eggs, and how.",
          "What was counted, masses or single eggs or animals, and how?",
          "Dryad 0cfxpnw3r: 0 to 1,113 egg masses of wood frogs in 64 wetlands over 21 years; the table of "
          "species "
          "goes before it",
          {Field::life_by_first},
          &count_within_most};
}

} // namespace

std::vector<RuleSpec> life_count_rules() {
  return {count_unreadable(),  both_over_either(), second_count_of_nobody(),
          both_without_each(), two_counts_apart(), count_beyond_most()};
}

} // namespace wetspell
