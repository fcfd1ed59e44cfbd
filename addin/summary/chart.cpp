#include "summary/chart.hpp"

#include "base/text.hpp"
#include "sheet/strip.hpp"
#include "summary/chart_style.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/chart/XChartDocument.hpp>
#include <com/sun/star/chart2/XChartDocument.hpp>
#include <com/sun/star/chart2/XChartTypeContainer.hpp>
#include <com/sun/star/chart2/XCoordinateSystemContainer.hpp>
#include <com/sun/star/chart2/XDataSeriesContainer.hpp>
#include <com/sun/star/chart2/data/XDataProvider.hpp>
#include <com/sun/star/chart2/data/XDataReceiver.hpp>
#include <com/sun/star/chart2/data/XDataSink.hpp>
#include <com/sun/star/chart2/data/XLabeledDataSequence.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/document/XEmbeddedObjectSupplier.hpp>
#include <com/sun/star/document/XUndoManagerSupplier.hpp>
#include <com/sun/star/drawing/XDrawPagesSupplier.hpp>
#include <com/sun/star/drawing/XShape.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/lang/XMultiServiceFactory.hpp>
#include <com/sun/star/table/XTableChartsSupplier.hpp>

#include <algorithm>
#include <set>

namespace wetspell::addin {

using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;
namespace chart2 = css::chart2;

namespace {

using Labeled = Reference<chart2::data::XLabeledDataSequence>;

Reference<css::drawing::XDrawPage> pageOf(const Shown& on) {
  const Reference<css::drawing::XDrawPagesSupplier> pages(on.document, UNO_QUERY_THROW);
  return {pages->getDrawPages()->getByIndex(addressOf(on.sheet).Sheet), UNO_QUERY_THROW};
}

Reference<css::drawing::XShape> shapeNamed(const Shown& on, const std::string& name) {
  const auto page = pageOf(on);
  for (sal_Int32 i = 0; i < page->getCount(); ++i) {
    const Reference<css::beans::XPropertySet> shape(page->getByIndex(i), UNO_QUERY);
    if (shape.is() && shape->getPropertyValue("Name") == Any(toOffice(name)))
      return {shape, UNO_QUERY_THROW};
  }
  return {};
}

Reference<chart2::XChartDocument> chartIn(const Reference<css::drawing::XShape>& shape) {
  Reference<css::frame::XModel> model;
  Reference<css::beans::XPropertySet>(shape, UNO_QUERY_THROW)->getPropertyValue("Model") >>= model;
  return {model, UNO_QUERY};
}

std::set<std::string> rangesOf(const ChartSpec& spec) {
  std::set<std::string> ranges;
  for (const NumbersSeries& series : spec.series)
    for (const std::string* range : {&series.label, &series.across, &series.up, &series.below, &series.above})
      if (!range->empty())
        ranges.insert(*range);
  return ranges;
}

bool hasRanges(const Reference<chart2::XChartDocument>& chart, const ChartSpec& spec) {
  const Reference<chart2::data::XDataReceiver> receiver(chart, UNO_QUERY);
  if (!receiver.is())
    return false;
  std::set<std::string> used;
  for (const rtl::OUString& range : receiver->getUsedRangeRepresentations())
    used.insert(fromOffice(range));
  return used == rangesOf(spec);
}

/// Makes the parts of a chart that have no other maker.
class Builder {
public:
  Builder(const Shown& on, const Reference<chart2::XChartDocument>& chart)
      : context_(on.context), provider_(chart->getDataProvider()) {}

  template <class Interface> Reference<Interface> make(const char* service) const {
    return {context_->getServiceManager()->createInstanceWithContext(toOffice(service), context_),
            UNO_QUERY_THROW};
  }

  [[nodiscard]] Labeled labeled(const std::string& values, const char* role,
                                const std::string& label = {}) const {
    auto sequence = make<chart2::data::XLabeledDataSequence>("com.sun.star.chart2.data.LabeledDataSequence");
    const auto data = provider_->createDataSequenceByRangeRepresentation(toOffice(values));
    Reference<css::beans::XPropertySet>(data, UNO_QUERY_THROW)
        ->setPropertyValue("Role", Any(rtl::OUString::createFromAscii(role)));
    sequence->setValues(data);
    if (!label.empty())
      sequence->setLabel(provider_->createDataSequenceByRangeRepresentation(toOffice(label)));
    return sequence;
  }

private:
  Reference<css::uno::XComponentContext> context_;
  Reference<chart2::data::XDataProvider> provider_;
};

void addInterval(const Builder& builder, const Reference<css::beans::XPropertySet>& series,
                 const NumbersSeries& numbers) {
  constexpr sal_Int32 fromData = 7; // com.sun.star.chart.ErrorBarStyle.FROM_DATA
  const auto bars = builder.make<css::beans::XPropertySet>("com.sun.star.chart2.ErrorBar");
  bars->setPropertyValue("ErrorBarStyle", Any(fromData));
  bars->setPropertyValue("ShowPositiveError", Any(true));
  bars->setPropertyValue("ShowNegativeError", Any(true));
  const Labeled arms[] = {builder.labeled(numbers.above, "error-bars-y-positive"),
                          builder.labeled(numbers.below, "error-bars-y-negative")};
  Reference<chart2::data::XDataSink>(bars, UNO_QUERY_THROW)->setData({arms, 2});
  series->setPropertyValue("ErrorBarY", Any(bars));
}

/// Gives the chart's one type its series; what it drew before goes.
void giveSeries(const Builder& builder, const Reference<chart2::XChartDocument>& chart,
                const ChartSpec& spec) {
  const Reference<chart2::XCoordinateSystemContainer> systems(chart->getFirstDiagram(), UNO_QUERY_THROW);
  const auto system = systems->getCoordinateSystems()[0];
  const auto type = Reference<chart2::XChartTypeContainer>(system, UNO_QUERY_THROW)->getChartTypes()[0];
  const bool named = spec.form != ChartForm::lines;
  std::vector<Reference<chart2::XDataSeries>> all;
  for (const NumbersSeries& numbers : spec.series) {
    auto series = builder.make<chart2::XDataSeries>("com.sun.star.chart2.DataSeries");
    std::vector<Labeled> data{builder.labeled(numbers.up, "values-y", numbers.label)};
    if (!named)
      data.push_back(builder.labeled(numbers.across, "values-x"));
    Reference<chart2::data::XDataSink>(series, UNO_QUERY_THROW)
        ->setData({data.data(), static_cast<sal_Int32>(data.size())});
    if (!numbers.below.empty())
      addInterval(builder, Reference<css::beans::XPropertySet>(series, UNO_QUERY_THROW), numbers);
    styleSeries(chart, Reference<css::beans::XPropertySet>(series, UNO_QUERY_THROW),
                spec.looks[std::min(all.size(), spec.looks.size() - 1)], spec.form);
    all.push_back(series);
  }
  Reference<chart2::XDataSeriesContainer>(type, UNO_QUERY_THROW)
      ->setDataSeries({all.data(), static_cast<sal_Int32>(all.size())});
  if (!named)
    return;
  const auto axis = system->getAxisByDimension(0, 0);
  chart2::ScaleData scale = axis->getScaleData();
  scale.Categories = builder.labeled(spec.series.front().across, "categories");
  axis->setScaleData(scale);
}

const char* diagramOf(ChartForm form) {
  switch (form) {
  case ChartForm::lines:
    return "com.sun.star.chart.XYDiagram";
  case ChartForm::dots:
    return "com.sun.star.chart.LineDiagram";
  case ChartForm::bars:
    break;
  }
  return "com.sun.star.chart.BarDiagram";
}

using Charts = Reference<css::table::XTableCharts>;

/// A new chart, by the name that the office gives it: one that no chart of the document has, taken away ones
/// included, of which the office tells nobody.
rtl::OUString addChart(const Charts& charts, const css::awt::Rectangle& place,
                       const css::table::CellRangeAddress& cells, const std::string& wanted) {
  constexpr sal_Int32 most = 10000;
  for (sal_Int32 i = 1;; ++i)
    try {
      const rtl::OUString name = toOffice(wanted + " " + std::to_string(i));
      charts->addNewByName(name, place, {&cells, 1}, false, false);
      return name;
    } catch (const css::uno::RuntimeException&) {
      if (i == most)
        throw;
    }
}

/// A new shape's name needs no undo of its own, and the office (7.4) cannot undo one.
void nameUnrecorded(const Shown& on, const Reference<css::beans::XPropertySet>& shape,
                    const std::string& name) {
  const auto undo =
      Reference<css::document::XUndoManagerSupplier>(on.document, UNO_QUERY_THROW)->getUndoManager();
  undo->lock();
  shape->setPropertyValue("Name", Any(toOffice(name)));
  undo->unlock();
}

void drawNew(const Shown& on, const css::awt::Rectangle& place, const ChartSpec& spec) {
  const auto charts = Reference<css::table::XTableChartsSupplier>(on.sheet, UNO_QUERY_THROW)->getCharts();
  const auto page = pageOf(on);
  // Some cells must be given, or the chart gets no provider of data; its series come below.
  const auto any = addressOf(on.sheet->getCellRangeByPosition(0, 0, 0, 1));
  const rtl::OUString inner = addChart(charts, place, any, spec.name);
  const Reference<css::beans::XPropertySet> shape(page->getByIndex(page->getCount() - 1), UNO_QUERY_THROW);
  nameUnrecorded(on, shape, spec.name);
  const Reference<css::document::XEmbeddedObjectSupplier> object(
      Reference<css::container::XNameAccess>(charts, UNO_QUERY_THROW)->getByName(inner), UNO_QUERY_THROW);
  const Reference<chart2::XChartDocument> chart(object->getEmbeddedObject(), UNO_QUERY_THROW);
  const Reference<css::frame::XModel> model(chart, UNO_QUERY_THROW);
  model->lockControllers();
  const Reference<css::chart::XChartDocument> look(chart, UNO_QUERY_THROW);
  look->setDiagram(
      Reference<css::chart::XDiagram>(Reference<css::lang::XMultiServiceFactory>(chart, UNO_QUERY_THROW)
                                          ->createInstance(toOffice(diagramOf(spec.form))),
                                      UNO_QUERY_THROW));
  giveSeries(Builder(on, chart), chart, spec);
  styleChart(look, spec);
  model->unlockControllers();
}

} // namespace

std::optional<css::awt::Rectangle> chartPlace(const Shown& on, const std::string& name) {
  const auto shape = shapeNamed(on, name);
  if (!shape.is())
    return std::nullopt;
  const auto position = shape->getPosition();
  const auto size = shape->getSize();
  return css::awt::Rectangle(position.X, position.Y, size.Width, size.Height);
}

void dropChart(const Shown& on, const std::string& name) {
  const auto shape = shapeNamed(on, name);
  if (shape.is())
    pageOf(on)->remove(shape);
}

void putChart(const Shown& on, const css::awt::Rectangle& place, const ChartSpec& spec) {
  const auto before = chartPlace(on, spec.name);
  if (before) {
    const auto chart = chartIn(shapeNamed(on, spec.name));
    if (chart.is() && hasRanges(chart, spec)) {
      setSubtitle(Reference<css::chart::XChartDocument>(chart, UNO_QUERY_THROW), spec.words);
      return;
    }
    dropChart(on, spec.name);
  }
  drawNew(on, before.value_or(place), spec);
}

} // namespace wetspell::addin
