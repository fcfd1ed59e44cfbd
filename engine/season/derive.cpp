#include "season/derive.hpp"

#include "measure/ellipse.hpp"
#include "quantity/print.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace wetspell {

namespace {

// Half-widths and shares: common practice, no source (see derive.hpp).
constexpr double stick_half_width = 0.0254; // 1 in
constexpr double share_by_eye = 0.25;
constexpr double share_about = 0.1;
constexpr double taping = 0.01;          // standard
constexpr double paced_by_person = 0.05; // standard

double rectangular(double half_width) {
  return half_width / std::numbers::sqrt3;
}

/// In quadrature. std::hypot guards against overflow, which no reading comes near, and takes several times as
/// long.
double both(double one, double other) {
  return std::sqrt(one * one + other * other);
}

/// From the step of the last digit, and from "about".
double reading_uncertainty(const Quantity& typed) {
  const double digit = rectangular(typed.resolution / 2.0);
  return typed.status == Status::about ? both(digit, rectangular(share_about * std::abs(typed.si))) : digit;
}

Measured depth_of(const Visit& visit) {
  const double depth = visit.depth.si;
  if (!visit.depth_tool.is(DepthTool::eye))
    return depth_by_stick(visit.depth);
  return {depth, both(reading_uncertainty(visit.depth), rectangular(share_by_eye * depth))};
}

/// Whether a class can be asked for: something was typed that may have one.
bool may_have_class(const Quantity& q) {
  return q.has_value() || q.status == Status::over || q.status == Status::under || q.status == Status::range;
}

std::optional<std::uint16_t> class_of(const ClassTable& table, const Quantity& typed) {
  if (!may_have_class(typed))
    return std::nullopt;
  const auto found = classify(table, typed);
  return found ? std::optional(static_cast<std::uint16_t>(found.value())) : std::nullopt;
}

bool says_dry(const Visit& visit) {
  return visit.water.is(Water::none) &&
         (visit.depth.status == Status::blank || visit.depth.status == Status::missing);
}

const PaceLength* pace_of(const Season& season, const Visit& visit) {
  const Ref who = pacer(visit);
  if (!who.known() || static_cast<std::size_t>(who.index) >= season.paces.size())
    return nullptr;
  const auto& pace = season.paces[static_cast<std::size_t>(who.index)];
  return pace ? &*pace : nullptr;
}

/// The part of a paced line's uncertainty that the pace itself brings; both lines of a visit share it.
double from_pace(const Season& season, const Visit& visit, const Quantity& typed) {
  const auto line = line_count(season, visit, typed);
  const PaceLength* pace = line ? pace_of(season, visit) : nullptr;
  if (pace == nullptr)
    return 0;
  return line->count * (line->counted == CountedAs::steps ? 0.5 : 1.0) * pace->pace.uncertainty;
}

double correlation(const Season& season, const Visit& visit, const Measured& length, const Measured& width) {
  const double product = length.uncertainty * width.uncertainty;
  if (!(product > 0))
    return 0;
  const double shared = from_pace(season, visit, visit.length) * from_pace(season, visit, visit.width);
  return std::clamp(shared / product, 0.0, 1.0);
}

/// Whether it is worth asking for a length: keeps rows without one from making a refusal in words.
bool may_have_length(const Season& season, const Visit& visit, const Quantity& typed) {
  if (line_count(season, visit, typed))
    return pace_of(season, visit) != nullptr;
  return typed.has_value();
}

std::optional<Measured> optional_line(const Season& season, const Visit& visit, const Quantity& typed) {
  if (!may_have_length(season, visit, typed))
    return std::nullopt;
  const auto line = line_length(season, visit, typed);
  return line ? std::optional(line.value()) : std::nullopt;
}

bool usable(const Quantity& reading) {
  return reading.status == Status::blank || reading.status == Status::missing || reading.has_value();
}

std::optional<MeanTemperature> temperature_of(const Visit& visit) {
  const auto readings = visit.temperatures();
  if (std::none_of(readings.begin(), readings.end(), [](const Quantity& q) { return q.has_value(); }) ||
      !std::all_of(readings.begin(), readings.end(), usable))
    return std::nullopt;
  const auto mean = mean_of_readings(readings);
  if (!mean)
    return std::nullopt;
  const ReadingsMean& found = mean.value();
  return MeanTemperature{found.mean, found.spread, found.uncertainty, found.read};
}

/// To a number of decimals, negative ones before the point; ties to even.
double to_decimals(double value, int decimals) {
  const double scale = std::pow(10.0, std::abs(decimals));
  const double rounded =
      decimals >= 0 ? std::nearbyint(value * scale) / scale : std::nearbyint(value / scale) * scale;
  return std::isfinite(rounded) ? rounded : value;
}

/// How many decimals a value with this uncertainty carries: the place of the uncertainty's second digit (GUM
/// 7.2.6), and never more than messages print of the unit.
int decimals_carried(double uncertainty, Unit unit) {
  const int most = spec(unit).decimals;
  if (!(uncertainty > 0) || !std::isfinite(uncertainty))
    return most;
  return std::min(most, 1 - static_cast<int>(std::floor(std::log10(uncertainty))));
}

Cell number_cell(const std::optional<Measured>& measured, Unit unit) {
  if (!measured)
    return {};
  const int decimals = decimals_carried(difference_from_si(measured->uncertainty, unit), unit);
  return Cell::of_number(to_decimals(from_si(measured->value, unit), decimals));
}

Cell class_cell(std::optional<std::uint16_t> index, const ClassTable& table) {
  return index && *index < table.rows.size() ? Cell::of_text(table.rows[*index].label) : Cell{};
}

} // namespace

Ref pacer(const Visit& visit) {
  return visit.paced_by.typed() ? visit.paced_by : visit.person;
}

std::optional<LineCount> line_count(const Season& season, const Visit& visit, const Quantity& typed) {
  if (typed.status == Status::paces)
    return LineCount{typed.written, CountedAs::paces};
  if (typed.status == Status::steps)
    return LineCount{typed.written, CountedAs::steps};
  if (!typed.has_value() || typed.unit_typed || !visit.size_tool.is(SizeTool::paces))
    return std::nullopt;
  const Ref who = pacer(visit);
  const bool steps =
      who.known() && season.people[static_cast<std::size_t>(who.index)].counts.is(CountingWay::steps);
  return LineCount{typed.written, steps ? CountedAs::steps : CountedAs::paces};
}

Result<Measured> line_length(const Season& season, const Visit& visit, const Quantity& typed) {
  if (const auto line = line_count(season, visit, typed)) {
    const Ref who = pacer(visit);
    const PaceLength* pace = pace_of(season, visit);
    if (pace != nullptr)
      return paced_length(line->count, line->counted, pace->pace);
    if (!who.known())
      return Problem{ProblemKind::not_enough,
                     fmt::format("{} {}: it is not known whose they are.", plain(line->count),
                                 line->counted == CountedAs::steps ? "steps" : "paces")};
    const Person& person = season.people[static_cast<std::size_t>(who.index)];
    return Problem{
        ProblemKind::not_enough,
        fmt::format("{} {}: how long those of {} are is not known, because the table of people has "
                    "no runs over a taped course for them.",
                    plain(line->count), line->counted == CountedAs::steps ? "steps" : "paces", person.code)};
  }
  switch (typed.status) {
  case Status::value:
  case Status::about:
    break;
  case Status::blank:
    return Problem{ProblemKind::not_enough, "Nothing was typed."};
  case Status::missing:
    return Problem{ProblemKind::not_enough, "It was not measured."};
  case Status::over:
  case Status::under:
    return Problem{ProblemKind::bad_argument, "One end is open; a length is needed."};
  case Status::range:
    return Problem{ProblemKind::bad_argument, "Two lengths stand there; one is needed."};
  case Status::paces:
  case Status::steps:
  case Status::bad:
    return Problem{ProblemKind::bad_argument, fmt::format("It cannot be read: {}.", text(typed.reason))};
  }
  const double share = visit.size_tool.is(SizeTool::eye)     ? rectangular(share_by_eye)
                       : visit.size_tool.is(SizeTool::paces) ? paced_by_person
                                                             : taping;
  return Measured{typed.si, both(reading_uncertainty(typed), share * typed.si)};
}

DerivedVisit derive(const Season& season, const Visit& visit) {
  DerivedVisit derived;
  derived.temperature = temperature_of(visit);
  if (visit.depth.has_value()) {
    derived.depth = depth_of(visit);
  } else if (says_dry(visit)) {
    derived.depth = Measured{};
    Quantity nothing;
    nothing.status = Status::value;
    nothing.written = nothing.si = nothing.si_high = 0;
    nothing.unit = season.depth_classes.unit;
    derived.depth_class = class_of(season.depth_classes, nothing);
  }
  if (!derived.depth_class)
    derived.depth_class = class_of(season.depth_classes, visit.depth);
  derived.fill_class = class_of(season.fill_classes, visit.fill);
  derived.length = optional_line(season, visit, visit.length);
  derived.width = optional_line(season, visit, visit.width);
  if (derived.length && derived.width) {
    derived.correlation = correlation(season, visit, *derived.length, *derived.width);
    if (const auto area = ellipse_area(*derived.length, *derived.width, derived.correlation))
      derived.area = area.value();
  }
  return derived;
}

Measured depth_by_stick(const Quantity& typed) {
  return {typed.si, both(reading_uncertainty(typed), rectangular(stick_half_width))};
}

std::optional<Measured> deepest_ever(const Pool& pool) {
  return pool.deepest.has_value() ? std::optional(depth_by_stick(pool.deepest)) : std::nullopt;
}

std::optional<Measured> edge_of(const DerivedVisit& derived) {
  if (!derived.length || !derived.width)
    return std::nullopt;
  const auto edge = ellipse_edge(*derived.length, *derived.width, derived.correlation);
  return edge ? std::optional(edge.value()) : std::nullopt;
}

Cell derived_cell(const Season& season, const DerivedVisit& derived, Field field) {
  const Unit unit = season.unit(field);
  switch (field) {
  case Field::visit_mean:
    return derived.temperature
               ? Cell::of_number(to_decimals(from_si(derived.temperature->mean, unit), spec(unit).decimals))
               : Cell{};
  case Field::visit_spread:
    return derived.temperature && derived.temperature->read > 1
               ? Cell::of_number(
                     to_decimals(difference_from_si(derived.temperature->spread, unit), spec(unit).decimals))
               : Cell{};
  case Field::visit_depth_read:
    return number_cell(derived.depth, unit);
  case Field::visit_depth_class_read:
    return class_cell(derived.depth_class, season.depth_classes);
  case Field::visit_fill_class_read:
    return class_cell(derived.fill_class, season.fill_classes);
  case Field::visit_length_read:
    return number_cell(derived.length, unit);
  case Field::visit_width_read:
    return number_cell(derived.width, unit);
  case Field::visit_area:
    return number_cell(derived.area, unit);
  case Field::visit_edge:
    return number_cell(edge_of(derived), unit);
  default:
    return {};
  }
}

} // namespace wetspell
