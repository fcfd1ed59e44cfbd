#include "formula.hpp"

#include "function/function.hpp"
#include "table/table.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <stdexcept>

namespace wetspell::workbook {

std::string here(std::size_t column, std::size_t row) {
  return fmt::format("[.{}{}]", column_letters(column), row + 1);
}

std::string here(std::size_t first_column, std::size_t last_column, std::size_t row) {
  return fmt::format("[.{0}{2}:.{1}{2}]", column_letters(first_column), column_letters(last_column), row + 1);
}

std::string sheet_in_reference(std::string_view sheet) {
  const auto plain = [](unsigned char c) { return std::isalnum(c) != 0 || c == '_'; };
  return std::all_of(sheet.begin(), sheet.end(), plain) ? std::string(sheet) : fmt::format("'{}'", sheet);
}

std::string fixed_cell(std::string_view sheet, std::size_t column, std::size_t row) {
  return fmt::format("${}.${}${}", sheet_in_reference(sheet), column_letters(column), row + 1);
}

std::string fixed_range(std::string_view sheet, std::size_t first_column, std::size_t first_row,
                        std::size_t last_column, std::size_t last_row) {
  return fmt::format("{}:.${}${}", fixed_cell(sheet, first_column, first_row), column_letters(last_column),
                     last_row + 1);
}

std::string text_literal(std::string_view text) {
  std::string out = "\"";
  for (const char c : text) {
    out += c;
    if (c == '"')
      out += c;
  }
  return out + '"';
}

std::string call(std::string_view function, std::initializer_list<std::string> arguments) {
  const FunctionSpec* spec = function_named(function);
  if (spec == nullptr)
    throw std::logic_error(fmt::format("there is no cell function {}", function));
  const auto required =
      static_cast<std::size_t>(std::count_if(spec->parameters.begin(), spec->parameters.end(),
                                             [](const ParameterSpec& p) { return !p.optional(); }));
  const bool any_number = !spec->parameters.empty() && (spec->parameters.back().takes == Takes::tables ||
                                                        spec->parameters.back().takes == Takes::values);
  if (arguments.size() < required || (!any_number && arguments.size() > spec->parameters.size()))
    throw std::logic_error(fmt::format("{} does not take {} arguments", function, arguments.size()));
  return fmt::format("{}({})", document_name(*spec), fmt::join(arguments, ";"));
}

} // namespace wetspell::workbook
