#include "estimate/figure.hpp"

#include "estimate/summary.hpp"
#include "quantity/print.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

namespace wetspell {

namespace {

/// The workbook's unit for what has one of its own; none for days, counts, words.
Unit unit_of(Figured figured, const Settings& settings) {
  switch (figured) {
  case Figured::temperature:
  case Figured::temperature_apart:
    return settings.temperature;
  case Figured::depth:
  case Figured::depth_a_day:
    return settings.depth;
  case Figured::length:
    return settings.length;
  case Figured::area:
    return settings.area;
  case Figured::volume:
    return settings.unit_of(Kind::volume);
  case Figured::share:
    return Unit::percent;
  case Figured::count:
  case Figured::number:
  case Figured::days:
  case Figured::date:
  case Figured::words:
    break;
  }
  return Unit::none;
}

/// Three significant digits, whole numbers in full, thousands apart.
std::string three_digits(double value) {
  if (value == 0 || !std::isfinite(value))
    return value == 0 ? "0" : "not known";
  const int decimals = std::clamp(2 - static_cast<int>(std::floor(std::log10(std::abs(value)))), 0, 6);
  std::string text = plain(value, decimals);
  const std::size_t point = std::min(text.find('.'), text.size());
  const std::size_t first = text.front() == '-' ? 1 : 0;
  for (std::size_t at = point; at > first + 3;)
    text.insert(at -= 3, ",");
  return text;
}

std::string number_alone(double si, Figured figured, const Settings& settings) {
  if (figured == Figured::date)
    return print_date(std::round(si));
  return three_digits(shown(si, figured, settings));
}

std::string with_unit(std::string number, Figured figured, const Settings& settings) {
  const std::string unit = figured == Figured::date ? std::string() : shown_unit(figured, settings);
  if (unit.empty())
    return number;
  return number + (unit == "%" ? "" : " ") + unit;
}

} // namespace

std::string full_name(const Figure& figure) {
  return figure.of.empty() ? std::string(figure.spec->name)
                           : fmt::format("{}: {}", figure.spec->name, figure.of);
}

std::string full_title(const Figure& figure) {
  return figure.of.empty() ? std::string(figure.spec->title)
                           : fmt::format("{}: {}", figure.spec->title, figure.of);
}

std::string shown_unit(Figured figured, const Settings& settings) {
  if (figured == Figured::days)
    return "days";
  const std::string sign(symbol(unit_of(figured, settings)));
  return figured == Figured::depth_a_day ? sign + " a day" : sign;
}

double shown(double si, Figured figured, const Settings& settings) {
  const Unit unit = unit_of(figured, settings);
  if (unit == Unit::none)
    return si;
  const bool difference = figured == Figured::temperature_apart || figured == Figured::depth_a_day;
  return difference ? difference_from_si(si, unit) : from_si(si, unit);
}

int shown_decimals(Figured figured, const Settings& settings) {
  if (figured == Figured::number)
    return 2;
  const Unit unit = unit_of(figured, settings);
  if (unit == Unit::none)
    return 0;
  return spec(unit).decimals + (figured == Figured::depth_a_day ? 1 : 0);
}

std::string in_words(double si, Figured figured, const Settings& settings) {
  return with_unit(number_alone(si, figured, settings), figured, settings);
}

std::string in_words(const Figure& figure, const Settings& settings) {
  const Figured figured = figure.spec->figured;
  std::string text = figured == Figured::words ? figure.words : std::string();
  if (figure.value)
    text = in_words(*figure.value, figured, settings);
  std::string behind;
  if (figure.low && figure.high)
    behind = fmt::format("{} to {}", number_alone(*figure.low, figured, settings),
                         number_alone(*figure.high, figured, settings));
  else if (figure.low)
    behind = fmt::format("{} or {}", number_alone(*figure.low, figured, settings),
                         figured == Figured::date ? "later" : "more");
  else if (figure.high)
    behind = fmt::format("{} {}", figured == Figured::date ? "by" : "at most",
                         number_alone(*figure.high, figured, settings));
  if (text.empty() && !behind.empty())
    text = with_unit(std::exchange(behind, {}), figured, settings);
  if (text.empty())
    return figure.note;
  if (figured == Figured::count && behind.empty() && figure.value == static_cast<double>(figure.n))
    return text; // a number of things that were all counted
  behind += fmt::format("{}n {}", behind.empty() ? "" : "; ", figure.n);
  return fmt::format("{} ({})", text, behind);
}

std::vector<const FigureSpec*> figure_catalogue() {
  std::vector<const FigureSpec*> all;
  for (const SummaryTopic& topic : topics())
    for (const FigureSpec& each : topic.figures)
      all.push_back(&each);
  return all;
}

} // namespace wetspell
