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

void one_pool(const SeasonView& view, const Pairs& pairs, const std::vector<Point>& points,
              std::vector<RowVerdict>& verdicts) {
  std::vector<std::uint32_t> disagreeing(points.size(), 0);
  bool any = false;
  for (std::size_t i = 1; i < points.size(); ++i)
    for (std::size_t k = i > window ? i - window : 0; k < i; ++k)
      if (pairs.disagree(points[k], points[i])) {
        ++disagreeing[k];
        ++disagreeing[i];
        any = true;
      }
  for (std::size_t i = 0; i < points.size(); ++i) {
    verdicts.push_back({points[i].visit, Outcome::holds, {}});
    if (!any || disagreeing[i] == 0)
      continue;
    const std::size_t end = std::min(points.size(), i + window + 1);
    for (std::size_t k = i > window ? i - window : 0; k < end; ++k) {
      const bool worse = disagreeing[i] > disagreeing[k] || (disagreeing[i] == disagreeing[k] && i > k);
      if (k == i || !worse || !pairs.disagree(points[k], points[i]))
        continue;
      verdicts.back().outcome = Outcome::fails;
      verdicts.back().doubts.push_back(disagreement(view, points[i], points[k]));
      break;
    }
  }
}

} // namespace

void fuller_yet_shallower(const SeasonView& view, std::vector<RowVerdict>& verdicts) {
  const Season& season = view.season;
  const Pairs pairs(season.limits);
  verdicts.reserve(season.visits.size());
  std::vector<Point> points;
  for (const auto& visits : view.pool_visits) {
    points.clear();
    for (const std::uint32_t i : visits) {
      const Visit& visit = season.visits[i];
      if (visit.fill.has_value() && visit.depth.has_value())
        points.push_back({i, visit.depth.si, visit.fill.si});
      else
        verdicts.push_back({i, Outcome::undecided, {}});
    }
    one_pool(view, pairs, points, verdicts);
  }
  for (std::uint32_t i = 0; i < season.visits.size(); ++i)
    if (view.place_in_pool[i] == SeasonView::nowhere)
      verdicts.push_back({i, Outcome::undecided, {}});
}

} // namespace wetspell
