// Walks along folded text: digits, numbers and words.
#pragma once

#include "quantity/reason.hpp"

#include <cstddef>
#include <optional>
#include <string_view>

namespace wetspell {

constexpr bool is_digit(char c) {
  return c >= '0' && c <= '9';
}
constexpr bool is_letter(char c) {
  return c >= 'a' && c <= 'z';
}

/// A place in folded text. The text ends in a zero byte, so looking one character ahead is always safe.
struct Cursor {
  const char* at;

  [[nodiscard]] char peek() const { return *at; }
  [[nodiscard]] char next() const { return *at == '\0' ? '\0' : at[1]; }
  [[nodiscard]] bool done() const { return *at == '\0'; }
  bool skip(char c) {
    const bool here = *at == c && c != '\0';
    at += here ? 1 : 0;
    return here;
  }
  bool skip(std::string_view text);
  void skip_space() {
    while (*at == ' ')
      ++at;
  }
  /// The letters (and apostrophes inside words) from here on, without moving.
  [[nodiscard]] std::string_view word() const;
  /// Up to `count` words parted by single spaces or hyphens, without moving; empty when there are fewer.
  [[nodiscard]] std::string_view words(std::size_t count) const;
};

/// A number without a sign, as digits, with its decimals.
struct Number {
  double value = 0;
  double step = 1;   ///< the step of the last digit
  int digits = 0;    ///< digits before the decimal sign, leading zeros counted
  bool whole = true; ///< no decimal sign
  Reason trouble{};  ///< why this is no number
};

/// Whether a number starts here: a digit, or a decimal sign and a digit.
bool number_ahead(Cursor cursor);
/// Reads the number that starts here: 25, 25.5, 25,5, .5, 1,234.5, 1.5e-3.
Number read_number(Cursor& cursor);
/// A text of at most fifteen figures and one point between them, the most frequent of all: read without ado.
std::optional<Number> figures_only(std::string_view text);
/// Reason::letter_o or letter_l when letters stand here that may be meant for digits ("1O", "l2"), else none.
/// `after_digit`: whether a digit stands right before.
Reason letters_for_digits(Cursor cursor, bool after_digit);

} // namespace wetspell
