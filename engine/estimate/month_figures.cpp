// Means of the months of the year, by which several seasons are compared month by month.
#include "estimate/summary.hpp"
#include "quantity/calendar.hpp"

#include <array>
#include <map>

namespace wetspell {

namespace {

constexpr std::string_view no_source = "common practice, no source";

constexpr std::array catalogue{
    FigureSpec{"depth-in-month", "Depth, month by month", Figured::depth,
               "Mean depth of the visits of a month; only trends over several seasons show it. n: months.",
               no_source},
    FigureSpec{
        "temperature-in-month", "Temperature, month by month", Figured::temperature,
        "Mean of the visits' mean temperatures in a month; only trends over several seasons show it. n: "
        "months.",
        no_source},
    FigureSpec{
        "fill-in-month", "How full, month by month", Figured::share,
        "Mean share of the basin that was judged full in a month; only trends over several seasons show "
        "it. n: months.",
        no_source},
    FigureSpec{"area-in-month", "Area, month by month", Figured::area,
               "Mean area of the visits of a month; only trends over several seasons show it. n: months.",
               no_source},
};

constexpr std::array readings{&CountedVisit::depth, &CountedVisit::temperature, &CountedVisit::fill,
                              &CountedVisit::area};
static_assert(readings.size() == catalogue.size());

struct Sum {
  double all = 0;
  std::size_t n = 0;
};

void of_programme(const SummaryRun& run, SeasonSummary& summary) {
  for (const PoolHistory& pool : run.history.pools)
    for (std::size_t i = 0; i < readings.size(); ++i) {
      std::map<unsigned, Sum> by_month;
      for (const CountedVisit& visit : pool.visits) {
        const auto date = date_of(visit.day);
        const auto& reading = visit.*readings[i];
        if (!date || !reading)
          continue;
        Sum& sum = by_month[date->month];
        sum.all += reading->value;
        ++sum.n;
      }
      for (const auto& [month, sum] : by_month)
        summary.months.push_back({pool.pool, month, &catalogue[i], sum.all / static_cast<double>(sum.n)});
    }
}

} // namespace

SummaryTopic month_topic() {
  return {catalogue, nullptr, of_programme};
}

} // namespace wetspell
