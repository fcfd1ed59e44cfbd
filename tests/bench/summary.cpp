// The whole summary of a season by the engine: 1,000 pools, 10,000 visits, every bootstrap with 2,000 draws.
// Keeps the same season as plain CSV for programs that do the same (summary.R).
//   bench_summary [FILE [CSV]]
#include "bench/figures.hpp"

#include "estimate/summary.hpp"
#include "exchange/csv.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <ctime>
#include <fstream>
#include <random>
#include <string>

namespace {

constexpr int pools = 1000;
constexpr int rounds = 10;
constexpr int days_between = 12;
constexpr double today = 46300; // behind the season's last day

struct Written {
  std::string visits = "Pool,Date,Person,Water,Depth (cm),Full,Length (m),Width (m),Temperature 1 (C)\n";
  std::string life = "Pool,Date,First person,Species,Seen as,Count of first,Count of second,Seen by both\n";
  std::string plain = "pool,day,wet,depth,area,temperature\n"; ///< what summary.R reads
};

std::string date_of(int day) { // day 0 is 15 March
  static constexpr int lengths[]{31, 30, 31, 30, 31};
  int month = 3;
  for (day += 15; day > lengths[month - 3]; ++month)
    day -= lengths[month - 3];
  return fmt::format("2026-{:02}-{:02}", month, day);
}

/// Pools that fall evenly to a dry day of their own; every fifth holds water to the end.
Written season() {
  Written all;
  std::mt19937_64 engine(7);
  const auto noise = [&](double size) {
    return size * (static_cast<double>(engine() >> 11) * 0x1p-53 - 0.5);
  };
  for (int pool = 0; pool < pools; ++pool) {
    const double depth = 40 + pool % 60;
    const double dry = pool % 5 == 0 ? 400 : 60 + pool % 50;
    const double length = 10 + pool % 25;
    for (int round = 0; round < rounds; ++round) {
      const int day = round * days_between + pool % 6;
      const double left = 1 - day / dry;
      const std::string code = fmt::format("P{:04}", pool);
      const double warm = 6 + 0.1 * day + noise(1);
      if (left <= 0) {
        all.visits += fmt::format("{},{},RW{},no standing water,,0,,,\n", code, date_of(day), pool / 40);
        all.plain += fmt::format("{},{},0,0,,\n", pool, day);
        continue;
      }
      const double now = depth * left + noise(1);
      const double across = length * std::sqrt(left) + noise(0.2);
      all.visits += fmt::format("{},{},RW{},standing water,{:.1f},{:.0f},{:.1f},{:.1f},{:.1f}\n", code,
                                date_of(day), pool / 40, now, 100 * left * left, across, 0.6 * across, warm);
      all.plain += fmt::format("{},{},1,{:.3f},{:.3f},{:.1f}\n", pool, day, now / 100,
                               0.6 * across * across * 0.785398, warm);
      if (round < 3)
        all.life += fmt::format("{},{},RW{},wood frog,egg masses,{},{},{}\n", code, date_of(day), pool / 40,
                                20 + pool % 9, 19 + pool % 7, 17 + pool % 5);
    }
  }
  return all;
}

double seconds() {
  return static_cast<double>(std::clock()) / CLOCKS_PER_SEC;
}

} // namespace

int main(int count, char** words) {
  using namespace wetspell;
  const Written written = season();
  if (count > 2)
    std::ofstream(words[2], std::ios::binary) << written.plain;
  std::vector<Table> tables;
  tables.push_back(table_from_csv(written.visits, "visits").value());
  tables.push_back(table_from_csv(written.life, "life").value());
  const auto read = read_season(std::move(tables), today);
  if (!read) {
    std::fputs(read.error().text.c_str(), stderr);
    return 1;
  }
  const CheckReport report = check(read.value());
  double best = 0;
  std::size_t figures = 0;
  for (int round = 0; round < 5; ++round) {
    const double start = seconds();
    const SeasonSummary summary = summarise(read.value(), report);
    const double taken = seconds() - start;
    best = best == 0 ? taken : std::min(best, taken);
    figures = summary.programme.size();
    for (const PoolSummary& pool : summary.pools)
      figures += pool.figures.size();
  }
  fmt::print("summary of {} pools, {} visits: {:.3f} s of processor time, {} figures\n",
             read.value().pools.size(), read.value().visits.size(), best, figures);
  if (count > 1)
    bench::add(words[1], {"summary of 1,000 pools and 10,000 visits, 2,000 draws", "under 1 s",
                          fmt::format("{:.2f} s", best), best < 1});
}
