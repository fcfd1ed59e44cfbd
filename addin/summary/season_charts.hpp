#pragma once
// The charts of a season, and that of one pool.

#include "summary/chart.hpp"
#include "summary/numbers.hpp"

#include "season/settings.hpp"

namespace wetspell::addin {

/// Draws the charts one below another from `left` and `top` (1/100 mm) on. Gives the places of those that are
/// there.
std::vector<css::awt::Rectangle> putSeasonCharts(const Shown& on, sal_Int32 left, sal_Int32 top,
                                                 const Numbers& numbers, const Settings& settings);

/// Depth and dry visits of one pool; days as the document counts them.
struct PoolDepths {
  NumbersSeries depth, dry;
  double first_day = 0, last_day = 0;
};
void putPoolChart(const Shown& on, const css::awt::Rectangle& place, const PoolDepths& depths,
                  const Settings& settings);

} // namespace wetspell::addin
