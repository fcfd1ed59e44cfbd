// Every sentence with which a function refuses an argument, in one place.
#pragma once

#include "function/function.hpp"
#include "quantity/quantity.hpp"

namespace wetspell::refusal {

Problem needed(const ParameterSpec& parameter);
Problem too_many(std::size_t taken, std::size_t given);
Problem one_cell_expected(const ParameterSpec& parameter, const Argument& argument);
Problem ranges_differ(const ParameterSpec& one, const Argument& first, const ParameterSpec& other,
                      const Argument& second);
Problem error_in_cell(const ParameterSpec& parameter, const Cell& cell);
Problem not_a_unit(const ParameterSpec& parameter, const Cell& cell);
Problem not_a_word(const ParameterSpec& parameter, const Cell& cell, std::string_view allowed);
Problem too_large(const ParameterSpec& parameter, const Cell& cell, double limit);
/// Something typed that is not a number alone.
Problem no_plain_number(const ParameterSpec& parameter, const Cell& cell);
Problem not_a_table(const ParameterSpec& parameter);
/// Something typed that is not the one number needed; says what was read and why it cannot be used.
Problem not_one_number(const ParameterSpec& parameter, const Cell& cell, const Quantity& quantity, Kind kind);

} // namespace wetspell::refusal
