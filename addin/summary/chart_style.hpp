#pragma once
// Titles, axes and strokes of a chart.

#include "summary/chart.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/chart/XChartDocument.hpp>

#include <string>

namespace wetspell::addin {

/// Titles, legend, axes.
void styleChart(const css::uno::Reference<css::chart::XChartDocument>& chart, const ChartSpec& spec);

/// Strokes, symbols or grounds of a series of that chart.
void styleSeries(const css::uno::Reference<css::uno::XInterface>& chart,
                 const css::uno::Reference<css::beans::XPropertySet>& series, const SeriesLook& look,
                 ChartForm form);

/// The words below the title; long ones in several lines.
void setSubtitle(const css::uno::Reference<css::chart::XChartDocument>& chart, const std::string& words);

} // namespace wetspell::addin
