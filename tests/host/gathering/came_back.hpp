#pragma once
// A season in the office, and a folder with files that came back for it.

#include "commands/season_in_office.hpp"
#include "driver/files.hpp"

#include <nlohmann/json.hpp>

namespace wetspell::host {

using Lines = std::vector<std::vector<std::string>>;

class CameBack : public ::testing::Test {
protected:
  driver::TemporaryFolder folder{"wetspell-test-"};
  /// In a window, as a person has it: with other files opened and closed meanwhile, undo needs one.
  driver::Document document = opened(smallSeason(), office(), {.hidden = false});
  Desk desk{document};

  /// A workbook of one sheet in the folder, typed cell by cell as people do; behind an apostrophe
  /// a text whatever it looks like.
  void send(const std::string& file, const Lines& cells, const std::string& sheet = "Visits") const;
  nlohmann::json gather() const;
  nlohmann::json gather(const Desk& with) const;
  /// What a block of ours shows, a line a row, cells divided by bars.
  std::vector<std::string> shown(const std::string& sheet) const;
  std::string cell(Field field, std::size_t row) const { return document.read(at(field, row)).text; }
};

} // namespace wetspell::host
