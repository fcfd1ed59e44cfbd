// Writes the demo season into a folder: workbook, CSV tables, and the list of what was spoiled.
//   make_season OUT [SEED [clean]]
#include "demo/mistakes.hpp"
#include "demo/programme.hpp"
#include "demo/rounds.hpp"
#include "demo/season_files.hpp"

#include <fmt/format.h>

#include <filesystem>
#include <fstream>
#include <string_view>

namespace {

namespace fs = std::filesystem;

bool write(const fs::path& path, std::string_view text) {
  std::ofstream file(path, std::ios::binary);
  file << text;
  file.close();
  if (!file)
    fmt::print(stderr, "{} cannot be written.\n", path.string());
  return static_cast<bool>(file);
}

} // namespace

int main(int count, char** words) {
  using namespace wetspell::demo;
  if (count < 2) {
    fmt::print(stderr, "make_season OUT [SEED [clean]]\n");
    return 2;
  }
  const fs::path out = words[1];
  Chance chance(count > 2 ? std::stoull(words[2]) : 2026);
  const Programme programme = invent_programme(chance);
  SeasonRows season = write_season(programme, chance);
  if (count < 4)
    spoil(season, programme, chance);

  fs::create_directories(out / "tables");
  bool written =
      write(out / "season.fods", workbook_of(season)) && write(out / "spoiled.csv", spoiled_csv(season));
  for (const auto& [name, text] : csv_files_of(season))
    written = written && write(out / "tables" / name, text);
  return written ? 0 : 1;
}
