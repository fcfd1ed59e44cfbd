// A small season as text, its summary, and one figure of it by name.
#pragma once

#include "engine/check/fixture.hpp"
#include "estimate/summary.hpp"

#include <gtest/gtest.h>

namespace wetspell::test {

using Rows = std::vector<std::vector<std::string>>;

inline Season season_from(const std::vector<std::pair<TableKind, Rows>>& tables) {
  std::vector<Table> sheets;
  for (const auto& [kind, rows] : tables)
    sheets.push_back(fixture_table(kind, rows));
  auto season = read_season(std::move(sheets), fixture_today());
  EXPECT_TRUE(season.has_value());
  return std::move(season).value();
}

inline const Figure* figure_in(const std::vector<Figure>& figures, std::string_view full) {
  for (const Figure& each : figures)
    if (full_name(each) == full)
      return &each;
  return nullptr;
}

/// In words, or that there is none.
inline std::string pool_figure(const Season& season, const SeasonSummary& summary, std::size_t pool,
                               std::string_view full) {
  const Figure* found = figure_in(summary.pools.at(pool).figures, full);
  return found == nullptr ? "no such figure" : in_words(*found, season.settings);
}

inline const Figure* programme_figure(const SeasonSummary& summary, std::string_view full,
                                      std::string_view group = {}) {
  for (const ProgrammeFigure& each : summary.programme)
    if (full_name(each.figure) == full && each.group == group)
      return &each.figure;
  return nullptr;
}

inline std::string programme_words(const Season& season, const SeasonSummary& summary, std::string_view full,
                                   std::string_view group = {}) {
  const Figure* found = programme_figure(summary, full, group);
  return found == nullptr ? "no such figure" : in_words(*found, season.settings);
}

} // namespace wetspell::test
