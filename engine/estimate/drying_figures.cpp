// How fast a pool falls, and when it will be dry.
#include "estimate/say_figure.hpp"
#include "estimate/summary.hpp"
#include "measure/fall.hpp"
#include "quantity/print.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace wetspell {

namespace {

enum Entry : std::size_t { fall_a_day, dry_date, dry_date_robust };

constexpr std::array<FigureSpec, 3> catalogue{{
    {"fall-a-day", "Fall a day", Figured::depth_a_day,
     "How fast the water falls since the last high water: least squares of depth on date, Student's "
     "interval. "
     "n: visits with a depth since then.",
     "least squares; checked against NIST StRD Norris"},
    {"dry-date", "Expected dry", Figured::date,
     "Day on which the pool will be dry if it goes on falling as it has since the last high water; rain and "
     "leaves coming out change that. Interval: the days on which a reading may show 0 (Fieller). n: visits "
     "with a depth since the last high water.",
     "Fieller's interval of inverse prediction"},
    {"dry-date-robust", "Expected dry, robust", Figured::date,
     "The same by the line of Theil and Sen, which one wild reading does not move. n: visits with a depth "
     "since the last high water.",
     "Theil (1950), Sen (1968); intercept after Hollander and Wolfe"},
}};

std::string depth_on(const SummaryRun& run, const DepthReading& reading) {
  return fmt::format("{} on {}", in_words(reading.depth.value, Figured::depth, run.season().settings),
                     print_date(reading.day));
}

std::vector<DepthReading> depths_of(const PoolHistory& pool) {
  std::vector<DepthReading> depths;
  for (const CountedVisit& visit : pool.visits)
    if (visit.depth)
      depths.push_back({visit.day, *visit.depth});
  return depths;
}

/// Why nothing can be said of a pool's drying; empty when something can.
std::string silence(const SummaryRun& run, std::span<const DepthReading> all,
                    std::span<const DepthReading> fall) {
  if (all.empty())
    return "no depth";
  if (all.back().depth.value <= 0)
    return fmt::format("dry on {}", print_date(all.back().day));
  if (fall.size() < 3)
    return fmt::format("{} with a depth since the high water of {}: too few for a line",
                       fall.size() == 1 ? "one visit" : "two visits", depth_on(run, fall.front()));
  return {};
}

std::string dry_too_early(double last_day) {
  return fmt::format("the line would have it dry before {}, when it still held water", print_date(last_day));
}

void say_dates(const SummaryRun& run, const Drying& drying, double last_day, PoolSummary& summary) {
  const std::size_t n = drying.n;
  if (drying.dry.x < last_day)
    summary.figures.push_back(cannot_say(catalogue[dry_date], dry_too_early(last_day), n));
  else {
    // It held water on the last visit.
    const auto low = drying.dry.low ? std::max(*drying.dry.low, last_day) : last_day;
    Figure figure =
        interval_figure(catalogue[dry_date], drying.dry.x, low, drying.dry.high, n, run.options.level);
    if (!drying.dry.high)
      figure.note = "the fall is not sure enough to say by when at the latest";
    summary.figures.push_back(std::move(figure));
  }
  if (!drying.robust_dry)
    summary.figures.push_back(cannot_say(catalogue[dry_date_robust], "not falling by this line", n));
  else if (*drying.robust_dry < last_day)
    summary.figures.push_back(cannot_say(catalogue[dry_date_robust], dry_too_early(last_day), n));
  else
    summary.figures.push_back(plain_figure(catalogue[dry_date_robust], *drying.robust_dry, n));
}

void of_pool(const SummaryRun& run, const PoolHistory& pool, PoolSummary& summary) {
  const std::vector<DepthReading> all = depths_of(pool);
  const auto fall = std::span(all).subspan(last_high_water(all));
  std::string why = silence(run, all, fall);
  if (why.empty()) {
    const auto found = drying(fall, run.options.level);
    if (found) {
      const Drying& drying = found.value();
      const double half = slope_half_width(drying.line, run.options.level).value();
      summary.figures.push_back(interval_figure(catalogue[fall_a_day], drying.fall_a_day.value,
                                                drying.fall_a_day.value - half,
                                                drying.fall_a_day.value + half, drying.n, run.options.level));
      say_dates(run, drying, all.back().day, summary);
      return;
    }
    why = found.error().kind == ProblemKind::bad_argument
              ? fmt::format("not falling: {}, {}", depth_on(run, fall.front()), depth_on(run, fall.back()))
              : "all depths since the last high water are of one day";
  }
  for (const FigureSpec& spec : catalogue)
    summary.figures.push_back(cannot_say(spec, why, fall.size()));
}

} // namespace

SummaryTopic drying_topic() {
  return {catalogue, of_pool, nullptr};
}

} // namespace wetspell
