#include "check/fill_time.hpp"

#include "check/say.hpp"
#include "quantity/print.hpp"

#include <fmt/format.h>

#include <algorithm>

namespace wetspell {

namespace {

struct Point {
  std::uint32_t visit;
  double depth, fill;
};

constexpr std::size_t window = 8; // visits back: more than a season has, and the cost stays in proportion

class Pairs {
public:
  explicit Pairs(const Limits& limits)
      : fill_apart_(3 * limits[Limit::fill_slack]), depth_apart_(2 * limits[Limit::depth_slack]) {}

  [[nodiscard]] bool disagree(const Point& a, const Point& b) const {
    const double fill = b.fill - a.fill, depth = b.depth - a.depth;
    return (fill > fill_apart_ && depth < -depth_apart_) || (fill < -fill_apart_ && depth > depth_apart_);
  }

private:
  double fill_apart_, depth_apart_;
};

/// The visit that the doubtful one disagrees with most plainly worded: the first found.
Doubt disagreement(const SeasonView& view, const Point& now, const Point& other) {
  const Visit &here = view.visit(now.visit), &there = view.visit(other.visit);
  Doubt found = doubt(Field::visit_fill,
                      fmt::format("The pool is {} full and {} deep, but on {} it was {} full and {} deep.",
                                  say(here.fill), say(here.depth), print_date(there.date.si), say(there.fill),
                                  say(there.depth)),
                      {Field::visit_depth, Field::visit_pool});
  found.other_row = other.visit;
  return found;
}

/// Of two visits, whether the first is the doubtful one.
bool worse(const std::vector<std::uint32_t>& disagreeing, std::size_t i, std::size_t k) {
  return disagreeing[i] > disagreeing[k] || (disagreeing[i] == disagreeing[k] && i > k);
}

void one_pool(const SeasonView& view, const Pairs& pairs, const std::vector<Point>& points,
              Verdicts& verdicts) {
  std::vector<std::uint32_t> disagreeing(points.size(), 0);
  bool any = false;
  for (std::size_t i = 1; i < points.size(); ++i)
    for (std::size_t k = i > window ? i - window : 0; k < i; ++k)
      if (pairs.disagree(points[k], points[i])) {
        ++disagreeing[k];
        ++disagreeing[i];
        any = true;
      }
  if (!any) {
    verdicts.holds(points.size());
    return;
  }
  for (std::size_t i = 0; i < points.size(); ++i) {
    const std::size_t end = std::min(points.size(), i + window + 1);
    std::size_t k = i > window ? i - window : 0;
    while (k < end && (k == i || !worse(disagreeing, i, k) || !pairs.disagree(points[k], points[i])))
      ++k;
    if (k < end)
      verdicts.fails(points[i].visit, disagreement(view, points[i], points[k]));
    else
      verdicts.holds();
  }
}

} // namespace

void fuller_yet_shallower(const SeasonView& view, Verdicts& verdicts) {
  const Season& season = view.season;
  const Pairs pairs(season.limits);
  std::vector<Point> points;
  std::size_t compared = 0;
  for (const auto& visits : view.pool_visits) {
    points.clear();
    for (const std::uint32_t i : visits) {
      const Visit& visit = season.visits[i];
      if (visit.fill.has_value() && visit.depth.has_value())
        points.push_back({i, visit.depth.si, visit.fill.si});
    }
    compared += points.size();
    one_pool(view, pairs, points, verdicts);
  }
  verdicts.undecided(season.visits.size() - compared);
}

} // namespace wetspell
