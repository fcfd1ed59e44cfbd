// Depth from visit to visit, and how it was taken.
#include "check/depth_family.hpp"
#include "check/say.hpp"
#include "quantity/print.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace wetspell {

namespace {

/// Depths of two visits that follow each other; 0 for a dry pool.
struct Change {
  double before, now, days;
};

std::optional<Change> change(const SeasonView& view, const Visit& before, const Visit& now) {
  const auto &a = view.derived_of(before).depth, &b = view.derived_of(now).depth;
  if (!a || !b)
    return std::nullopt;
  return Change{a->value, b->value, std::max(1.0, std::floor(now.date.si) - std::floor(before.date.si))};
}

Doubt change_doubt(const SeasonView& view, const Visit& before, std::string message) {
  // Without a depth of its own a dry pool says so by the word for water.
  Doubt found = doubt(Field::visit_depth, std::move(message),
                      {Field::visit_pool, Field::visit_date, Field::visit_water});
  found.other_row = view.index(before);
  return found;
}

Outcome falls_fast(const SeasonView& view, const Visit& before, const Visit& now, Doubts& doubts) {
  const auto depths = change(view, before, now);
  if (!depths)
    return Outcome::undecided;
  const double fall = depths->before - depths->now;
  const double per_day = view.season.limits[Limit::depth_fall_per_day];
  // Two readings with a stick differ by its slack each, whatever the water did.
  if (fall <= per_day * depths->days + 2 * view.season.limits[Limit::depth_slack])
    return Outcome::holds;
  doubts.push_back(
      change_doubt(view, before,
                   fmt::format("The depth fell from {} to {} within {}; more than {} a day is doubtful.",
                               say(view, Kind::depth, depths->before), say(view, Kind::depth, depths->now),
                               say_days(depths->days), say_difference(view, Kind::depth, per_day))));
  return Outcome::fails;
}

Outcome rises_without_rain(const SeasonView& view, const Visit& before, const Visit& now, Doubts& doubts) {
  const auto depths = change(view, before, now);
  if (!depths)
    return Outcome::undecided;
  const double rise = depths->now - depths->before;
  const double most = view.season.limits[Limit::depth_rise];
  if (rise <= most || now.rain.is(Rain::much))
    return Outcome::holds;
  if (!now.rain.chosen())
    return Outcome::undecided;
  doubts.push_back(
      change_doubt(view, before,
                   fmt::format("The depth rose from {} to {} within {}, with {} noted; more than {} is "
                               "doubtful without much rain.",
                               say(view, Kind::depth, depths->before), say(view, Kind::depth, depths->now),
                               say_days(depths->days), as_typed(view, Field::visit_rain, now.row),
                               say_difference(view, Kind::depth, most))));
  doubts.back().behind.push_back(Field::visit_rain);
  return Outcome::fails;
}

Outcome beyond_wading(const SeasonView& view, const Visit& visit, Doubts& doubts) {
  if (!visit.depth.has_value() || !visit.depth_tool.chosen())
    return Outcome::undecided;
  const double limit = view.season.limits[Limit::depth_wading];
  if (visit.depth.si <= limit || !visit.depth_tool.is(DepthTool::stick))
    return Outcome::holds;
  doubts.push_back(doubt(Field::visit_depth,
                         fmt::format("Depth {} was read with a stick; more than {} is not safe to wade.",
                                     say(visit.depth), say(view, Kind::depth, limit)),
                         {Field::visit_depth_tool}));
  return Outcome::fails;
}

Outcome depth_by_eye(const SeasonView&, const Visit& visit, Doubts& doubts) {
  if (!visit.depth.has_value() || !visit.depth_tool.chosen())
    return Outcome::undecided;
  if (!visit.depth_tool.is(DepthTool::eye) || visit.depth.si <= 0 || visit.depth.status == Status::about)
    return Outcome::holds;
  doubts.push_back(doubt(Field::visit_depth,
                         fmt::format("Depth {} was judged by eye, not measured.", say(visit.depth)),
                         {Field::visit_depth_tool}));
  return Outcome::fails;
}

} // namespace

std::vector<RuleSpec> depth_change_rules() {
  return {
      {"depth-falls-fast",
       Family::depth,
       Level::ask,
       Scope::pool_over_time,
       "Water falls by no more than a little each day",
       "Ask for the depth; compare both visits with their field sheets.",
       "How deep was the water on that day, and where in the pool was it measured?",
       "judgement: 2.5 times the ordinary loss of about 10 mm a day (Carlson Mazur et al. 2014, Ecohydrology "
       "7:378-390)",
       {Field::visit_pool, Field::visit_date, Field::visit_depth},
       falls_fast},
      {"depth-rises-without-rain",
       Family::depth,
       Level::ask,
       Scope::pool_over_time,
       "Water rises by much only after much rain or melting snow",
       "Ask for the depth and for the rain of the days before.",
       "How deep was the water, and had it rained or thawed in the days before?",
       "judgement: a pool gathers the rain of the ground around it, several times over",
       {Field::visit_pool, Field::visit_date, Field::visit_depth, Field::visit_rain},
       rises_without_rain},
      {"beyond-wading",
       Family::depth,
       Level::note,
       Scope::visit,
       "Nobody wades into water deeper than is safe to read a stick",
       "Tell the person to use a weighted line from the edge, and never to wade alone.",
       "Was the stick read while wading? Please use a weighted line from the edge, and never wade alone.",
       "judgement, for safety: above the hips of many people, and above most boots",
       {Field::visit_depth, Field::visit_depth_tool},
       beyond_wading},
      {"depth-by-eye",
       Family::depth,
       Level::note,
       Scope::visit,
       "A depth is measured rather than judged by eye",
       "Write it as approximate (~25), or choose a depth class in its place.",
       "Was the depth measured after all, or judged by eye?",
       "common practice, no source",
       {Field::visit_depth, Field::visit_depth_tool},
       depth_by_eye},
  };
}

} // namespace wetspell
