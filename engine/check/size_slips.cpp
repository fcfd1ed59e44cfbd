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

/// What the rest of two visits says about the pool's size: the same, another, or nothing.
enum class Says : std::uint8_t { nothing, same, changed };

/// `factor`: value meant over value read.
Says pool_says(const SeasonView& view, const Visit& now, const Visit& then, Line line, double factor) {
  const DerivedVisit& here = view.derived_of(now);
  const DerivedVisit& there = view.derived_of(then);
  // Whether what changed would make the value as it was read a likely one.
  const auto explained = [factor](double ratio) {
    return factor > 1 ? ratio * factor <= near_factor : ratio * factor * near_factor >= 1;
  };
  if (here.depth && there.depth && there.depth->value > 0) {
    const bool same = std::abs(here.depth->value - there.depth->value) <= same_depth;
    const double ratio = std::pow(here.depth->value / there.depth->value, flattest_basin);
    return !same && explained(ratio) ? Says::changed : Says::same;
  }
  if (now.fill.has_value() && then.fill.has_value() && then.fill.si > 0) {
    const bool same = std::abs(now.fill.si - then.fill.si) <= same_fill;
    return !same && explained(now.fill.si / then.fill.si) ? Says::changed : Says::same;
  }
  const auto& across_here = metres(here, other(line));
  const auto& across_there = metres(there, other(line));
  const bool same = across_here && across_there && near(across_here->value, across_there->value);
  return same ? Says::same : Says::nothing;
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

/// Whether length and width only stand in each other's place.
template <class Fits> bool exchanged(const DerivedVisit& derived, Line line, const Fits& fits) {
  return wider_than_long(derived) && fits(metres(derived, other(line))->value);
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
  for (const bool earlier : {true, false}) {
    const Visit* then = sized(view, visit, line, earlier);
    if (then == nullptr) {
      continue;
    }
    const double there = metres(view.derived_of(*then), line)->value;
    if (near(read, there)) {
      return {Outcome::holds, {}};
    }
    const Says says = pool_says(view, visit, *then, line, factor);
    if (says == Says::changed) {
      return {Outcome::holds, {}};
    }
    against = against == nullptr ? then : against;
    least = neighbours == 0 ? there : std::min(least, there);
    most = std::max(most, there);
    ++neighbours;
    same += says == Says::same ? 1 : 0;
  }
  // A pool that shrinks all the while lies between the visits before and after.
  const auto fits = [&](double line_long) {
    return line_long * near_factor >= least && line_long <= most * near_factor;
  };
  if (neighbours > 0 && (!fits(meant) || fits(read) || exchanged(view.derived_of(visit), line, fits))) {
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
