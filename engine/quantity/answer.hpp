// What the reader understood, field by field, for people who want to know how their sheet will be read.
#pragma once

#include "quantity/quantity.hpp"

#include <string>
#include <string_view>
#include <variant>

namespace wetspell {

/// A number, an ISO 8601 date or time, or nothing.
using AnswerValue = std::variant<std::monostate, double, std::string>;

struct Answer {
  std::string text;        ///< as it was typed
  std::string_view status; ///< value, about, over, under, range, missing, paces, steps or bad
  AnswerValue si;      ///< °C, m, m², a fraction of one, "2026-03-21", "09:05"; the limit of over and under
  AnswerValue si_high; ///< the upper end of a range, nothing otherwise
  AnswerValue count;   ///< the number of paces or steps
  std::string_view unit; ///< as typed or assumed: "in", "°C"; empty where a quantity has none
  std::string reason;    ///< why it is bad or missing, in words; empty otherwise
};

/// The answer to a text that was read as `quantity`. A blank is told as missing, with the reason "blank".
Answer answer(std::string_view text, const Quantity& quantity, Kind kind);

/// "value", "about", ...; "missing" for a blank.
std::string_view name(Status status);

/// The reason with the words it is about: "unknown unit 'inchs' (inches?)".
std::string reason_in_words(std::string_view text, const Quantity& quantity);

} // namespace wetspell
