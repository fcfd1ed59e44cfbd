// What is to happen to a season when files come back: rows to add, cells to choose between, choices to carry
// out. Nothing that stands in the season is changed but where a person chose so.
#pragma once

#include "gather/came_in.hpp"
#include "gather/choose.hpp"

#include <cstdint>
#include <string>
#include <vector>

namespace wetspell {

struct AddedRow {
  std::vector<Cell> cells; ///< in the catalogue's order, with file and row of its source
};

/// A chosen value on its way into the season.
struct CarriedCell {
  TableKind table{};
  std::uint32_t row = 0; ///< inside the season's table
  Field field{};
  Cell cell;
};

/// What became of one file.
struct GatheredFile {
  std::string file;
  std::string problem;       ///< why it was not read; empty: it was
  std::size_t rows = 0;      ///< in it
  std::size_t added = 0;     ///< by this gathering
  std::size_t from_here = 0; ///< rows of the season that came from this file, those just added among them
  std::size_t there = 0;     ///< rows that the season has from elsewhere
  std::size_t to_choose = 0; ///< rows of which something is still to be chosen
  std::size_t answers = 0;   ///< to questions
  std::vector<std::string> remarks;
};

struct GatherPlan {
  std::vector<AddedRow> visits, life;
  std::vector<CarriedCell> carried;
  std::vector<ChooseLine> lines; ///< those of before, in their order, then new ones
  std::vector<GatheredFile> files;

  [[nodiscard]] std::size_t open_lines() const;
  [[nodiscard]] std::size_t not_read() const;
};

/// `before`: the lines of earlier gatherings, with what was chosen in them.
GatherPlan plan_gathering(const Season& season, std::vector<ChooseLine> before,
                          const std::vector<CameFile>& came);

} // namespace wetspell
