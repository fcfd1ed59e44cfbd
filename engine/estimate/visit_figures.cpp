// Visits, temperatures, depths and how full: what the readings of one pool say without further working out.
#include "estimate/say_figure.hpp"
#include "estimate/summary.hpp"

#include <algorithm>
#include <array>

namespace wetspell {

namespace {

enum Entry : std::size_t { visits, first_visit, last_visit, warmest, coldest, deepest, shallowest, fullest };

constexpr std::array<FigureSpec, 8> catalogue{{
    {"visits", "Visits", Figured::count, "Visits that count: with a known pool and a readable date.",
     "common practice, no source"},
    {"first-visit", "First visit", Figured::date, "Day of the pool's first visit. n: visits.",
     "common practice, no source"},
    {"last-visit", "Last visit", Figured::date, "Day of the pool's last visit. n: visits.",
     "common practice, no source"},
    {"warmest", "Warmest", Figured::temperature,
     "Highest mean temperature of a visit, with the interval of that mean. n: visits with a temperature.",
     "JCGM 100:2008 (GUM) 5.1.2"},
    {"coldest", "Coldest", Figured::temperature,
     "Lowest mean temperature of a visit, with the interval of that mean. n: visits with a temperature.",
     "JCGM 100:2008 (GUM) 5.1.2"},
    {"deepest", "Deepest", Figured::depth,
     "Greatest depth of a visit, with the interval of that reading. n: visits with a depth.",
     "JCGM 100:2008 (GUM) 5.1.2"},
    {"shallowest", "Shallowest", Figured::depth,
     "Smallest depth of a visit; 0 when the pool was seen dry. n: visits with a depth.",
     "JCGM 100:2008 (GUM) 5.1.2"},
    {"fullest", "Fullest", Figured::share,
     "Highest share of the basin that was judged full, by per cent or the middle of a class. n: visits with "
     "one.",
     "common practice, no source"},
}};

/// The largest (or smallest) reading of one kind over the pool's visits, with its own interval.
Figure extreme(const SummaryRun& run, const PoolHistory& pool, Entry entry,
               std::optional<Measured> CountedVisit::*reading, bool largest) {
  const CountedVisit* found = nullptr;
  std::size_t n = 0;
  for (const CountedVisit& visit : pool.visits) {
    if (!(visit.*reading))
      continue;
    ++n;
    const double value = (visit.*reading)->value;
    if (found == nullptr || (largest ? value > (found->*reading)->value : value < (found->*reading)->value))
      found = &visit;
  }
  if (found == nullptr)
    return cannot_say(catalogue[entry], "no reading");
  return measured_figure(catalogue[entry], *(found->*reading), n, run.options.level);
}

void of_pool(const SummaryRun& run, const PoolHistory& pool, PoolSummary& summary) {
  const std::size_t n = pool.visits.size();
  summary.figures.push_back(counted_figure(catalogue[visits], n));
  if (n == 0) {
    summary.figures.push_back(cannot_say(catalogue[first_visit], "no visit"));
    summary.figures.push_back(cannot_say(catalogue[last_visit], "no visit"));
  } else {
    summary.figures.push_back(plain_figure(catalogue[first_visit], pool.visits.front().day, n));
    summary.figures.push_back(plain_figure(catalogue[last_visit], pool.visits.back().day, n));
  }
  summary.figures.push_back(extreme(run, pool, warmest, &CountedVisit::temperature, true));
  summary.figures.push_back(extreme(run, pool, coldest, &CountedVisit::temperature, false));
  summary.figures.push_back(extreme(run, pool, deepest, &CountedVisit::depth, true));
  summary.figures.push_back(extreme(run, pool, shallowest, &CountedVisit::depth, false));
  summary.figures.push_back(extreme(run, pool, fullest, &CountedVisit::fill, true));
}

} // namespace

SummaryTopic visit_topic() {
  return {catalogue, of_pool, nullptr};
}

} // namespace wetspell
