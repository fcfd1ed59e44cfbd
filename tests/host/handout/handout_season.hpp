#pragma once
// A small season with a person who has a pace of 5 ft, and her handout.

#include "driver/document.hpp"
#include "driver/failure.hpp"
#include "driver/files.hpp"
#include "season/season.hpp"
#include "templates/handout.hpp"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <string>
#include <string_view>
#include <vector>

namespace wetspell::host {

inline Table tableOf(std::string_view name, const std::vector<std::vector<std::string>>& rows) {
  Table cells(Place{std::string(name), 1, 0}, rows.size(), rows.front().size());
  for (std::size_t r = 0; r < rows.size(); ++r)
    for (std::size_t c = 0; c < rows[r].size(); ++c)
      cells.at(r, c) = rows[r][c].empty() ? Cell{} : Cell::of_text(rows[r][c]);
  return cells;
}

inline Season handoutSeason(const std::string& system = "US customary", const std::string& counts = "paces") {
  std::vector<Table> sheets;
  sheets.push_back(tableOf("settings", {{"Setting", "Value"},
                                        {"Programme", "Pool watch"},
                                        {"Season (year)", "2026"},
                                        {"Unit system", system}}));
  sheets.push_back(tableOf("pools", {{"Pool code", "Pool name"}, {"007", "Split Rock"}, {"P2", "Far End"}}));
  sheets.push_back(
      tableOf("people", {{"Person code", "Name", "Counts in", "Taped course", "Run 1"},
                         {"RW", "Rosa Winter", counts, "100 ft", counts == "paces" ? "20" : "40"}}));
  sheets.push_back(
      tableOf("visits", {{"Pool", "Date", "Start", "End", "Person", "Water", "Temperature 1", "Temperature 2",
                          "Temperature 3", "Depth", "Length", "Width", "Size by", "Isolated", "Joined to"}}));
  auto season = read_season(std::move(sheets), 46200);
  if (!season)
    throw driver::Failure(season.error().text);
  return std::move(season).value();
}

/// Cells of the first row of visits in that handout, by their columns.
namespace visit {
inline constexpr const char *feedback = "Visits.A4", *pool = "Visits.B4", *date = "Visits.C4",
                            *start = "Visits.D4", *end = "Visits.E4", *person = "Visits.F4",
                            *water = "Visits.G4", *first = "Visits.H4", *middle = "Visits.I4",
                            *other = "Visits.J4", *depth = "Visits.K4", *length = "Visits.L4",
                            *width = "Visits.M4", *sizeBy = "Visits.N4", *isolated = "Visits.O4",
                            *joined = "Visits.P4";
}

/// The handout of the season's only person, opened in the office.
inline driver::Document handoutIn(driver::Office& office, const Season& season,
                                  const std::vector<Question>& questions = {}) {
  const driver::TemporaryFolder folder("wetspell-handout");
  const auto file = folder.path() / "handout.fods";
  std::ofstream(file, std::ios::binary) << workbook::handout_workbook(season, 0, questions);
  return driver::Document::open(office, file);
}

} // namespace wetspell::host
