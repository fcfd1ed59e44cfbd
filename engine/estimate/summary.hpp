// What a season says: figures for every pool, for the programme and its groups, the curves behind the charts,
// and what was left out.
#pragma once

#include "estimate/figure.hpp"
#include "estimate/history.hpp"

#include <functional>
#include <random>
#include <span>
#include <string>
#include <vector>

namespace wetspell {

struct SummaryOptions {
  double level = 0.95;      ///< of all intervals
  std::size_t draws = 2000; ///< of every bootstrap; the same seed gives the same answer
  std::uint64_t seed = 20260401;
  /// Headings of the pools' columns by whose contents the programme's figures are told apart as well; see
  /// pool_groups().
  std::string group_by = "Owner";
  /// Called now and then with the share done (0 to 1); returning false cancels.
  std::function<bool(double)> progress;
};

struct PoolSummary {
  std::uint32_t pool = 0; ///< index into Season::pools
  std::vector<Figure> figures;
};

/// A figure of the programme: over all pools (`column` and `group` empty), or over those whose `column` of
/// the pools' table holds `group`.
struct ProgrammeFigure {
  std::string column; ///< heading of the pools' column: "Owner"
  std::string group;  ///< "town forest"
  Figure figure;
};

/// Share of pools still wet by date with its band; a step from each point to the next.
struct CurvePoint {
  double day = 0;                      ///< days since 1899-12-30
  double share = 0, low = 0, high = 0; ///< fractions of one
};

/// The highest counts behind the chart of species by pool.
struct SpeciesCount {
  std::uint32_t pool = 0;
  std::string of; ///< "wood frog, egg masses"
  double highest = 0;
};

/// The mean of a month's readings at one pool, SI.
struct MonthMean {
  std::uint32_t pool = 0; ///< index into Season::pools
  unsigned month = 0;     ///< 1 to 12
  const FigureSpec* spec = nullptr;
  double value = 0;
};

struct SeasonSummary {
  std::vector<PoolSummary> pools; ///< one a pool of the season, in its order
  std::vector<ProgrammeFigure> programme;
  std::vector<CurvePoint> still_wet;
  std::vector<SpeciesCount> species;
  std::vector<MonthMean> months; ///< for trends over several seasons
  std::vector<LeftOut> left_out;
  std::vector<std::string> remarks; ///< what of the season could not be read, in sentences
  bool cancelled = false;
};

/// What every topic gets to work with.
struct SummaryRun {
  const SeasonHistory& history;
  const SummaryOptions& options;

  [[nodiscard]] const Season& season() const { return history.season; }
};

/// One topic: its entries of the catalogue, its figures for one pool, and for the programme. Topics run in
/// the order of topics(); a topic may read the figures that those before it have written.
struct SummaryTopic {
  std::span<const FigureSpec> figures;
  void (*of_pool)(const SummaryRun&, const PoolHistory&, PoolSummary&); ///< null: none
  void (*of_programme)(const SummaryRun&, SeasonSummary&);              ///< null: none
};
std::span<const SummaryTopic> topics();

// One a file: estimate/<topic>_figures.cpp.
SummaryTopic visit_topic();     ///< visits, temperatures, depths, how full
SummaryTopic size_topic();      ///< lengths, areas, edges, shape of the shore
SummaryTopic basin_topic();     ///< the basin's form, volumes, fill by depth
SummaryTopic drying_topic();    ///< when the pool will be dry
SummaryTopic wet_spell_topic(); ///< how long pools held water
SummaryTopic animal_topic();    ///< what bred and how many
SummaryTopic observer_topic();  ///< how far two people agree
SummaryTopic month_topic();     ///< means of the months, for trends over several seasons
SummaryTopic programme_topic(); ///< smallest, quartiles, mean, largest, total of the pools' figures, by group

SeasonSummary summarise(const Season& season, const CheckReport& report, const SummaryOptions& options = {});

} // namespace wetspell
