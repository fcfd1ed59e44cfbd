#include "measure/class_table.hpp"

#include "measure/refuse.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <numeric>
#include <optional>

namespace wetspell {

namespace {

constexpr double open_end = std::numeric_limits<double>::infinity();

std::string with_unit(double value, Unit unit) {
  const std::string_view sign = symbol(unit);
  return sign.empty() ? in_words(value) : fmt::format("{} {}", in_words(value), sign);
}

constexpr double rounding = 1e-9; // relative; what the way from another unit may add

/// The value, or the limit it misses by nothing but rounding on the way from another unit.
double at_limit(const ClassTable& table, double value) {
  for (const ClassRow& row : table.rows) {
    for (const double limit : {row.low, row.high}) {
      if (std::isfinite(limit) && std::abs(value - limit) <= rounding * std::abs(limit)) {
        return limit;
      }
    }
  }
  return value;
}

struct Ends {
  double bottom = open_end;
  double top = -open_end;
};

Ends ends(const ClassTable& table) {
  Ends found;
  for (const ClassRow& row : table.rows) {
    found.bottom = std::min(found.bottom, row.low);
    found.top = std::max(found.top, row.high);
  }
  return found;
}

Problem outside(const ClassTable& table, const std::string& read) {
  const auto [bottom, top] = ends(table);
  const std::string from = std::isfinite(bottom) ? with_unit(bottom, table.unit) : "the lowest value";
  const std::string to = std::isfinite(top) ? with_unit(top, table.unit) : "the highest value";
  return bad_argument(fmt::format("The {} reads {}; no class holds that: the classes run from {} to {}.",
                                  table.name, read, from, to));
}

/// The class that a value lies well inside of, while it lies well outside of all others: nearly every value.
/// What limits, rounding and classes that overlap are about is left to the full search.
std::optional<std::size_t> well_inside(const ClassTable& table, double value) {
  std::optional<std::size_t> found;
  const double margin = 2 * rounding * std::abs(value);
  for (std::size_t i = 0; i < table.rows.size(); ++i) {
    const ClassRow& row = table.rows[i];
    if (value > row.low + margin && value < row.high - margin) {
      if (found) {
        return std::nullopt;
      }
      found = i;
    } else if (!(value < row.low - margin || value > row.high + margin)) {
      return std::nullopt;
    }
  }
  return found;
}

/// The value in the table's unit, or why it has none.
Result<double> in_table(const ClassTable& table, double value, Unit unit) {
  if (!std::isfinite(value)) {
    return not_a_number(fmt::format("The {} is not a finite number.", table.name));
  }
  const double converted = convert(value, unit, table.unit);
  if (std::isnan(converted)) {
    return bad_argument(fmt::format("The {} reads {}; its classes are in another kind of unit: {}.",
                                    table.name, with_unit(value, unit), spec(table.unit).name));
  }
  return at_limit(table, converted);
}

/// The class that holds everything strictly between two values of the table's unit.
Result<std::size_t> class_between(const ClassTable& table, double low, double high, const std::string& read) {
  const auto [bottom, top] = ends(table);
  if (low < bottom || high > top || low >= high) {
    return outside(table, read);
  }
  std::optional<std::size_t> first;
  std::size_t last = 0;
  for (std::size_t i = 0; i < table.rows.size(); ++i) {
    if (std::max(low, table.rows[i].low) < std::min(high, table.rows[i].high)) {
      first = first.value_or(i);
      last = i;
    }
  }
  if (!first) {
    return outside(table, read);
  }
  if (*first != last) {
    return bad_argument(fmt::format("The {} reads {}; that may be \"{}\" as well as \"{}\".", table.name,
                                    read, table.rows[*first].label, table.rows[last].label));
  }
  return *first;
}

Result<std::size_t> class_of_range(const ClassTable& table, const Quantity& quantity) {
  const double high_written = from_si(quantity.si_high, quantity.unit);
  const auto one = in_table(table, quantity.written, quantity.unit);
  if (!one) {
    return one.error();
  }
  const auto other = in_table(table, high_written, quantity.unit);
  if (!other) {
    return other.error();
  }
  const std::string read =
      fmt::format("{} to {}", in_words(quantity.written), with_unit(high_written, quantity.unit));
  const auto [low, high] = std::minmax(one.value(), other.value());
  return low == high ? classify(table, low, table.unit) : class_between(table, low, high, read);
}

/// "over" and "under": everything from the number to that end of the table.
Result<std::size_t> class_of_open(const ClassTable& table, const Quantity& quantity) {
  const auto number = in_table(table, quantity.written, quantity.unit);
  if (!number) {
    return number.error();
  }
  const bool over = quantity.status == Status::over;
  const auto [bottom, top] = ends(table);
  return class_between(
      table, over ? number.value() : bottom, over ? top : number.value(),
      fmt::format("{} {}", over ? "over" : "under", with_unit(quantity.written, quantity.unit)));
}

/// A label without blanks (the no-break space among them) and capitals.
std::string bare(std::string_view label) {
  constexpr std::string_view no_break_space = "\u00a0";
  std::string result;
  while (!label.empty()) {
    if (label.starts_with(no_break_space)) {
      label.remove_prefix(no_break_space.size());
      continue;
    }
    const char c = label.front();
    label.remove_prefix(1);
    if (c >= 'A' && c <= 'Z') {
      result += static_cast<char>(c - 'A' + 'a');
    } else if (c != ' ' && c != '\t' && c != '\n' && c != '\r') {
      result += c;
    }
  }
  return result;
}

} // namespace

const ClassTable& default_depth_classes() {
  // Common practice, no source.
  static const ClassTable table{.name = "depth",
                                .unit = Unit::inch,
                                .side = LimitSide::to_lower,
                                .rows = {{"no standing water", 0, 0},
                                         {"over 0 to 6 in", 0, 6},
                                         {"over 6 to 12 in", 6, 12},
                                         {"over 12 to 24 in", 12, 24},
                                         {"over 24 to 36 in", 24, 36},
                                         {"over 36 to 48 in", 36, 48},
                                         {"over 48 in", 48, open_end}},
                                .not_known = "not known"};
  return table;
}

const ClassTable& default_fill_classes() {
  // Common practice, no source.
  static const ClassTable table{.name = "fill",
                                .unit = Unit::percent,
                                .side = LimitSide::to_higher,
                                .rows = {{"0 to 24 %", 0, 25},
                                         {"25 to 49 %", 25, 50},
                                         {"50 to 74 %", 50, 75},
                                         {"75 to 100 %", 75, 100}},
                                .not_known = "not known"};
  return table;
}

const ClassTable& default_spell_classes() {
  // Judgement, no source: four weeks, two, four and eight months.
  static const ClassTable table{.name = "wet spell",
                                .unit = Unit::none,
                                .side = LimitSide::to_lower,
                                .rows = {{"brief", 0, 28},
                                         {"short", 28, 60},
                                         {"medium", 60, 120},
                                         {"long", 120, 240},
                                         {"lasting", 240, open_end}},
                                .not_known = "not known"};
  return table;
}

Result<std::size_t> classify(const ClassTable& table, double value, Unit unit) {
  if (const auto found = well_inside(table, convert(value, unit, table.unit))) {
    return *found;
  }
  const auto converted = in_table(table, value, unit);
  if (!converted) {
    return converted.error();
  }
  const double v = converted.value();
  const auto [bottom, top] = ends(table);
  std::optional<std::size_t> found;
  for (std::size_t i = 0; i < table.rows.size(); ++i) {
    const auto& [label, low, high] = table.rows[i];
    if (low == high) {
      if (v == low) {
        return i;
      }
      continue;
    }
    const bool on_low = v == low && (table.side == LimitSide::to_higher || low == bottom);
    const bool on_high = v == high && (table.side == LimitSide::to_lower || high == top);
    if ((v > low && v < high) || on_low || on_high) {
      found = i;
    }
  }
  if (!found) {
    return outside(table, with_unit(value, unit));
  }
  return *found;
}

Result<std::size_t> classify(const ClassTable& table, const Quantity& quantity) {
  switch (quantity.status) {
  case Status::blank:
    return not_enough(fmt::format("No {} was typed.", table.name));
  case Status::missing:
    return not_enough(fmt::format("The {} was not measured.", table.name));
  case Status::value:
  case Status::about:
    return classify(table, quantity.written, quantity.unit);
  case Status::over:
  case Status::under:
    return class_of_open(table, quantity);
  case Status::range:
    return class_of_range(table, quantity);
  case Status::paces:
  case Status::steps:
    return bad_argument(fmt::format("The {} is counted in {}; it has no class until that is a length.",
                                    table.name, quantity.status == Status::paces ? "paces" : "steps"));
  case Status::bad:
    break;
  }
  return bad_argument(fmt::format("The {} cannot be read: {}.", table.name, text(quantity.reason)));
}

Result<std::size_t> class_named(const ClassTable& table, std::string_view label) {
  const std::string wanted = bare(label);
  if (wanted.empty()) {
    return not_enough(fmt::format("No {} class was typed.", table.name));
  }
  std::string known;
  for (std::size_t i = 0; i < table.rows.size(); ++i) {
    if (bare(table.rows[i].label) == wanted) {
      return i;
    }
    known += table.rows[i].label + "; ";
  }
  if (bare(table.not_known) == wanted) {
    return table.rows.size();
  }
  return bad_argument(fmt::format("\"{}\" is not one of the {} classes, which are: {}{}.", label, table.name,
                                  known, table.not_known));
}

Result<ClassMiddle> middle(const ClassTable& table, std::size_t index) {
  if (index == table.rows.size()) {
    return not_enough(fmt::format("A {} that is not known has no middle.", table.name));
  }
  if (index > table.rows.size()) {
    return bad_argument(fmt::format("There is no {} class number {}; the table has {}.", table.name,
                                    index + 1, table.rows.size()));
  }
  const auto& [label, low, high] = table.rows[index];
  if (!std::isfinite(low) || !std::isfinite(high)) {
    return not_enough(fmt::format("The class \"{}\" is open at one end and has no middle.", label));
  }
  return ClassMiddle{.si = to_si(std::midpoint(low, high), table.unit),
                     .uncertainty = difference_to_si((high - low) / 2, table.unit) / std::numbers::sqrt3};
}

} // namespace wetspell
