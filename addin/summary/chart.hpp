#pragma once
// One of the office's own charts on a sheet, to be edited as any other.

#include "base/css.hpp"
#include "summary/numbers.hpp"

#include <com/sun/star/awt/Rectangle.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>

#include <optional>
#include <string>
#include <vector>

namespace wetspell::addin {

enum class ChartForm { lines, dots, bars }; ///< numbers across, or names across

/// How a series is drawn, so that it can be told apart without colour.
struct SeriesLook {
  sal_Int32 colour = 0;
  sal_Int32 width = 0; ///< of the line, 1/100 mm; 0: no line
  bool dashed = false;
  sal_Int32 symbol = -3; ///< the office's number: -3 none, 0 square, 1 diamond, 8 circle
  bool hatched = false;  ///< bars
  bool hollow = false;   ///< the symbol
  sal_Int32 size = 200;  ///< of the symbol, 1/100 mm
};

struct ChartSpec {
  std::string name; ///< of the shape, by which it is found again
  ChartForm form = ChartForm::lines;
  std::string title, words, across, up; ///< above, below the title, on the axes
  std::vector<NumbersSeries> series;
  std::vector<SeriesLook> looks; ///< one a series, or one for all
  bool legend = false;
  std::optional<double> first_day, last_day; ///< across are days
  std::optional<double> top;                 ///< of the upward axis
};

/// Where charts are drawn.
struct Shown {
  css::uno::Reference<css::uno::XComponentContext> context;
  SheetDocument document;
  css::uno::Reference<css::sheet::XSpreadsheet> sheet;
};

/// Where the chart of this name stands; nothing when there is none.
std::optional<css::awt::Rectangle> chartPlace(const Shown& on, const std::string& name);

/// Draws the chart. One of the same name whose ranges are the same already is left as the person has it,
/// except for the words below its title; another one is replaced, in its place and size.
void putChart(const Shown& on, const css::awt::Rectangle& place, const ChartSpec& spec);

/// Takes the chart away, if it is there.
void dropChart(const Shown& on, const std::string& name);

} // namespace wetspell::addin
