#pragma once
// A summarised season in the office, what the engine says of the same cells, and what tests ask about its
// sheets.

#include "commands/season_in_office.hpp"
#include "estimate/summary.hpp"

#include <com/sun/star/chart2/XChartDocument.hpp>

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace wetspell::host {

inline constexpr const char* pools_sheet = "Pools this season";
inline constexpr const char* programme_sheet = "Programme this season";
inline constexpr const char* numbers_sheet = "Numbers behind the charts";

/// The small season with more visits to its first pool, some of them dry, so that depths make a line.
workbook::WorkbookContent season_to_summarise();

/// What the engine says of a document's cells, without the extension.
struct Expected {
  Season season;
  CheckReport report;
  SeasonSummary summary;
};
std::unique_ptr<Expected> expected(const driver::Document& document);

/// Cells of a sheet's used part: texts, numbers, in the office's order.
using Lines = std::vector<std::vector<Cell>>;
Lines lines_of(const driver::Document& document, const std::string& sheet);
/// Row and column of the first cell with this text; fails the test when there is none.
struct At {
  std::size_t row = 0, column = 0;
};
At find(const Lines& lines, const std::string& text);
std::string address(const std::string& sheet, At at);

/// The charts of a sheet by the names of their shapes.
std::vector<std::string> chart_names(const driver::Document& document, const std::string& sheet);
css::uno::Reference<css::chart2::XChartDocument> chart(const driver::Document& document,
                                                       const std::string& sheet, const std::string& name);
/// Title, subtitle and axis titles of a chart.
struct ChartWords {
  std::string title, words, across, up;
};
ChartWords words_of(const css::uno::Reference<css::chart2::XChartDocument>& chart);
/// Numbers that the chart's series show upward, series by series.
std::vector<std::vector<double>> values_of(const css::uno::Reference<css::chart2::XChartDocument>& chart);

} // namespace wetspell::host
