#pragma once
// The sheet 'Numbers behind the charts', and where on it each chart finds its own.

#include "estimate/summary.hpp"
#include "sheet/sheets.hpp"

#include <string>
#include <vector>

namespace wetspell::addin {

/// One series of a chart: ranges as charts name them.
struct NumbersSeries {
  std::string label; ///< the cell with its name
  std::string across, up;
  std::string below, above; ///< arms of the intervals; empty: none
};

struct Numbers {
  std::vector<NumbersSeries> depths;  ///< days and depths, a series a pool
  std::string depth_words;            ///< which pools are drawn
  double first_day = 0, last_day = 0; ///< as the document counts days
  std::vector<NumbersSeries> sizes;   ///< one series; pools across, from the smallest to the largest
  std::string size_title, size_words;
  std::vector<NumbersSeries> wet; ///< share of pools still wet, its lower and its upper bound, as steps
  std::string wet_words;
  double first_wet_day = 0, last_wet_day = 0;
  std::vector<NumbersSeries> species; ///< pools across, a series a species
  std::string species_words;
};

/// Writes the numbers in place of the old ones.
Numbers writeNumbers(const SheetDocument& document, const SeasonHistory& history,
                     const SeasonSummary& summary, const SummaryOptions& options);

} // namespace wetspell::addin
