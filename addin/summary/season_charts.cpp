#include "summary/season_charts.hpp"

#include "estimate/figure.hpp"
#include "summary/look.hpp"
#include "templates/look.hpp"

#include <fmt/format.h>

#include <array>

namespace wetspell::addin {

namespace {

namespace colour = workbook::colour;

// The office's numbers of symbols.
constexpr sal_Int32 no_symbol = -3, square = 0, diamond = 1, triangle = 3, circle = 8;
constexpr sal_Int32 hair = 25, thin = 40, thick = 80; // 1/100 mm
constexpr std::size_t told_apart = 8; // lines with a look of their own; more of them look alike

std::string depthUnit(const Settings& settings) {
  return fmt::format("Depth ({})", shown_unit(Figured::depth, settings));
}

ChartSpec depthChart(const Numbers& numbers, const Settings& settings) {
  ChartSpec spec;
  spec.name = "Wetspell depths";
  spec.title = "Depth over the season";
  spec.words = numbers.depth_words;
  spec.across = "Day";
  spec.up = depthUnit(settings);
  spec.series = numbers.depths;
  spec.first_day = numbers.first_day;
  spec.last_day = numbers.last_day;
  if (spec.series.size() > told_apart) {
    spec.words += " To read a line's pool, double-click the chart and point at the line.";
    spec.looks = {{colourOf(colour::water), hair, false, no_symbol, false}};
    return spec;
  }
  spec.legend = true;
  constexpr std::array symbols{circle, square, diamond, triangle};
  for (std::size_t i = 0; i < spec.series.size(); ++i)
    spec.looks.push_back({colourOf(i < symbols.size() ? colour::deep_water : colour::quiet_ink), thin,
                          i >= symbols.size(), symbols[i % symbols.size()], false});
  return spec;
}

ChartSpec sizeChart(const Numbers& numbers, const Settings& settings) {
  ChartSpec spec;
  spec.name = "Wetspell sizes";
  spec.form = ChartForm::dots;
  spec.title = numbers.size_title;
  spec.words = numbers.size_words;
  spec.across = "Pool, from the smallest to the largest";
  spec.up = fmt::format("Area ({})", shown_unit(Figured::area, settings));
  spec.series = numbers.sizes;
  spec.looks = {{colourOf(colour::deep_water), 0, false, circle, false}};
  return spec;
}

ChartSpec wetChart(const Numbers& numbers) {
  ChartSpec spec;
  spec.name = "Wetspell still wet";
  spec.title = "Pools that still hold water";
  spec.words = numbers.wet_words;
  spec.across = "Day";
  spec.up = "Share of pools (%)";
  spec.series = numbers.wet;
  const SeriesLook bound{colourOf(colour::quiet_ink), thin, true, no_symbol, false};
  spec.looks = {{colourOf(colour::deep_water), thick, false, no_symbol, false}, bound};
  spec.legend = true;
  constexpr double all = 100;
  spec.top = all;
  spec.first_day = numbers.first_wet_day;
  spec.last_day = numbers.last_wet_day;
  return spec;
}

ChartSpec speciesChart(const Numbers& numbers) {
  ChartSpec spec;
  spec.name = "Wetspell species";
  spec.form = ChartForm::bars;
  spec.title = "Highest counts by pool";
  spec.words = numbers.species_words;
  spec.across = "Pool";
  spec.up = "Highest count";
  spec.series = numbers.species;
  const std::array grounds{colour::deep_water, colour::lantern_bright, colour::quiet_ink, colour::mist,
                           colour::ink};
  for (std::size_t i = 0; i < spec.series.size(); ++i)
    spec.looks.push_back({colourOf(grounds[i % grounds.size()]), 0, false, no_symbol, i >= grounds.size()});
  spec.legend = true;
  return spec;
}

} // namespace

std::vector<css::awt::Rectangle> putSeasonCharts(const Shown& on, sal_Int32 left, sal_Int32 top,
                                                 const Numbers& numbers, const Settings& settings) {
  constexpr sal_Int32 width = 25000, tall = 15000, low = 12000, gap = 600;
  std::vector<css::awt::Rectangle> places;
  for (const ChartSpec& spec : {depthChart(numbers, settings), sizeChart(numbers, settings),
                                wetChart(numbers), speciesChart(numbers)}) {
    if (spec.series.empty()) {
      dropChart(on, spec.name);
      continue;
    }
    const sal_Int32 height = places.empty() ? tall : low;
    putChart(on, {left, top, width, height}, spec);
    places.push_back(*chartPlace(on, spec.name));
    top += height + gap;
  }
  return places;
}

void putPoolChart(const Shown& on, const css::awt::Rectangle& place, const PoolDepths& depths,
                  const Settings& settings) {
  ChartSpec spec;
  spec.name = "Wetspell depth of the pool";
  spec.title = "Depth over the season";
  spec.across = "Day";
  spec.up = depthUnit(settings);
  spec.series = {depths.depth, depths.dry};
  spec.looks = {{colourOf(colour::deep_water), thick, false, circle, false},
                {colourOf(colour::amber), 0, false, diamond, false, true, 400}};
  spec.legend = true;
  spec.first_day = depths.first_day;
  spec.last_day = depths.last_day;
  putChart(on, place, spec);
}

} // namespace wetspell::addin
