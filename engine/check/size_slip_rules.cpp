// Rules about lengths and widths written in another unit or way of counting than they are read in.
#include "check/say.hpp"
#include "check/size_family.hpp"
#include "check/size_slips.hpp"
#include "quantity/print.hpp"

#include <fmt/format.h>

namespace wetspell {

namespace {

std::string_view unit_meant(SizeSlipKind kind) {
  switch (kind) {
  case SizeSlipKind::metres_as_feet:
    return "m";
  case SizeSlipKind::feet_as_metres:
    return "ft";
  case SizeSlipKind::steps_as_paces:
    return "steps";
  case SizeSlipKind::paces_as_steps:
    return "paces";
  }
  return {};
}

Doubt doubt_of(const SeasonView& view, const Visit& visit, Line line, const SizeSlip& slip) {
  const Season& season = view.season;
  const std::string meant = fmt::format("{} {}", plain(typed(visit, line).written, 2), unit_meant(slip.kind));
  Doubt doubt{field_of(line),
              {},
              {},
              {{field_of(line), Cell::of_text(meant)}},
              {Field::visit_pool, Field::visit_size_tool, Field::visit_paced_by},
              {}};
  std::string beside;
  if (slip.against != nullptr) {
    beside =
        fmt::format("{} on {}", say(view, Kind::length, metres(view.derived_of(*slip.against), line)->value),
                    day_words(slip.against->date));
    doubt.other_row = view.index(*slip.against);
  } else {
    const Pool& pool = season.pools[static_cast<std::size_t>(visit.pool.index)];
    beside = say(view, Kind::length, fullest(pool, line).si) + " at its fullest";
  }
  doubt.message =
      fmt::format("The {} {} is read as {}, but the pool had {}. Taken as {} it is {}.", word(line),
                  plain(typed(visit, line).written, 2), say(view, Kind::length, slip.read), beside, meant,
                  say(view, Kind::length, slip.meant));
  return doubt;
}

template <SizeSlipKind kind> Outcome look_for(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  Outcome outcome = Outcome::undecided;
  constexpr bool of_counts = kind == SizeSlipKind::steps_as_paces || kind == SizeSlipKind::paces_as_steps;
  if (of_counts && !any_counted(view.season, visit)) {
    return outcome;
  }
  for (const Line line : {Line::length, Line::width}) {
    if (!can_slip(view.season, visit, typed(visit, line), kind)) {
      continue;
    }
    const SlipVerdict verdict = size_slip(view, visit, line, kind);
    if (verdict.outcome == Outcome::fails) {
      doubts.push_back(doubt_of(view, visit, line, verdict.slip));
      outcome = Outcome::fails;
    } else if (outcome == Outcome::undecided) {
      outcome = verdict.outcome;
    }
  }
  return outcome;
}

std::vector<Field> needs() {
  return {Field::visit_pool, Field::visit_date, Field::visit_length, Field::visit_width};
}

RuleSpec metres_typed_as_feet() {
  return {"metres-typed-as-feet",
          Family::size,
          Level::ask,
          Scope::pool_over_time,
          "A length or width read in feet was measured in feet",
          "Ask whether the tape was read in metres, and write the unit beside the number if it was.",
          "Was the tape read in feet or in metres?",
          "judgement: the value fits the pool's other visits or its edge only when taken in metres",
          needs(),
          &look_for<SizeSlipKind::metres_as_feet>};
}

RuleSpec feet_typed_as_metres() {
  return {"feet-typed-as-metres",
          Family::size,
          Level::ask,
          Scope::pool_over_time,
          "A length or width read in metres was measured in metres",
          "Ask whether the tape was read in feet, and write the unit beside the number if it was.",
          "Was the tape read in metres or in feet?",
          "judgement: the value fits the pool's other visits or its edge only when taken in feet",
          needs(),
          &look_for<SizeSlipKind::feet_as_metres>};
}

RuleSpec steps_typed_as_paces() {
  return {
      "steps-typed-as-paces",
      Family::size,
      Level::ask,
      Scope::pool_over_time,
      "A count read as paces was counted in paces of two steps",
      "Ask whether every step was counted, and write the word steps beside the number if so.",
      "Was every second step counted, or every step?",
      "a pace is two steps: University of Kentucky Extension FOR-47; judgement: the count fits the pool's "
      "other visits or its edge only in steps",
      needs(),
      &look_for<SizeSlipKind::steps_as_paces>};
}

RuleSpec paces_typed_as_steps() {
  return {
      "paces-typed-as-steps",
      Family::size,
      Level::ask,
      Scope::pool_over_time,
      "A count read as steps was counted in single steps",
      "Ask whether only every second step was counted, and write the word paces beside the number if so.",
      "Was every step counted, or every second step?",
      "a pace is two steps: University of Kentucky Extension FOR-47; judgement: the count fits the pool's "
      "other visits or its edge only in paces",
      needs(),
      &look_for<SizeSlipKind::paces_as_steps>};
}

} // namespace

std::vector<RuleSpec> size_slip_rules() {
  return {metres_typed_as_feet(), feet_typed_as_metres(), steps_typed_as_paces(), paces_typed_as_steps()};
}

} // namespace wetspell
