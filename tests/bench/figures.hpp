// What was asked and what was measured, in words; one line a figure, gathered over several programs.
#pragma once

#include <filesystem>
#include <string>

namespace wetspell::bench {

struct Figure {
  std::string what;     ///< "all rules, 100,000 visits"
  std::string asked;    ///< "1,000,000 visits a second"
  std::string measured; ///< "1,830,000; 5.2 x the peer ..."
  bool met = false;
};

/// Appends the figure's line to a text file that `run` prints at its end. Nothing is asserted.
void add(const std::filesystem::path& file, const Figure& figure);

/// "1,830,000": whole, in groups of three.
std::string grouped(double number);

} // namespace wetspell::bench
