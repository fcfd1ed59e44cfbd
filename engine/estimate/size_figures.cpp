// How large a pool was: lengths, areas, edge, shape of the shore.
#include "estimate/say_figure.hpp"
#include "estimate/summary.hpp"
#include "measure/shore.hpp"
#include "measure/statistics.hpp"

#include <array>
#include <cmath>

namespace wetspell {

namespace {

enum Entry : std::size_t {
  largest_length,
  largest_width,
  largest_edge,
  area_largest,
  area_smallest,
  area_mean,
  development,
  eccentric
};

constexpr std::string_view ellipse_source = "JCGM 100:2008 (GUM) 5.1.2, 5.2.2; ellipse on length and width";

constexpr std::array<FigureSpec, 8> catalogue{{
    {"length-largest", "Greatest length", Figured::length,
     "Greatest length of a visit, with the interval of that line. n: visits with a length.",
     "JCGM 100:2008 (GUM) 5.1.2"},
    {"width-largest", "Greatest width", Figured::length,
     "Greatest width of a visit, with the interval of that line. n: visits with a width.",
     "JCGM 100:2008 (GUM) 5.1.2"},
    {"edge-largest", "Longest edge", Figured::length,
     "Longest edge of a visit: that of the ellipse on length and width. Bays make the true edge longer. n: "
     "visits with both.",
     ellipse_source},
    {"area-largest", "Largest area", Figured::area,
     "Largest area of a visit: that of the ellipse on length and width. n: visits with both.",
     ellipse_source},
    {"area-smallest", "Smallest area", Figured::area,
     "Smallest area of a visit on which the pool was measured. n: visits with length and width.",
     ellipse_source},
    {"area-mean", "Mean area", Figured::area,
     "Mean of the visits' areas; the interval is that of the measuring, not of the season's ups and downs. "
     "n: "
     "visits with length and width.",
     ellipse_source},
    {"shore-development", "Shore development", Figured::number,
     "Edge over that of the circle of the same area, on the day of the largest area: 1 for a circle. Of the "
     "ellipse, so that bays are not in it. n: visits with length and width.",
     ellipse_source},
    {"eccentricity", "Eccentricity", Figured::number,
     "Of the ellipse on the day of the largest area: 0 for a circle, towards 1 for a long narrow pool. n: "
     "visits with length and width.",
     ellipse_source},
}};

using Reading = std::optional<Measured> CountedVisit::*;

struct Extreme {
  const CountedVisit* visit = nullptr;
  std::size_t n = 0; ///< visits with such a reading over 0
};

/// A dry pool has no size: only readings over 0 are looked at.
Extreme extreme(const PoolHistory& pool, Reading reading, bool largest) {
  Extreme found;
  for (const CountedVisit& visit : pool.visits) {
    if (!(visit.*reading) || (visit.*reading)->value <= 0)
      continue;
    ++found.n;
    const double value = (visit.*reading)->value;
    const bool beyond = found.visit == nullptr || (largest ? value > (found.visit->*reading)->value
                                                           : value < (found.visit->*reading)->value);
    if (beyond)
      found.visit = &visit;
  }
  return found;
}

Figure extreme_figure(const SummaryRun& run, Entry entry, const PoolHistory& pool, Reading reading,
                      bool largest) {
  const Extreme found = extreme(pool, reading, largest);
  return found.visit == nullptr
             ? cannot_say(catalogue[entry], "never measured")
             : measured_figure(catalogue[entry], *(found.visit->*reading), found.n, run.options.level);
}

Figure mean_area(const SummaryRun& run, const PoolHistory& pool) {
  std::vector<double> areas;
  double squares = 0;
  bool known = true;
  for (const CountedVisit& visit : pool.visits)
    if (visit.area && visit.area->value > 0) {
      areas.push_back(visit.area->value);
      squares += visit.area->uncertainty * visit.area->uncertainty;
      known = known && visit.area->uncertainty > 0;
    }
  const auto of = moments(areas);
  if (!of)
    return cannot_say(catalogue[area_mean], "never measured");
  const double uncertainty = known ? std::sqrt(squares) / static_cast<double>(areas.size()) : 0.0;
  return measured_figure(catalogue[area_mean], {of.value().mean, uncertainty}, areas.size(),
                         run.options.level);
}

Figure shape(const SummaryRun& run, Entry entry, const Extreme& at, const Result<Measured>& measured,
             double least, double most) {
  if (at.visit == nullptr || !measured)
    return cannot_say(catalogue[entry], "never measured");
  Figure figure = measured_figure(catalogue[entry], measured.value(), at.n, run.options.level);
  if (figure.low) {
    figure.low = std::max(*figure.low, least);
    figure.high = std::min(*figure.high, most);
  }
  return figure;
}

void of_pool(const SummaryRun& run, const PoolHistory& pool, PoolSummary& summary) {
  auto& figures = summary.figures;
  figures.push_back(extreme_figure(run, largest_length, pool, &CountedVisit::length, true));
  figures.push_back(extreme_figure(run, largest_width, pool, &CountedVisit::width, true));
  figures.push_back(extreme_figure(run, largest_edge, pool, &CountedVisit::edge, true));
  figures.push_back(extreme_figure(run, area_largest, pool, &CountedVisit::area, true));
  figures.push_back(extreme_figure(run, area_smallest, pool, &CountedVisit::area, false));
  figures.push_back(mean_area(run, pool));
  const Extreme at = extreme(pool, &CountedVisit::area, true);
  const CountedVisit none;
  const CountedVisit& visit = at.visit == nullptr ? none : *at.visit;
  const Measured length = visit.length.value_or(Measured{});
  const Measured width = visit.width.value_or(Measured{});
  constexpr double any = std::numeric_limits<double>::infinity();
  figures.push_back(
      shape(run, development, at, ellipse_development(length, width, visit.correlation), 1, any));
  figures.push_back(shape(run, eccentric, at, eccentricity(length, width, visit.correlation), 0, 1));
}

} // namespace

SummaryTopic size_topic() {
  return {catalogue, of_pool, nullptr};
}

} // namespace wetspell
