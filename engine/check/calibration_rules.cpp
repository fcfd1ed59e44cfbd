// Rules about people's calibration walks over a taped course.
#include "check/say.hpp"
#include "check/size_family.hpp"
#include "check/size_lines.hpp"
#include "quantity/print.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace wetspell {

namespace {

constexpr std::array run_fields{Field::person_run_1, Field::person_run_2, Field::person_run_3,
                                Field::person_run_4};

std::size_t index_of(const Season& season, const Person& person) {
  return static_cast<std::size_t>(&person - season.people.data());
}

/// The fields that a pace rests on.
std::vector<Field> calibration() {
  return {Field::person_counts, Field::person_course, Field::person_run_1,
          Field::person_run_2,  Field::person_run_3,  Field::person_run_4};
}

int runs_typed(const Person& person) {
  const auto runs = person.runs();
  return static_cast<int>(
      std::count_if(runs.begin(), runs.end(), [](const Quantity& q) { return q.typed(); }));
}

Outcome walks_readable(const SeasonView& view, const Person& person, Doubts& doubts) {
  const auto look = [&](Field field, std::string_view what, const Quantity& read) {
    const bool unread = read.status == Status::bad;
    if (!unread && !(read.has_value() && read.written <= 0)) {
      return;
    }
    const std::string said = as_typed(view, field, person.row);
    doubts.push_back(
        doubt(field, unread ? fmt::format("The {} {} cannot be read: {}.", what, said, text(read.reason))
                            : fmt::format("The {} is given as {}, but has to be more than 0.", what, said)));
  };
  look(Field::person_course, "taped course", person.course);
  const auto runs = person.runs();
  for (std::size_t run = 0; run < runs.size(); ++run) {
    look(run_fields[run], "count over the course", runs[run]);
  }
  if (!doubts.empty()) {
    return Outcome::fails;
  }
  return person.course.typed() || runs_typed(person) > 0 ? Outcome::holds : Outcome::undecided;
}

RuleSpec calibration_unreadable() {
  return {"calibration-unreadable",
          Family::size,
          Level::fix,
          Scope::reading,
          "The taped course and the counts over it are numbers over 0",
          "Look at the person's calibration sheet and write the number alone.",
          "How long was the taped course, and what was counted on each walk?",
          "common practice, no source",
          {Field::person_course},
          &walks_readable};
}

Outcome course_and_runs(const SeasonView& view, const Person& person, Doubts& doubts) {
  const int runs = runs_typed(person);
  if (!person.course.typed() && runs == 0) {
    return Outcome::undecided;
  }
  if (person.course.typed() && runs > 0) {
    return Outcome::holds;
  }
  if (runs == 0) {
    doubts.push_back(
        doubt(Field::person_run_1,
              fmt::format("{:.40} has a taped course of {}, but no count over it.", person.code,
                          person.course.has_value() ? say(view, Kind::length, person.course.si)
                                                    : as_typed(view, Field::person_course, person.row)),
              {Field::person_course}));
  } else {
    const auto all = person.runs();
    const auto first = std::find_if(all.begin(), all.end(), [](const Quantity& q) { return q.typed(); });
    const Field field = run_fields[static_cast<std::size_t>(first - all.begin())];
    doubts.push_back(doubt(Field::person_course,
                           fmt::format("{:.40} counted {} over a course whose length is not given.",
                                       person.code, as_typed(view, field, person.row)),
                           {field}));
  }
  return Outcome::fails;
}

RuleSpec half_a_calibration() {
  return {"half-a-calibration",
          Family::size,
          Level::ask,
          Scope::visit,
          "A taped course and the counts over it stand together",
          "Ask for what is missing; without it this person's paces are no length.",
          "How long was the taped course, and what was counted on each walk?",
          "common practice, no source",
          {Field::person_course, Field::person_run_1},
          &course_and_runs};
}

/// Shortest and longest that one count can be in the person's way of counting.
bool plausible(const Season& season, double counted_length, bool steps) {
  const double share = steps ? 1 : 2;
  return counted_length >= share * season.limits[Limit::step_shortest] &&
         counted_length <= share * season.limits[Limit::step_longest];
}

Outcome way_of_counting(const SeasonView& view, const Person& person, Doubts& doubts) {
  const Season& season = view.season;
  const auto& pace = season.paces[index_of(season, person)];
  if (!pace || !person.counts.chosen()) {
    return Outcome::undecided;
  }
  const bool steps = person.counts.is(CountingWay::steps);
  const double one = steps ? pace->pace.value / 2 : pace->pace.value; // metres walked for one count
  if (plausible(season, one, steps) || !plausible(season, one, !steps)) {
    return Outcome::holds;
  }
  const auto words = counting_way_words().words;
  doubts.push_back(doubt(
      Field::person_counts,
      fmt::format("{:.40} walks {} for one count, which is one {}, not one {}.", person.code,
                  say(view, Kind::length, one), steps ? "pace of two steps" : "step",
                  steps ? "step" : "pace of two steps"),
      calibration(),
      {{Field::person_counts,
        Cell::of_text(std::string(
            words[static_cast<std::size_t>(steps ? CountingWay::paces : CountingWay::steps)].label))}}));
  return Outcome::fails;
}

RuleSpec counted_the_other_way() {
  return {
      "counted-the-other-way",
      Family::size,
      Level::ask,
      Scope::visit,
      "A person's counts over the course are in the way of counting that is written beside them",
      "Ask whether every step or every second step was counted on the course.",
      "Was every step counted on the course, or every second step?",
      "a pace is two steps, charted from 2.59 to 6.60 ft: University of Kentucky Extension FOR-47; natural "
      "steps are 2.5 to 3 ft: Field Surveying MAGM 230",
      {Field::person_counts, Field::person_course, Field::person_run_1},
      &way_of_counting};
}

Outcome pace_plausible(const SeasonView& view, const Person& person, Doubts& doubts) {
  const Season& season = view.season;
  const auto& pace = season.paces[index_of(season, person)];
  if (!pace) {
    return Outcome::undecided;
  }
  const double shortest = 2 * season.limits[Limit::step_shortest];
  const double longest = 2 * season.limits[Limit::step_longest];
  if (pace->pace.value >= shortest && pace->pace.value <= longest) {
    return Outcome::holds;
  }
  doubts.push_back(doubt(Field::person_course,
                         fmt::format("A pace of {:.40} comes out as {}; two steps are {} to {} long.",
                                     person.code, say(view, Kind::length, pace->pace.value),
                                     say(view, Kind::length, shortest), say(view, Kind::length, longest)),
                         calibration()));
  return Outcome::fails;
}

RuleSpec pace_beyond_people() {
  return {
      "pace-beyond-people",
      Family::size,
      Level::ask,
      Scope::visit,
      "A pace is as long as two steps of a person",
      "Ask for the length of the course, its unit, and the counts.",
      "How long was the taped course, in which unit, and what was counted on each walk?",
      "judgement: natural steps are 2.5 to 3 ft (Field Surveying MAGM 230); half a foot is left either way",
      {Field::person_course, Field::person_run_1},
      &pace_plausible};
}

Outcome runs_agree(const SeasonView& view, const Person& person, Doubts& doubts) {
  const Season& season = view.season;
  const auto& pace = season.paces[index_of(season, person)];
  if (!pace || pace->runs < 2) {
    return Outcome::undecided;
  }
  const double most = season.limits[Limit::pace_variation];
  if (!(pace->variation > most)) {
    return Outcome::holds;
  }
  const auto runs = person.runs();
  const Quantity* least = nullptr;
  const Quantity* greatest = nullptr;
  double sum = 0;
  for (const Quantity& run : runs) {
    if (run.has_value()) {
      sum += run.written;
      least = least == nullptr || run.written < least->written ? &run : least;
      greatest = greatest == nullptr || run.written > greatest->written ? &run : greatest;
    }
  }
  if (least == nullptr) {
    return Outcome::undecided;
  }
  const double mean = sum / pace->runs;
  const Quantity* odd = greatest->written - mean > mean - least->written ? greatest : least;
  doubts.push_back(doubt(
      run_fields[static_cast<std::size_t>(odd - runs.data())],
      fmt::format("Counts of {:.40} over one course run from {} to {}: they scatter by {:.0f} per cent, "
                  "more than {:.0f}.",
                  person.code, plain(least->written, 2), plain(greatest->written, 2), 100 * pace->variation,
                  100 * most),
      calibration()));
  return Outcome::fails;
}

RuleSpec uneven_runs() {
  return {"uneven-runs",
          Family::size,
          Level::ask,
          Scope::visit,
          "A person's counts over one course agree with each other",
          "Ask for another walk or two over the course.",
          "Could you walk the course once or twice more, and count again?",
          "judgement: 1 in 100 is attainable on flat ground (University of Washington FE 345); counting in "
          "halves "
          "on a short course alone gives 2 to 3 per cent",
          {Field::person_course, Field::person_run_1, Field::person_run_2},
          &runs_agree};
}

Outcome way_given(const SeasonView& view, const Person& person, Doubts& doubts) {
  const int runs = runs_typed(person);
  if (runs == 0) {
    return Outcome::undecided;
  }
  if (person.counts.chosen()) {
    return Outcome::holds;
  }
  const bool blank = view.season.cell(Field::person_counts, person.row).empty();
  doubts.push_back(
      doubt(Field::person_counts,
            blank ? fmt::format("{:.40} has {} counted over a course, but not whether paces or steps.",
                                person.code, runs == 1 ? "1 walk" : fmt::format("{} walks", runs))
                  : fmt::format("{:.40} is said to count in {}; known are paces and steps.", person.code,
                                as_typed(view, Field::person_counts, person.row)),
            {Field::person_run_1}));
  return Outcome::fails;
}

RuleSpec way_of_counting_missing() {
  return {"way-of-counting-missing",
          Family::size,
          Level::ask,
          Scope::visit,
          "Whoever walked a course says whether paces or steps were counted",
          "Ask whether every step or every second step was counted.",
          "Was every step counted, or every second step?",
          "common practice, no source",
          {Field::person_run_1, Field::person_counts},
          &way_given};
}

} // namespace

std::vector<RuleSpec> calibration_rules() {
  return {calibration_unreadable(), half_a_calibration(), way_of_counting_missing(),
          counted_the_other_way(),  pace_beyond_people(), uneven_runs()};
}

} // namespace wetspell
