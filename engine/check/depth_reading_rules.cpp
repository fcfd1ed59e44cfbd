// One depth: can it be read, and can it be right?
#include "check/depth_family.hpp"
#include "check/depth_slips.hpp"
#include "check/say.hpp"

#include <fmt/format.h>

#include <array>

namespace wetspell {

namespace {

Outcome depth_not_read(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  const std::array<std::pair<Field, const Quantity*>, 2> depths{
      {{Field::visit_depth, &visit.depth}, {Field::visit_probe_depth, &visit.probe_depth}}};
  bool looked = false;
  for (const auto& [field, depth] : depths) {
    looked = looked || (depth->typed() && depth->status != Status::missing);
    if (depth->status == Status::bad)
      doubts.push_back(doubt(field, fmt::format("{} {} cannot be read: {}.", heading(field),
                                                as_typed(view, field, visit.row), text(depth->reason))));
  }
  if (!doubts.empty())
    return Outcome::fails;
  return looked ? Outcome::holds : Outcome::undecided;
}

Cell same_kind(const Quantity& typed, double written) {
  return typed.unit_typed ? with_unit(written, typed.unit) : Cell::of_number(written);
}

Outcome depth_below_zero(const SeasonView&, const Visit& visit, Doubts& doubts) {
  if (!visit.depth.has_value())
    return Outcome::undecided;
  if (visit.depth.si >= 0)
    return Outcome::holds;
  doubts.push_back(doubt(
      Field::visit_depth,
      fmt::format("Depth {} lies below 0; a depth is counted downwards from the surface.", say(visit.depth)),
      {}, {{Field::visit_depth, same_kind(visit.depth, -visit.depth.written)}}));
  return Outcome::fails;
}

std::string why(const SeasonView& view, const Visit& visit) {
  if (visit.pool.known()) {
    const Pool& pool = view.season.pools[static_cast<std::size_t>(visit.pool.index)];
    if (pool.deepest.has_value() && visit.depth.si > usual_depth(view.season, visit))
      return fmt::format("is deeper than pool {} has ever been ({})", pool.code, say(pool.deepest));
  }
  const Visit *before = view.before(visit), *after = view.after(visit);
  if (before != nullptr && after != nullptr && before->depth.has_value() && after->depth.has_value())
    return fmt::format("does not fit {} on the visit before and {} on the one after", say(before->depth),
                       say(after->depth));
  return "is deeper than seasonal pools are";
}

template <DepthSlip slip> Outcome slipped(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!visit.depth.has_value())
    return Outcome::undecided;
  const MeantDepth meant = meant_depth(view, visit);
  if (meant.slip != slip)
    return Outcome::holds;
  const Cell content = slip == DepthSlip::decimal ? same_kind(visit.depth, meant.written)
                                                  : with_unit(meant.written, meant.unit);
  const Quantity read_as{meant.written, meant.si, meant.si, 0, Status::value, meant.unit, true, {}};
  const std::string in_season_unit =
      slip == DepthSlip::decimal ? std::string() : fmt::format(" ({})", say(view, Kind::depth, meant.si));
  doubts.push_back(doubt(Field::visit_depth,
                         fmt::format("Depth {} {}; {}{} would fit.", say(visit.depth), why(view, visit),
                                     say(read_as), in_season_unit),
                         {Field::visit_pool, Field::visit_depth_class, Field::pool_deepest},
                         {{Field::visit_depth, content}}));
  return Outcome::fails;
}

Outcome impossible_depth(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!visit.depth.has_value())
    return Outcome::undecided;
  const double most = view.season.limits[Limit::depth_most];
  if (visit.depth.si <= most)
    return Outcome::holds;
  doubts.push_back(
      doubt(Field::visit_depth, fmt::format("Depth {} cannot be right: no seasonal pool is deeper than {}.",
                                            say(visit.depth), say(view, Kind::depth, most))));
  return Outcome::fails;
}

Outcome deeper_than_ever(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!visit.depth.has_value() || !visit.pool.known())
    return Outcome::undecided;
  const Pool& pool = view.season.pools[static_cast<std::size_t>(visit.pool.index)];
  if (!pool.deepest.has_value())
    return Outcome::undecided;
  if (visit.depth.si <= usual_depth(view.season, visit))
    return Outcome::holds;
  doubts.push_back(doubt(Field::visit_depth,
                         fmt::format("Depth {} is deeper than pool {} has ever been (deepest {}).",
                                     say(visit.depth), pool.code, say(pool.deepest)),
                         {Field::visit_pool}));
  return Outcome::fails;
}

Outcome unusual_depth(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!visit.depth.has_value())
    return Outcome::undecided;
  const double limit = view.season.limits[Limit::depth_doubtful];
  if (visit.depth.si <= limit)
    return Outcome::holds;
  if (visit.pool.known() && view.season.pools[static_cast<std::size_t>(visit.pool.index)].deepest.has_value())
    return Outcome::holds; // the pool's own deepest says more: deeper-than-ever
  doubts.push_back(
      doubt(Field::visit_depth, fmt::format("Depth {} is more than {}, which is unusual for a seasonal pool.",
                                            say(visit.depth), say(view, Kind::depth, limit))));
  return Outcome::fails;
}

} // namespace

std::vector<RuleSpec> depth_reading_rules() {
  constexpr std::string_view slips = "judgement: a slip is named only when it alone fits the pool";
  return {
      {"depth-not-read",
       Family::depth,
       Level::fix,
       Scope::reading,
       "A depth can be read",
       "Correct the depth from the field sheet; write \"not measured\" when there is none.",
       "How deep was the water? If it was not measured, please say so.",
       "common practice, no source",
       {Field::visit_depth},
       depth_not_read},
      {"depth-below-zero",
       Family::depth,
       Level::fix,
       Scope::reading,
       "A depth is not below 0",
       "Write the depth without the minus sign.",
       "How deep was the water at its deepest?",
       "common practice, no source",
       {Field::visit_depth},
       depth_below_zero},
      {"centimetres-as-inches",
       Family::depth,
       Level::fix,
       Scope::pool_over_time,
       "A depth in inches is not a number of centimetres",
       "Write the depth with its unit, or ask what the stick is marked in.",
       "Is the stick marked in inches or in centimetres, and what did it read?",
       slips,
       {Field::visit_depth},
       slipped<DepthSlip::centimetres_as_inches>},
      {"inches-as-centimetres",
       Family::depth,
       Level::fix,
       Scope::pool_over_time,
       "A depth in centimetres is not a number of inches",
       "Write the depth with its unit, or ask what the stick is marked in.",
       "Is the stick marked in centimetres or in inches, and what did it read?",
       slips,
       {Field::visit_depth},
       slipped<DepthSlip::inches_as_centimetres>},
      {"depth-decimal-slipped",
       Family::depth,
       Level::fix,
       Scope::pool_over_time,
       "The decimal point of a depth stands in its place",
       "Compare with the field sheet, and move the point.",
       "How deep was the water, and where does the decimal point belong?",
       slips,
       {Field::visit_depth},
       slipped<DepthSlip::decimal>},
      {"impossible-depth",
       Family::depth,
       Level::fix,
       Scope::reading,
       "A seasonal pool is not metres deep",
       "Correct the depth from the field sheet.",
       "How deep was the water, and in which unit was it measured?",
       "judgement: four times the deepest of 64 wetlands (Dryad 0cfxpnw3r)",
       {Field::visit_depth},
       impossible_depth},
      {"deeper-than-ever",
       Family::depth,
       Level::ask,
       Scope::visit,
       "A pool is not deeper than it has ever been",
       "Ask for the depth; if it is right, set the pool's deepest ever to it.",
       "Was the water this deep, and in which unit was it measured?",
       "judgement: a tenth and the stick's slack are allowed",
       {Field::visit_depth, Field::pool_deepest},
       deeper_than_ever},
      {"unusual-depth",
       Family::depth,
       Level::ask,
       Scope::reading,
       "A pool of which no deepest is known is not unusually deep",
       "Ask for the depth; if it is right, write it as the pool's deepest ever.",
       "Was the water this deep, and in which unit was it measured?",
       "Dryad 0cfxpnw3r: 64 wetlands that dry up, deepest 118 cm",
       {Field::visit_depth},
       unusual_depth},
  };
}

} // namespace wetspell
