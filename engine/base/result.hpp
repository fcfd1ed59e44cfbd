// What a computation gives back: a value, or a problem told in words.
#pragma once

#include <boost/outcome/result.hpp>

#include <cstdint>
#include <string>

namespace wetspell {

/// The four ways in which a computation can refuse. Each has an error value of its own in a sheet.
enum class ProblemKind : std::uint8_t {
  bad_argument,   ///< an argument cannot be meant (Calc: Err:502)
  not_enough,     ///< something needed is blank or missing (Calc: #N/A)
  not_a_number,   ///< the answer is not a finite number (Calc: #NUM!)
  no_convergence, ///< an iteration did not settle (Calc: Err:523)
};

/// Why a computation refused, in one plain sentence with the value that was read.
struct Problem {
  ProblemKind kind = ProblemKind::bad_argument;
  std::string text;
};

/// A value or a Problem. `value()` and `error()` throw when asked for the one that is not there.
template <class T> using Result = boost::outcome_v2::checked<T, Problem>;

} // namespace wetspell
