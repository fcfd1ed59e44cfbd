// Depth, depth class and the word for water: do they tell the same story?
#include "check/depth_family.hpp"
#include "check/depth_slips.hpp"
#include "check/say.hpp"
#include "check/wet_signs.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace wetspell {

namespace {

Outcome dry_yet_measured(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!visit.water.chosen())
    return Outcome::undecided;
  const WetSigns signs = signs_of_water(visit);
  if (!visit.water.is(Water::none) || signs.count() < 2)
    return Outcome::holds;
  std::string listed;
  const auto add = [&](bool there, Field field, const Quantity& value) {
    if (there)
      listed += fmt::format("{}{} {}", listed.empty() ? "" : ", ", heading(field), say(value));
  };
  const bool first = visit.temperature_1.has_value();
  add(first, Field::visit_temperature_1, visit.temperature_1);
  add(signs.depth, Field::visit_depth, visit.depth);
  add(signs.fill, Field::visit_fill, visit.fill);
  doubts.push_back(doubt(Field::visit_water,
                         fmt::format("Water is {}, yet there are readings of water: {}.",
                                     as_typed(view, Field::visit_water, visit.row), listed),
                         {Field::visit_temperature_1, Field::visit_depth, Field::visit_fill}));
  return Outcome::fails;
}

Outcome dry_yet_deep(const SeasonView&, const Visit& visit, Doubts& doubts) {
  if (!visit.water.chosen() || (visit.water.is(Water::none) && visit.depth.typed() &&
                                !visit.depth.has_value() && visit.depth.status != Status::missing))
    return Outcome::undecided;
  if (!visit.water.is(Water::none) || !visit.depth.has_value() || visit.depth.si <= 0)
    return Outcome::holds;
  if (signs_of_water(visit).count() > 1)
    return Outcome::undecided; // dry-yet-measured has it
  doubts.push_back(doubt(Field::visit_depth,
                         fmt::format("Depth {} is given, but no standing water is noted.", say(visit.depth)),
                         {Field::visit_water}));
  return Outcome::fails;
}

Outcome water_without_depth(const SeasonView&, const Visit& visit, Doubts& doubts) {
  if (!visit.water.chosen() || !visit.depth.has_value())
    return Outcome::undecided;
  if (!visit.water.is(Water::standing) || visit.depth.si != 0)
    return Outcome::holds;
  doubts.push_back(
      doubt(Field::visit_depth, "Standing water is noted, but the depth is 0.", {Field::visit_water}));
  return Outcome::fails;
}

Outcome class_differs(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  const auto& measured = view.derived_of(visit).depth_class;
  const ClassTable& table = view.season.depth_classes;
  if (!visit.depth_class.chosen() || !visit.depth.has_value() || !measured || *measured >= table.rows.size())
    return Outcome::undecided;
  const auto judged = static_cast<std::size_t>(visit.depth_class.index);
  if (judged == *measured || agrees_with_class(view.season, visit.depth.si, judged))
    return Outcome::holds;
  const std::string& label = table.rows[*measured].label;
  doubts.push_back(doubt(Field::visit_depth_class,
                         fmt::format("Depth class \"{}\" was judged, but the depth {} lies in \"{}\".",
                                     table.rows[judged].label, say(visit.depth), label),
                         {Field::visit_depth}, {{Field::visit_depth_class, Cell::of_text(label)}}));
  return Outcome::fails;
}

Outcome class_against_water(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  const ClassTable& table = view.season.depth_classes;
  if (!visit.water.chosen() || !visit.depth_class.chosen() ||
      static_cast<std::size_t>(visit.depth_class.index) >= table.rows.size())
    return Outcome::undecided;
  const ClassRow& judged = table.rows[static_cast<std::size_t>(visit.depth_class.index)];
  const bool dry_class = judged.high <= 0;
  if (visit.water.is(Water::frozen) || dry_class == visit.water.is(Water::none))
    return Outcome::holds;
  doubts.push_back(doubt(Field::visit_depth_class,
                         fmt::format("Depth class \"{}\" does not go with water {}.", judged.label,
                                     as_typed(view, Field::visit_water, visit.row)),
                         {Field::visit_water}));
  return Outcome::fails;
}

Outcome depth_not_taken(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!visit.water.chosen())
    return Outcome::undecided;
  if (!visit.water.is(Water::standing) || visit.depth.typed() || visit.depth_class.typed())
    return Outcome::holds;
  doubts.push_back(doubt(Field::visit_depth,
                         fmt::format("Water stood in {}, but neither a depth nor a depth class is given.",
                                     pool_and_day(view, visit)),
                         {Field::visit_water, Field::visit_depth_class}));
  return Outcome::fails;
}

constexpr std::string_view practice = "common practice, no source";

} // namespace

std::vector<RuleSpec> wet_or_dry_rules() {
  return {
      {"dry-yet-measured",
       Family::depth,
       Level::fix,
       Scope::visit,
       "A pool without standing water is not measured as if it had some",
       "Ask whether there was water; correct the word, or move the readings to their own row.",
       "Was there water in the pool? If not, of which pool are the readings?",
       practice,
       {Field::visit_water},
       dry_yet_measured},
      {"dry-yet-deep",
       Family::depth,
       Level::fix,
       Scope::visit,
       "A pool without standing water has no depth",
       "Ask whether the word for water or the depth was written in the wrong row.",
       "Was there water in the pool? If not, where does the depth belong?",
       practice,
       {Field::visit_water, Field::visit_depth},
       dry_yet_deep},
      {"water-without-depth",
       Family::depth,
       Level::fix,
       Scope::visit,
       "Standing water is deeper than 0",
       "Ask for the depth; leave it blank when it was not measured.",
       "How deep was the water? If it was not measured, please say so.",
       practice,
       {Field::visit_water, Field::visit_depth},
       water_without_depth},
      {"depth-class-differs",
       Family::depth,
       Level::ask,
       Scope::visit,
       "The depth class that was judged is that of the measured depth",
       "Ask which of the two is right.",
       "Which is right, the depth or its class?",
       "judgement: the slack stands in the table of limits",
       {Field::visit_depth, Field::visit_depth_class},
       class_differs},
      {"depth-class-against-water",
       Family::depth,
       Level::fix,
       Scope::visit,
       "Only a pool without standing water is in the dry depth class",
       "Ask whether there was water, and correct the class or the word.",
       "Was there standing water in the pool?",
       practice,
       {Field::visit_water, Field::visit_depth_class},
       class_against_water},
      {"depth-not-taken",
       Family::depth,
       Level::note,
       Scope::visit,
       "Where water stands, its depth is noted",
       "Ask whether the depth is on the field sheet; \"not known\" is an answer too.",
       "How deep was the water? \"Not known\" is an answer too.",
       practice,
       {Field::visit_water, Field::visit_depth},
       depth_not_taken},
  };
}

} // namespace wetspell
