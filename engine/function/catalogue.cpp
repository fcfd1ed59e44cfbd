#include "function/function.hpp"

#include <boost/algorithm/string/case_conv.hpp>
#include <boost/algorithm/string/predicate.hpp>

#include <cctype>

namespace wetspell {

#define WETSPELL_FUNCTION(name) FunctionSpec name##_function();
#include "function/list.inc"
#undef WETSPELL_FUNCTION

std::span<const FunctionSpec> functions() {
  static const std::vector<FunctionSpec> all{
#define WETSPELL_FUNCTION(name) name##_function(),
#include "function/list.inc"
#undef WETSPELL_FUNCTION
  };
  return all;
}

const FunctionSpec* function_named(std::string_view name) {
  for (const FunctionSpec& function : functions()) {
    if (boost::iequals(name, function.name, std::locale::classic()) ||
        boost::iequals(name, function.method, std::locale::classic()) ||
        boost::iequals(name, document_name(function), std::locale::classic())) {
      return &function;
    }
  }
  return nullptr;
}

std::string document_name(const FunctionSpec& function) {
  std::string name{function_service};
  name += '.';
  name += function.method;
  boost::to_upper(name, std::locale::classic());
  return name;
}

std::string identifier(const ParameterSpec& parameter) {
  std::string result;
  bool capital = false;
  for (const char c : parameter.name) {
    if (c == ' ') {
      capital = true;
      continue;
    }
    result += capital ? static_cast<char>(std::toupper(static_cast<unsigned char>(c))) : c;
    capital = false;
  }
  return result;
}

} // namespace wetspell
