// Calls of cell functions in a formula's text, so that a refusal can be explained from outside.
#pragma once

#include "function/function.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace wetspell {

enum class Written { left_out, number, text, reference, expression };

/// One argument as it stands in the formula.
struct WrittenArgument {
  Written form = Written::left_out;
  double number = 0;
  std::string text; ///< a text's content, a reference, or an expression as it stands
};

struct WrittenCall {
  const FunctionSpec* function = nullptr;
  std::vector<WrittenArgument> arguments;
};

/// All calls of our functions, outer before inner. The formula is in English spelling with semicolons, as the
/// office's own interfaces give it.
std::vector<WrittenCall> calls_in(std::string_view formula);

/// What a call's arguments come to, as Calc would hand them over: a blank single cell is zero where an option
/// stands. Refuses a value where a cell is needed, an expression, and a reference that leads nowhere.
struct Refused {
  Problem problem;
  bool unseen = false; ///< an expression stands there: it may be right, but cannot be looked into
};
boost::outcome_v2::checked<std::vector<Argument>, Refused> arguments_of(const WrittenCall& call,
                                                                        const CellSource& source);

} // namespace wetspell
