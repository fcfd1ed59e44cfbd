// How full the basin is: against its class, the depth, the water, and the pool's other visits.
#include "check/fill_time.hpp"
#include "check/say.hpp"
#include "check/wet_signs.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wetspell {

namespace {

Outcome fill_not_read(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!visit.fill.typed() || visit.fill.status == Status::missing)
    return Outcome::undecided;
  if (visit.fill.status != Status::bad)
    return Outcome::holds;
  doubts.push_back(doubt(Field::visit_fill,
                         fmt::format("{} {} cannot be read as a per cent: {}.", heading(Field::visit_fill),
                                     as_typed(view, Field::visit_fill, visit.row), text(visit.fill.reason))));
  return Outcome::fails;
}

bool agrees_with_class(const SeasonView& view, double fraction, std::size_t row) {
  const ClassTable& table = view.season.fill_classes;
  if (row >= table.rows.size())
    return true;
  const double slack = difference_from_si(view.season.limits[Limit::fill_slack], table.unit);
  const double value = from_si(fraction, table.unit);
  return value >= table.rows[row].low - slack && value <= table.rows[row].high + slack;
}

std::optional<std::size_t> judged_class(const Visit& visit) {
  return visit.fill_class.chosen() ? std::optional(static_cast<std::size_t>(visit.fill_class.index))
                                   : std::nullopt;
}

/// A bare number stays bare, in the unit of the column.
Cell like_typed(const Quantity& typed, double written) {
  return typed.unit_typed ? with_unit(written, typed.unit) : Cell::of_number(written);
}

Outcome overfull(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!visit.fill.has_value())
    return Outcome::undecided;
  constexpr double rounding = 1e-9;
  if (visit.fill.si >= 0 && visit.fill.si <= 1 + rounding)
    return Outcome::holds;
  Doubt found =
      doubt(Field::visit_fill,
            fmt::format("{} {} is {} of what the basin can hold.", heading(Field::visit_fill),
                        say(visit.fill), visit.fill.si < 0 ? "less than nothing" : "more than all"));
  const double tenth = visit.fill.si / 10;
  const auto judged = judged_class(visit);
  if (judged && tenth <= 1 && tenth > 0 && agrees_with_class(view, tenth, *judged)) {
    found.message.pop_back();
    found.message +=
        fmt::format("; {} would fit the class that was judged.", say(view, Kind::percent, tenth));
    found.proposals.push_back({Field::visit_fill, like_typed(visit.fill, visit.fill.written / 10)});
    found.behind.push_back(Field::visit_fill_class);
  }
  doubts.push_back(std::move(found));
  return Outcome::fails;
}

Outcome fraction_as_percent(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!visit.fill.has_value())
    return Outcome::undecided;
  const Quantity& fill = visit.fill;
  if (fill.unit != Unit::percent || fill.unit_typed || !(fill.written > 0 && fill.written < 1))
    return Outcome::holds;
  const double meant = fill.written * 100;
  const auto judged = judged_class(visit);
  if (judged && !agrees_with_class(view, meant / 100, *judged))
    return Outcome::holds;
  doubts.push_back(doubt(Field::visit_fill,
                         fmt::format("{} {} is read as {}; {} may be meant.", heading(Field::visit_fill),
                                     as_typed(view, Field::visit_fill, visit.row), say(fill),
                                     say(view, Kind::percent, meant / 100)),
                         {Field::visit_fill_class}, {{Field::visit_fill, Cell::of_number(meant)}}));
  return Outcome::fails;
}

Outcome class_differs(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  const ClassTable& table = view.season.fill_classes;
  const auto judged = judged_class(visit);
  const auto& of_number = view.derived_of(visit).fill_class;
  if (!judged || *judged >= table.rows.size() || !visit.fill.has_value() || !of_number ||
      *of_number >= table.rows.size())
    return Outcome::undecided;
  if (*judged == *of_number || agrees_with_class(view, visit.fill.si, *judged))
    return Outcome::holds;
  const std::string& label = table.rows[*of_number].label;
  doubts.push_back(doubt(Field::visit_fill_class,
                         fmt::format("Class \"{}\" was judged, but {} lies in \"{}\".",
                                     table.rows[*judged].label, say(visit.fill), label),
                         {Field::visit_fill}, {{Field::visit_fill_class, Cell::of_text(label)}}));
  return Outcome::fails;
}

Outcome dry_yet_filled(const SeasonView&, const Visit& visit, Doubts& doubts) {
  if (!visit.water.chosen() || !visit.fill.has_value())
    return Outcome::undecided;
  if (!visit.water.is(Water::none) || visit.fill.si <= 0)
    return Outcome::holds;
  if (signs_of_water(visit).count() > 1)
    return Outcome::undecided; // dry-yet-measured has it
  doubts.push_back(doubt(Field::visit_fill,
                         fmt::format("{} {} is given, but no standing water is noted.",
                                     heading(Field::visit_fill), say(visit.fill)),
                         {Field::visit_water}));
  return Outcome::fails;
}

/// The upper limit of the shallowest class that holds water, in metres.
double shallow(const SeasonView& view) {
  const ClassTable& table = view.season.depth_classes;
  for (const ClassRow& row : table.rows)
    if (row.high > 0 && std::isfinite(row.high))
      return to_si(row.high, table.unit);
  return 0;
}

Outcome deep_yet_empty(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!visit.fill.has_value() || !visit.depth.has_value())
    return Outcome::undecided;
  if (visit.fill.si > 0 || visit.depth.si <= shallow(view))
    return Outcome::holds;
  doubts.push_back(doubt(Field::visit_fill,
                         fmt::format("{} is {}, but the water is {} deep.", heading(Field::visit_fill),
                                     say(visit.fill), say(visit.depth)),
                         {Field::visit_depth}));
  return Outcome::fails;
}

Outcome fill_leaps(const SeasonView& view, const Visit& before, const Visit& now, Doubts& doubts) {
  if (!before.fill.has_value() || !now.fill.has_value())
    return Outcome::undecided;
  const double rise = now.fill.si - before.fill.si;
  const double most = view.season.limits[Limit::fill_change];
  if (rise <= most || now.rain.is(Rain::much) || now.rain.is(Rain::some))
    return Outcome::holds;
  if (!now.rain.chosen())
    return Outcome::undecided;
  Doubt found =
      doubt(Field::visit_fill,
            fmt::format("The pool went from {} to {} full with {} noted; more than {} more is doubtful "
                        "without rain.",
                        say(before.fill), say(now.fill), as_typed(view, Field::visit_rain, now.row),
                        say_difference(view, Kind::percent, most)),
            {Field::visit_pool, Field::visit_date, Field::visit_rain});
  found.other_row = view.index(before);
  doubts.push_back(std::move(found));
  return Outcome::fails;
}

Outcome fill_not_judged(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!visit.water.chosen())
    return Outcome::undecided;
  if (!visit.water.is(Water::standing) || visit.fill.typed() || visit.fill_class.typed())
    return Outcome::holds;
  doubts.push_back(
      doubt(Field::visit_fill,
            fmt::format("Water stood in {}, but how full it was is not given.", pool_and_day(view, visit)),
            {Field::visit_water, Field::visit_fill_class}));
  return Outcome::fails;
}

constexpr std::string_view practice = "common practice, no source";

} // namespace

std::span<const RuleSpec> fill_rules() {
  static const std::vector<RuleSpec> all{
      {"fill-not-read",
       Family::fill,
       Level::fix,
       Scope::reading,
       "How full a pool is can be read as a per cent",
       "Correct it from the field sheet, or choose a class.",
       "How full was the pool, in per cent of its highest water mark? A class will do.",
       practice,
       {Field::visit_fill},
       fill_not_read},
      {"overfull",
       Family::fill,
       Level::fix,
       Scope::reading,
       "A pool is at most 100 per cent full",
       "Ask how full the pool was; 100 is the highest water mark.",
       "How full was the pool? 100 is its highest water mark.",
       practice,
       {Field::visit_fill},
       overfull},
      {"fraction-as-percent",
       Family::fill,
       Level::ask,
       Scope::reading,
       "How full a pool is stands in per cent, not as a fraction of one",
       "Write the per cent: 60 for six tenths.",
       "How full was the pool, in per cent?",
       practice,
       {Field::visit_fill},
       fraction_as_percent},
      {"fill-class-differs",
       Family::fill,
       Level::ask,
       Scope::visit,
       "The class that was judged is that of the per cent",
       "Ask which of the two is right.",
       "Which is right, the per cent or the class?",
       "judgement: the slack stands in the table of limits",
       {Field::visit_fill, Field::visit_fill_class},
       class_differs},
      {"dry-yet-filled",
       Family::fill,
       Level::fix,
       Scope::visit,
       "A pool without standing water is 0 per cent full",
       "Ask whether there was water, and correct the word or the per cent.",
       "Was there water in the pool, and how full was it?",
       practice,
       {Field::visit_water, Field::visit_fill},
       dry_yet_filled},
      {"deep-yet-empty",
       Family::fill,
       Level::ask,
       Scope::visit,
       "A pool that is 0 per cent full is not deep",
       "Ask how full the pool was; leave it blank when nobody judged it.",
       "How full was the pool? If nobody judged it, please say so.",
       practice,
       {Field::visit_fill, Field::visit_depth},
       deep_yet_empty},
      {"fuller-yet-shallower",
       Family::fill,
       Level::ask,
       Scope::pool_over_time,
       "A pool is fuller when it is deeper",
       "Ask how full and how deep the pool was; compare both visits.",
       "How full was the pool on that day, and how deep was the water?",
       "judgement: one basin, so the two go together; the slacks stand in the table of limits",
       {Field::visit_pool, Field::visit_date, Field::visit_depth, Field::visit_fill},
       fuller_yet_shallower},
      {"fill-leaps",
       Family::fill,
       Level::ask,
       Scope::pool_over_time,
       "A pool does not fill by much without rain",
       "Ask how full the pool was, and for the rain of the days before.",
       "How full was the pool, and had it rained or thawed in the days before?",
       "judgement: half of the basin",
       {Field::visit_pool, Field::visit_date, Field::visit_fill, Field::visit_rain},
       fill_leaps},
      {"fill-not-judged",
       Family::fill,
       Level::note,
       Scope::visit,
       "Where water stands, it is noted how full the pool is",
       "Ask whether it is on the field sheet; a class will do.",
       "How full was the pool? A class will do.",
       practice,
       {Field::visit_water, Field::visit_fill},
       fill_not_judged},
  };
  return all;
}

} // namespace wetspell
