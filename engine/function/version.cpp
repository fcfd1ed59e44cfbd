// POOL.VERSION
#include "function/function.hpp"

namespace wetspell {

namespace {

Result<Value> evaluate(std::span<const Argument>) {
  return Value{Cell::of_text(WETSPELL_VERSION)};
}

} // namespace

FunctionSpec version_function() {
  return {
      .name = "POOL.VERSION",
      .method = "version",
      .category = "Information",
      .summary = "Version of Wetspell that works out these functions",
      .parameters = {},
      .blanks = "Takes nothing.",
      .errors = {},
      .examples =
          {{.cells = {}, .formula = "POOL.VERSION()", .result = WETSPELL_VERSION, .shows = "as text"}},
      .see_also = {"POOL.WHY"},
      .evaluate = evaluate,
  };
}

} // namespace wetspell
