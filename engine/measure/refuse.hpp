// Short ways to refuse, one for each kind of problem; and how a number stands in a sentence.
#pragma once

#include "base/result.hpp"

#include <fmt/format.h>

#include <string>
#include <utility>

namespace wetspell {

inline Problem bad_argument(std::string text) {
  return {ProblemKind::bad_argument, std::move(text)};
}
inline Problem not_enough(std::string text) {
  return {ProblemKind::not_enough, std::move(text)};
}
inline Problem not_a_number(std::string text) {
  return {ProblemKind::not_a_number, std::move(text)};
}

/// A number in a message: at most eight significant digits, decimal point whatever the locale.
inline std::string in_words(double number) {
  return fmt::format("{:.8g}", number);
}

} // namespace wetspell
