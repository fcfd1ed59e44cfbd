// The engine's speed: rules over records, cells to findings, growth with the rows; beside them two things
// everybody knows, sorting numbers and reading plain numbers, so that a slow machine is seen to be slow.
#include "bench/big_season.hpp"
#include "bench/figures.hpp"

#include "check/check.hpp"
#include "function/function.hpp"

#include <benchmark/benchmark.h>
#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cstdlib>
#include <map>
#include <random>

namespace wetspell::bench {

namespace {

constexpr double today = 46300; // behind the settings' own day; not used
constexpr int asked_size = 100'000;
constexpr int full_sheet = 1'048'575;

/// The last made one is kept: benchmarks of one size follow each other.
const BigSeason& season_of(std::size_t visits, Writing writing) {
  static BigSeason kept;
  static Writing kept_writing{};
  if (kept.visits != visits || kept_writing != writing) {
    kept = {};
    kept = big_season(visits, writing);
    kept_writing = writing;
  }
  return kept;
}

Season read(const BigSeason& cells) {
  std::vector<Table> copy = cells.tables;
  return std::move(read_season(std::move(copy), today)).value();
}

/// Every visit counted once an iteration.
void per_visit(benchmark::State& state, double visits) {
  const double all = visits * static_cast<double>(state.iterations());
  state.counters["visits/s"] = benchmark::Counter(all, benchmark::Counter::kIsRate);
}

void sort_doubles(benchmark::State& state) {
  std::mt19937_64 engine(1);
  std::vector<double> numbers(static_cast<std::size_t>(state.range(0)));
  for (double& number : numbers)
    number = static_cast<double>(engine());
  for (auto _ : state) {
    state.PauseTiming();
    std::vector<double> copy = numbers;
    state.ResumeTiming();
    std::sort(copy.begin(), copy.end());
    benchmark::DoNotOptimize(copy.data());
  }
  per_visit(state, static_cast<double>(state.range(0)));
}

/// As many plain numbers as the season has typed cells, by the standard library's quickest reader.
void read_plain_numbers(benchmark::State& state) {
  const BigSeason& cells = season_of(static_cast<std::size_t>(state.range(0)), Writing::units);
  std::mt19937_64 engine(1);
  std::vector<std::string> texts(cells.typed_cells);
  for (std::string& text : texts)
    text = fmt::format("{:.1f}", static_cast<double>(engine() % 1000) / 10);
  for (auto _ : state)
    for (const std::string& text : texts) {
      double number = 0;
      std::from_chars(text.data(), text.data() + text.size(), number);
      benchmark::DoNotOptimize(number);
    }
  per_visit(state, static_cast<double>(cells.visits));
}

void all_rules(benchmark::State& state) {
  const Season season = read(season_of(static_cast<std::size_t>(state.range(0)), Writing::mixed));
  std::size_t findings = 0;
  for (auto _ : state) {
    const CheckReport report = check(season);
    findings = report.findings.size();
  }
  per_visit(state, static_cast<double>(season.visits.size()));
  state.counters["findings"] = static_cast<double>(findings);
}

void cells_to_findings(benchmark::State& state, Writing writing) {
  const BigSeason& cells = season_of(static_cast<std::size_t>(state.range(0)), writing);
  std::size_t findings = 0;
  for (auto _ : state) {
    state.PauseTiming();
    std::vector<Table> copy = cells.tables; // reading a season takes the cells over
    state.ResumeTiming();
    auto season = read_season(std::move(copy), today);
    findings = check(season.value()).findings.size();
    state.PauseTiming();
    { const Season gone = std::move(season).value(); } // giving memory back is no part of it
    state.ResumeTiming();
  }
  per_visit(state, static_cast<double>(cells.visits));
  state.counters["findings"] = static_cast<double>(findings);
}

Argument rectangle(const Table& table, std::size_t first, std::size_t rows) {
  Argument argument;
  argument.given = true;
  argument.rows = rows;
  argument.columns = table.columns();
  for (std::size_t row = first; row < first + rows; ++row)
    for (std::size_t column = 0; column < table.columns(); ++column)
      argument.cells.push_back(table.at(row, column));
  return argument;
}

/// POOL.DOUBTS as a sheet asks it: for one row after another, each time with all pools and people.
void doubts_of_rows(benchmark::State& state) {
  const auto pools = static_cast<std::size_t>(state.range(0));
  const BigSeason& cells = season_of(pools * 100, Writing::mixed);
  const Table& visits = cells.tables.front();
  std::vector<Argument> arguments{rectangle(visits, 0, 1), rectangle(visits, 1, 1)};
  for (std::size_t i = 1; i < cells.tables.size(); ++i)
    if (cells.tables[i].sheet() != spec(TableKind::life).sheet)
      arguments.push_back(rectangle(cells.tables[i], 0, cells.tables[i].rows()));
  const FunctionSpec& function = *function_named("POOL.DOUBTS");
  std::size_t row = 1;
  for (auto _ : state) {
    arguments[1] = rectangle(visits, row, 1);
    row = row % (visits.rows() - 1) + 1;
    benchmark::DoNotOptimize(run(function, arguments));
  }
  per_visit(state, 1);
}

// The check runs on all processors; what is asked is asked of one, so the time of all of them is taken.
BENCHMARK(sort_doubles)->Arg(asked_size)->Unit(benchmark::kMillisecond);
BENCHMARK(read_plain_numbers)->Arg(asked_size)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(cells_to_findings, units, Writing::units)
    ->Arg(asked_size)
    ->Unit(benchmark::kMillisecond)
    ->MeasureProcessCPUTime();
BENCHMARK_CAPTURE(cells_to_findings, mixed, Writing::mixed)
    ->Arg(asked_size)
    ->Unit(benchmark::kMillisecond)
    ->MeasureProcessCPUTime();
BENCHMARK_CAPTURE(cells_to_findings, bare, Writing::bare)
    ->Arg(asked_size)
    ->Unit(benchmark::kMillisecond)
    ->MeasureProcessCPUTime();
BENCHMARK(doubts_of_rows)->Arg(40)->Arg(300)->Unit(benchmark::kMicrosecond);
BENCHMARK(all_rules)
    ->Arg(10'000)
    ->Arg(asked_size)
    ->Arg(300'000)
    ->Arg(full_sheet)
    ->Unit(benchmark::kMillisecond)
    ->MeasureProcessCPUTime();

/// Prints as usual and keeps the best rate of each benchmark: other work on the machine only slows down.
class Keeper : public benchmark::ConsoleReporter {
public:
  void ReportRuns(const std::vector<Run>& runs) override {
    for (const Run& run : runs)
      if (const auto rate = run.counters.find("visits/s");
          run.run_type == Run::RT_Iteration && rate != run.counters.end())
        best_[run.run_name.str()] = std::max(best_[run.run_name.str()], rate->second.value);
    ConsoleReporter::ReportRuns(runs);
  }

  [[nodiscard]] double best(const std::string& name) const {
    const auto found = best_.find(name);
    return found == best_.end() ? 0 : found->second;
  }

private:
  std::map<std::string, double> best_;
};

void add_figures(const Keeper& keeper, const std::string& file) {
  const auto at = [](const char* name, int size) { return fmt::format("{}/{}", name, size); };
  const auto of_all_processors = [&](const std::string& name, int size) {
    return fmt::format("{}/process_time", at(name.c_str(), size));
  };
  const double sort = keeper.best(at("sort_doubles", asked_size));
  const double numbers = keeper.best(at("read_plain_numbers", asked_size));
  const double rules = keeper.best(of_all_processors("all_rules", asked_size));
  add(file,
      {"all rules over the records of 100,000 visits", "1,000,000 visits/s on one core",
       fmt::format("{} visits/s; {:.1f} x the time to sort as many doubles", grouped(rules), sort / rules),
       rules >= 1e6});
  for (const char* writing : {"units", "mixed", "bare"}) {
    const double rate =
        keeper.best(of_all_processors(fmt::format("cells_to_findings/{}", writing), asked_size));
    add(file,
        {fmt::format("cells to findings, readings {}", std::string_view(writing) == "units" ? "all with units"
                                                       : std::string_view(writing) == "mixed"
                                                           ? "as in the demo"
                                                           : "as bare numbers"),
         "250,000 visits/s on one core",
         fmt::format("{} visits/s; {:.1f} x from_chars on as many numbers", grouped(rate), numbers / rate),
         rate >= 250e3});
  }
  for (const int pools : {40, 300})
    add(file, {fmt::format("POOL.DOUBTS without the office, {} pools", pools), "nothing asked",
               fmt::format("{:.0f} µs a row", 1e6 / keeper.best(at("doubts_of_rows", pools))), true});
  const double least = keeper.best(of_all_processors("all_rules", 10'000));
  for (const int size : {asked_size, 300'000, full_sheet}) {
    const double ratio = least / keeper.best(of_all_processors("all_rules", size));
    add(file, {fmt::format("growth: time per visit, {} against 10,000 visits", grouped(size)),
               "in proportion (1.0)", fmt::format("{:.2f}", ratio), ratio <= 1.5});
  }
}

} // namespace

} // namespace wetspell::bench

int main(int count, char** words) {
  benchmark::Initialize(&count, words);
  wetspell::bench::Keeper keeper;
  benchmark::RunSpecifiedBenchmarks(&keeper);
  if (count > 1)
    wetspell::bench::add_figures(keeper, words[1]);
  return 0;
}
