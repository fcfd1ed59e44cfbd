// A sheet just large enough for the examples of the catalogue: cells by address, formulas worked out when
// asked.
#pragma once

#include "function/formula.hpp"

#include <charconv>
#include <cmath>
#include <map>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace wetspell::test {

class ExampleSheet : public CellSource {
public:
  ExampleSheet() = default;
  explicit ExampleSheet(const Example& example);

  /// As somebody would type it: a number where the whole text is one, "=..." a formula, otherwise text.
  void type(std::string_view address, std::string_view content);
  void put(std::string_view address, Cell cell);

  [[nodiscard]] std::optional<Block> find(std::string_view reference) const override;

  /// What the formula (with or without "=") of one call gives.
  [[nodiscard]] Result<Value> evaluate(std::string_view formula) const;

  /// The result as the catalogue writes it: cells joined by " | ", rows by " // ", a refusal as its error
  /// value.
  [[nodiscard]] std::string shown(std::string_view formula) const;

private:
  using Address = std::pair<std::size_t, std::size_t>; ///< row, column, from 0

  std::map<Address, Cell> cells_;
  std::map<Address, std::string> formulas_;
};

inline std::string shown(const Result<Value>& value);

/// Whether a result is the one the catalogue states: text for text, numbers to the decimals stated.
inline bool agrees(std::string_view stated, std::string_view found);

namespace detail {

inline std::optional<double> whole_number(std::string_view text) {
  double number = 0;
  const char* end = text.data() + text.size();
  const auto [stop, error] = std::from_chars(text.data(), end, number);
  return error == std::errc{} && stop == end ? std::optional(number) : std::nullopt;
}

inline std::optional<std::pair<std::size_t, std::size_t>> address(std::string_view text) {
  if (text.size() < 2 || text[0] < 'A' || text[0] > 'Z') {
    return std::nullopt;
  }
  const auto row = whole_number(text.substr(1));
  if (!row) {
    return std::nullopt;
  }
  return std::pair{static_cast<std::size_t>(*row) - 1, static_cast<std::size_t>(text[0] - 'A')};
}

inline std::vector<std::string_view> split(std::string_view text, std::string_view by) {
  std::vector<std::string_view> parts;
  for (std::size_t at; (at = text.find(by)) != std::string_view::npos; text.remove_prefix(at + by.size())) {
    parts.push_back(text.substr(0, at));
  }
  parts.push_back(text);
  return parts;
}

inline bool cell_agrees(std::string_view stated, std::string_view found) {
  const auto one = whole_number(stated);
  const auto other = whole_number(found);
  if (!one || !other) {
    return stated == found;
  }
  const std::size_t point = stated.find('.');
  const auto decimals = point == std::string_view::npos ? 0 : static_cast<int>(stated.size() - point - 1);
  // Whole numbers are stated in full; decimals are rounded.
  const double slack = decimals == 0 ? 1e-9 : 0.5000001 * std::pow(10.0, -decimals);
  return std::abs(*one - *other) <= slack;
}

} // namespace detail

inline ExampleSheet::ExampleSheet(const Example& example) {
  for (const ExampleCell& cell : example.cells) {
    type(cell.address, cell.content);
  }
}

inline void ExampleSheet::type(std::string_view where, std::string_view content) {
  if (content.starts_with("=")) {
    formulas_[detail::address(where).value()] = content;
  } else if (const auto number = detail::whole_number(content)) {
    put(where, Cell::of_number(*number));
  } else {
    put(where, Cell::of_text(std::string(content)));
  }
}

inline void ExampleSheet::put(std::string_view where, Cell cell) {
  cells_[detail::address(where).value()] = std::move(cell);
}

inline std::optional<CellSource::Block> ExampleSheet::find(std::string_view reference) const {
  const std::size_t colon = reference.find(':');
  const auto first = detail::address(reference.substr(0, colon));
  const auto last = colon == std::string_view::npos ? first : detail::address(reference.substr(colon + 1));
  if (!first || !last) {
    return std::nullopt;
  }
  Block block{.rows = last->first - first->first + 1,
              .columns = last->second - first->second + 1,
              .cells = {},
              .formula = {}};
  for (std::size_t row = first->first; row <= last->first; ++row) {
    for (std::size_t column = first->second; column <= last->second; ++column) {
      const auto formula = formulas_.find({row, column});
      if (formula != formulas_.end()) {
        block.formula = formula->second;
        if (calls_in(formula->second).empty()) { // a function of the office's own: nothing here works it out
          block.cells.push_back(Cell::of_error("#NAME?"));
          continue;
        }
        const auto value = evaluate(formula->second);
        block.cells.push_back(value ? value.value().cells.front()
                                    : Cell::of_error(std::string(error_value(value.error().kind))));
        continue;
      }
      const auto cell = cells_.find({row, column});
      block.cells.push_back(cell == cells_.end() ? Cell{} : cell->second);
    }
  }
  return block;
}

inline Result<Value> ExampleSheet::evaluate(std::string_view formula) const {
  const auto calls = calls_in(formula);
  if (calls.empty()) {
    throw std::invalid_argument("no call in " + std::string(formula));
  }
  const auto arguments = arguments_of(calls.front(), *this);
  if (!arguments) {
    return arguments.error().problem;
  }
  return run(*calls.front().function, arguments.value());
}

inline std::string ExampleSheet::shown(std::string_view formula) const {
  return test::shown(evaluate(formula));
}

inline std::string shown(const Result<Value>& value) {
  if (!value) {
    return std::string(error_value(value.error().kind));
  }
  std::string text;
  for (std::size_t i = 0; i < value.value().cells.size(); ++i) {
    if (i > 0) {
      text += i % value.value().columns == 0 ? " // " : " | ";
    }
    text += to_text(value.value().cells[i]);
  }
  return text;
}

inline bool agrees(std::string_view stated, std::string_view found) {
  const auto stated_rows = detail::split(stated, " // ");
  const auto found_rows = detail::split(found, " // ");
  if (stated_rows.size() != found_rows.size()) {
    return false;
  }
  for (std::size_t row = 0; row < stated_rows.size(); ++row) {
    const auto one = detail::split(stated_rows[row], " | ");
    const auto other = detail::split(found_rows[row], " | ");
    if (one.size() != other.size()) {
      return false;
    }
    for (std::size_t i = 0; i < one.size(); ++i) {
      if (!detail::cell_agrees(one[i], other[i])) {
        return false;
      }
    }
  }
  return true;
}

} // namespace wetspell::test
