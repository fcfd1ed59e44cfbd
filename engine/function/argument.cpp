#include "function/argument.hpp"

#include "season/choice.hpp"

#include <cmath>

namespace wetspell {

Result<std::optional<Quantity>> number_in(const ParameterSpec& parameter, const Argument& argument,
                                          Unit assume) {
  return number_in(parameter, argument.cells.front(), assume);
}

Result<std::optional<Quantity>> number_in(const ParameterSpec& parameter, const Cell& cell, Unit assume) {
  if (cell.empty()) {
    return std::optional<Quantity>{};
  }
  if (cell.kind() == CellKind::error) {
    return refusal::error_in_cell(parameter, cell);
  }
  const Quantity quantity = read(cell, {.kind = parameter.kind, .assume = assume});
  if (quantity.status == Status::blank || quantity.status == Status::missing) {
    return std::optional<Quantity>{};
  }
  if (!quantity.has_value()) {
    return refusal::not_one_number(parameter, cell, quantity, parameter.kind);
  }
  return std::optional<Quantity>{quantity};
}

Result<std::optional<Quantity>> measure_in(const ParameterSpec& parameter, const Cell& cell, Unit assume) {
  constexpr double first_date = 20000; // 1954-10-03, in any unit more than a pace, a course or a pool
  if (cell.kind() == CellKind::number && cell.number() == 0) {
    return std::optional<Quantity>{};
  }
  if (cell.kind() == CellKind::number && cell.number() >= first_date) {
    return refusal::too_large(parameter, cell, first_date);
  }
  return number_in(parameter, cell, assume);
}

Result<std::optional<double>> plain_number_in(const ParameterSpec& parameter, const Cell& cell) {
  if (cell.empty()) {
    return std::optional<double>{};
  }
  if (cell.kind() == CellKind::error) {
    return refusal::error_in_cell(parameter, cell);
  }
  if (cell.kind() != CellKind::text) {
    return std::optional{cell.number()};
  }
  const Quantity quantity = read(cell, {.kind = Kind::percent, .assume = Unit::one});
  if (quantity.status == Status::missing) {
    return std::optional<double>{};
  }
  if (!quantity.has_value() || quantity.unit_typed) {
    return refusal::no_plain_number(parameter, cell);
  }
  return std::optional{quantity.written};
}

Result<std::optional<double>> day_in(const ParameterSpec& parameter, const Cell& cell) {
  constexpr double earliest = 20000; // 1954-10-03
  constexpr double latest = 110000;  // 2201-02-28
  if (cell.kind() == CellKind::number && cell.number() >= earliest && cell.number() <= latest) {
    return std::optional{std::floor(cell.number())};
  }
  const auto day = number_in(parameter, cell, Unit::none);
  if (!day) {
    return day.error();
  }
  return day.value() ? std::optional{std::floor(day.value()->si)} : std::optional<double>{};
}

Value number_value(double number) {
  constexpr double kept = 1e9; // decimals that stay: far beyond any reading
  constexpr double largest = 1e6;
  return Cell::of_number(std::abs(number) < largest ? std::round(number * kept) / kept : number);
}

bool option_left_out(const Argument& argument) {
  return argument.blank() || (argument.single() && argument.cells.front().kind() == CellKind::number &&
                              argument.cells.front().number() == 0);
}

Unit unit_or(const Argument& argument, Unit standard) {
  if (option_left_out(argument)) {
    return standard;
  }
  return unit_named(argument.cells.front().text()).value_or(standard);
}

Result<CountedAs> counted_as(const ParameterSpec& parameter, const Argument& argument) {
  if (option_left_out(argument)) {
    return CountedAs::paces;
  }
  const Cell& cell = argument.cells.front();
  const Choice choice = choice_from(to_text(cell), counting_way_words());
  if (!choice.chosen()) {
    return refusal::not_a_word(parameter, cell, "paces, steps");
  }
  return choice.is(CountingWay::steps) ? CountedAs::steps : CountedAs::paces;
}

Result<ClassTable> classes_or(const ParameterSpec& parameter, const Argument& argument,
                              const ClassTable& standard) {
  if (option_left_out(argument)) {
    return standard;
  }
  if (argument.single()) {
    return refusal::not_a_table(parameter);
  }
  return class_table_from(argument.cells, argument.columns, standard);
}

Result<Value> class_label(const ParameterSpec& parameter, const Argument& reading, Unit assume,
                          const ClassTable& table) {
  const Cell& cell = reading.cells.front();
  if (cell.empty()) {
    return Value{};
  }
  if (cell.kind() == CellKind::error) {
    return refusal::error_in_cell(parameter, cell);
  }
  const Quantity quantity = read(cell, {.kind = parameter.kind, .assume = assume});
  if (quantity.status == Status::blank) {
    return Value{};
  }
  if (quantity.status == Status::missing) {
    return Value{Cell::of_text(table.not_known)};
  }
  if (quantity.status == Status::bad) {
    return refusal::not_one_number(parameter, cell, quantity, parameter.kind);
  }
  const auto index = classify(table, quantity);
  if (!index) {
    return index.error();
  }
  return Value{Cell::of_text(table.rows[index.value()].label)};
}

} // namespace wetspell
