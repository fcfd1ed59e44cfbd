#include "check/size_slips.hpp"

#include "quantity/unit.hpp"

#include <algorithm>

namespace wetspell {

namespace {

// How closely the value meant must fit, and what a pool can do between visits: judgement. A paced line
// repeats to about a tenth and pools shrink by a fifth in a round; in the flattest basins length goes with
// the depth to a power of 1.5, and with the fill in proportion.
constexpr double near_factor = 1.3;
constexpr double flattest_basin = 1.5;
constexpr double same_depth = 0.05;      // metres
constexpr double same_fill = 0.15;       // of one
constexpr double brimful = 0.75;         // the pool reaches its edge from here on
constexpr double dried_to = 1.0 / 3;     // a value over the edge may mean a pool down to this part of it
constexpr int visits_looked_through = 3; // how far to look for one that was measured

bool near(double a, double b) {
  return a <= b * near_factor && b <= a * near_factor;
}

double factor_of(SizeSlipKind kind) {
  static const double feet_in_a_metre = from_si(1, Unit::foot);
  switch (kind) {
  case SizeSlipKind::metres_as_feet:
    return feet_in_a_metre;
  case SizeSlipKind::feet_as_metres:
    return 1 / feet_in_a_metre;
  case SizeSlipKind::steps_as_paces:
    return 0.5;
  case SizeSlipKind::paces_as_steps:
    return 2;
  }
  return 1;
}

/// Whether the other line of two visits is about the same.
bool other_line_stays(const DerivedVisit& here, const DerivedVisit& there, Line line) {
  const auto& a = metres(here, other(line));
  const auto& b = metres(there, other(line));
  return a && b && near(a->value, b->value);
}

/// What the rest of two visits says about the pool's size: the same, changed as much as the line as it is
/// read, or nothing.
enum class Says : std::uint8_t { nothing, same, changed };

/// `smaller`: the line is suspected of being read too small, otherwise too large.
Says pool_says(const SeasonView& view, const Visit& now, const Visit& then, Line line, bool smaller) {
  const DerivedVisit& here = view.derived_of(now);
  const DerivedVisit& there = view.derived_of(then);
  const double ratio = metres(here, line)->value / metres(there, line)->value;
  const auto explained = [&](double by) {
    return smaller ? ratio * near_factor >= by : ratio <= by * near_factor;
  };
  if (here.depth && there.depth && there.depth->value > 0) {
    const bool same = std::abs(here.depth->value - there.depth->value) <= same_depth;
    const double by = std::pow(here.depth->value / there.depth->value, flattest_basin);
    return !same && explained(by) ? Says::changed : Says::same;
  }
  if (now.fill.has_value() && then.fill.has_value() && then.fill.si > 0) {
    const bool same = std::abs(now.fill.si - then.fill.si) <= same_fill;
    return !same && explained(now.fill.si / then.fill.si) ? Says::changed : Says::same;
  }
  return other_line_stays(here, there, line) ? Says::same : Says::nothing;
}

enum class EdgeSays : std::uint8_t { not_known, nothing, agrees, contradicts };

EdgeSays edge_says(const SeasonView& view, const Visit& visit, Line line, double read, double meant) {
  const Quantity* edge = visit.pool.known()
                             ? &fullest(view.season.pools[static_cast<std::size_t>(visit.pool.index)], line)
                             : nullptr;
  if (edge == nullptr || !edge->has_value() || !(edge->si > 0)) {
    return EdgeSays::not_known;
  }
  const double most = edge->si * (1 + view.season.limits[Limit::edge_slack]);
  if (meant > most) {
    return EdgeSays::contradicts;
  }
  if (read > most) {
    return meant >= edge->si * dried_to ? EdgeSays::agrees : EdgeSays::nothing;
  }
  const bool full = visit.fill.has_value() && visit.fill.si >= brimful;
  return full && read < meant && near(meant, edge->si) ? EdgeSays::agrees : EdgeSays::nothing;
}

/// Its lines are in doubt themselves.
bool wider_than_long(const DerivedVisit& derived) {
  return derived.length && derived.width && derived.width->value > derived.length->value;
}

/// The nearest visit before or after that has the line in metres.
const Visit* sized(const SeasonView& view, const Visit& visit, Line line, bool earlier) {
  const Visit* one = &visit;
  for (int looked = 0; looked < visits_looked_through; ++looked) {
    one = earlier ? view.before(*one) : view.after(*one);
    if (one == nullptr) {
      return nullptr;
    }
    const DerivedVisit& there = view.derived_of(*one);
    const auto& size = metres(there, line);
    if (size && size->value > 0 && !wider_than_long(there)) {
      return one;
    }
  }
  return nullptr;
}

} // namespace

bool can_slip(const Season& season, const Visit& visit, const Quantity& line, SizeSlipKind kind) {
  switch (kind) {
  case SizeSlipKind::metres_as_feet:
  case SizeSlipKind::feet_as_metres: {
    const Unit unit = kind == SizeSlipKind::metres_as_feet ? Unit::foot : Unit::metre;
    // Whoever writes the unit out means it.
    return line.has_value() && line.unit == unit && !line.unit_typed && !counted(season, visit, line);
  }
  case SizeSlipKind::steps_as_paces:
  case SizeSlipKind::paces_as_steps: {
    const auto read = kind == SizeSlipKind::steps_as_paces ? CountedAs::paces : CountedAs::steps;
    return counted(season, visit, line) && line_count(season, visit, line)->counted == read;
  }
  }
  return false;
}

SlipVerdict size_slip(const SeasonView& view, const Visit& visit, Line line, SizeSlipKind kind) {
  const auto& size = metres(view.derived_of(visit), line);
  if (!size || !(size->value > 0)) {
    return {Outcome::undecided, {}};
  }
  const double read = size->value;
  const double factor = factor_of(kind);
  const double meant = read * factor;
  const EdgeSays edge = edge_says(view, visit, line, read, meant);
  if (edge == EdgeSays::contradicts) {
    return {Outcome::holds, {}};
  }
  const Visit* against = nullptr;
  double least = 0;
  double most = 0;
  int neighbours = 0;
  int same = 0;
  int changed = 0;
  // Wider than long, the two may only stand in each other's place, unless the other line is as it was.
  bool exchanged = wider_than_long(view.derived_of(visit));
  for (const bool earlier : {true, false}) {
    const Visit* then = sized(view, visit, line, earlier);
    if (then == nullptr) {
      continue;
    }
    const double there = metres(view.derived_of(*then), line)->value;
    if (near(read, there)) {
      return {Outcome::holds, {}};
    }
    const Says says = pool_says(view, visit, *then, line, factor > 1);
    against = against == nullptr ? then : against;
    least = neighbours == 0 ? there : std::min(least, there);
    most = std::max(most, there);
    ++neighbours;
    same += says == Says::same ? 1 : 0;
    changed += says == Says::changed ? 1 : 0;
    exchanged = exchanged && !other_line_stays(view.derived_of(visit), view.derived_of(*then), line);
  }
  // A pool that shrinks all the while lies between the visits before and after.
  const auto fits = [&](double line_long) {
    return line_long * near_factor >= least && line_long <= most * near_factor;
  };
  const bool natural = changed > 0 && same == 0;
  if (neighbours > 0 && (natural || exchanged || !fits(meant) || fits(read))) {
    return {Outcome::holds, {}};
  }
  if (edge == EdgeSays::not_known && neighbours == 0) {
    return {Outcome::undecided, {}};
  }
  if (edge != EdgeSays::agrees && same == 0 && neighbours < 2) {
    return {Outcome::holds, {}};
  }
  return {Outcome::fails, {kind, read, meant, against}};
}

} // namespace wetspell
