#include "summary/chart_style.hpp"

#include "base/text.hpp"
#include "summary/look.hpp"
#include "templates/look.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/chart/ChartLegendPosition.hpp>
#include <com/sun/star/chart/X3DDisplay.hpp>
#include <com/sun/star/chart/XAxisXSupplier.hpp>
#include <com/sun/star/chart/XAxisYSupplier.hpp>
#include <com/sun/star/chart/XDiagram.hpp>
#include <com/sun/star/chart2/Symbol.hpp>
#include <com/sun/star/container/XNameContainer.hpp>
#include <com/sun/star/drawing/FillStyle.hpp>
#include <com/sun/star/drawing/Hatch.hpp>
#include <com/sun/star/drawing/HatchStyle.hpp>
#include <com/sun/star/drawing/LineDash.hpp>
#include <com/sun/star/drawing/LineStyle.hpp>
#include <com/sun/star/lang/Locale.hpp>
#include <com/sun/star/lang/XMultiServiceFactory.hpp>
#include <com/sun/star/util/XNumberFormatsSupplier.hpp>

#include <algorithm>
#include <array>
#include <cmath>

namespace wetspell::addin {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
namespace colour = workbook::colour;

namespace {

using Properties = Reference<css::beans::XPropertySet>;

Properties properties(const Reference<css::uno::XInterface>& of) {
  return {of, UNO_QUERY_THROW};
}

void setTitle(const Reference<css::uno::XInterface>& title, const std::string& words, float points) {
  const auto set = properties(title);
  set->setPropertyValue("String", Any(toOffice(words)));
  set->setPropertyValue("CharHeight", Any(points));
  set->setPropertyValue("CharColor", Any(colourOf(colour::ink)));
}

/// Lines of at most so many signs, broken between words.
std::string inLines(const std::string& words) {
  constexpr std::size_t longest = 120;
  std::string all, line;
  std::size_t from = 0;
  while (from < words.size()) {
    const std::size_t to = std::min(words.find(' ', from), words.size());
    const std::string word = words.substr(from, to - from);
    if (!line.empty() && line.size() + 1 + word.size() > longest) {
      all += line + "\n";
      line.clear();
    }
    line += (line.empty() ? "" : " ") + word;
    from = to + 1;
  }
  return all + line;
}

void styleDays(const Reference<css::chart::XChartDocument>& chart, const Properties& axis,
               const ChartSpec& spec) {
  const auto formats =
      Reference<css::util::XNumberFormatsSupplier>(chart, UNO_QUERY_THROW)->getNumberFormats();
  const css::lang::Locale english("en", "US", "");
  const rtl::OUString code("D MMM");
  const sal_Int32 known = formats->queryKey(code, english, false);
  axis->setPropertyValue("LinkNumberFormatToSource", Any(false));
  axis->setPropertyValue("NumberFormat", Any(known != -1 ? known : formats->addNew(code, english)));
  constexpr std::array steps{7.0, 14.0, 28.0, 56.0};
  constexpr double most_labels = 14;
  const double days = std::max(1.0, *spec.last_day - *spec.first_day);
  double step = steps.back();
  for (const double each : steps)
    if (days / each <= most_labels) {
      step = each;
      break;
    }
  axis->setPropertyValue("Min", Any(*spec.first_day));
  axis->setPropertyValue("Max", Any(*spec.first_day + step * std::ceil(days / step)));
  axis->setPropertyValue("StepMain", Any(step));
}

void styleAxes(const Reference<css::chart::XChartDocument>& chart, const ChartSpec& spec) {
  const auto diagram = chart->getDiagram();
  const auto on = properties(diagram);
  const Reference<css::chart::XAxisXSupplier> across(diagram, UNO_QUERY_THROW);
  const Reference<css::chart::XAxisYSupplier> up(diagram, UNO_QUERY_THROW);
  constexpr float forTitles = 10, forLabels = 9;
  on->setPropertyValue("HasXAxisTitle", Any(true));
  setTitle(across->getXAxisTitle(), spec.across, forTitles);
  on->setPropertyValue("HasYAxisTitle", Any(true));
  setTitle(up->getYAxisTitle(), spec.up, forTitles);
  for (const Properties& axis : {across->getXAxis(), up->getYAxis()})
    axis->setPropertyValue("CharHeight", Any(forLabels));
  up->getYAxis()->setPropertyValue("Min", Any(0.0));
  up->getYAxis()->setPropertyValue("LinkNumberFormatToSource", Any(false));
  if (spec.top)
    up->getYAxis()->setPropertyValue("Max", Any(*spec.top));
  if (spec.first_day)
    styleDays(chart, across->getXAxis(), spec);
  on->setPropertyValue("HasYAxisGrid", Any(true));
  up->getYMainGrid()->setPropertyValue("LineColor", Any(colourOf(colour::reed)));
}

/// Dashes and hatches go by names that the chart itself keeps.
rtl::OUString kept(const Reference<css::uno::XInterface>& chart, const char* table, const char* name,
                   const Any& content) {
  const Reference<css::container::XNameContainer> names(
      Reference<css::lang::XMultiServiceFactory>(chart, UNO_QUERY_THROW)->createInstance(toOffice(table)),
      UNO_QUERY_THROW);
  const rtl::OUString known = toOffice(name);
  if (!names->hasByName(known))
    names->insertByName(known, content);
  return known;
}

void styleBar(const Reference<css::uno::XInterface>& chart, const Properties& series,
              const SeriesLook& look) {
  series->setPropertyValue("Color", Any(look.colour));
  series->setPropertyValue("BorderStyle", Any(css::drawing::LineStyle_SOLID));
  series->setPropertyValue("BorderColor", Any(colourOf(colour::ink)));
  if (!look.hatched)
    return;
  constexpr sal_Int32 distance = 120, angle = 450; // 1/100 mm, 1/10 degree
  const css::drawing::Hatch hatch(css::drawing::HatchStyle_SINGLE, look.colour, distance, angle);
  series->setPropertyValue("FillStyle", Any(css::drawing::FillStyle_HATCH));
  series->setPropertyValue("HatchName",
                           Any(kept(chart, "com.sun.star.drawing.HatchTable", "wetspell hatch", Any(hatch))));
}

void styleStroke(const Reference<css::uno::XInterface>& chart, const Properties& series,
                 const SeriesLook& look) {
  series->setPropertyValue("Color", Any(look.colour));
  series->setPropertyValue("LineStyle", Any(look.width == 0 ? css::drawing::LineStyle_NONE
                                            : look.dashed   ? css::drawing::LineStyle_DASH
                                                            : css::drawing::LineStyle_SOLID));
  if (look.dashed) {
    constexpr sal_Int32 dash = 250, space = 150; // 1/100 mm
    const css::drawing::LineDash dashes(css::drawing::DashStyle_RECT, 0, 0, 1, dash, space);
    series->setPropertyValue(
        "LineDashName", Any(kept(chart, "com.sun.star.drawing.DashTable", "wetspell dash", Any(dashes))));
  }
  if (look.width > 0)
    series->setPropertyValue("LineWidth", Any(look.width));
  css::chart2::Symbol symbol;
  symbol.Style = look.symbol < 0 ? css::chart2::SymbolStyle_NONE : css::chart2::SymbolStyle_STANDARD;
  symbol.StandardSymbol = std::max<sal_Int32>(0, look.symbol);
  symbol.Size = {look.size, look.size};
  symbol.BorderColor = look.colour;
  symbol.FillColor = look.hollow ? colourOf(colour::paper) : look.colour;
  series->setPropertyValue("Symbol", Any(symbol));
}

} // namespace

void setSubtitle(const Reference<css::chart::XChartDocument>& chart, const std::string& words) {
  constexpr float points = 9;
  properties(chart)->setPropertyValue("HasSubTitle", Any(!words.empty()));
  if (!words.empty())
    setTitle(chart->getSubTitle(), inLines(words), points);
}

void styleSeries(const Reference<css::uno::XInterface>& chart, const Properties& series,
                 const SeriesLook& look, ChartForm form) {
  if (form == ChartForm::bars)
    styleBar(chart, series, look);
  else
    styleStroke(chart, series, look);
}

void styleChart(const Reference<css::chart::XChartDocument>& chart, const ChartSpec& spec) {
  constexpr float points = 13;
  properties(chart)->setPropertyValue("HasMainTitle", Any(true));
  setTitle(chart->getTitle(), spec.title, points);
  setSubtitle(chart, spec.words);
  properties(chart)->setPropertyValue("HasLegend", Any(spec.legend));
  if (spec.legend) {
    const auto legend = properties(chart->getLegend());
    legend->setPropertyValue("Alignment", Any(css::chart::ChartLegendPosition_BOTTOM));
    legend->setPropertyValue("FillStyle", Any(css::drawing::FillStyle_NONE));
    legend->setPropertyValue("LineStyle", Any(css::drawing::LineStyle_NONE));
  }
  const Reference<css::chart::X3DDisplay> walls(chart->getDiagram(), UNO_QUERY_THROW);
  properties(walls->getWall())->setPropertyValue("FillStyle", Any(css::drawing::FillStyle_NONE));
  styleAxes(chart, spec);
}

} // namespace wetspell::addin
