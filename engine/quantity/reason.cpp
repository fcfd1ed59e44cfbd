#include "quantity/reason.hpp"

#include <fmt/format.h>

#include <array>
#include <cstddef>
#include <string>

namespace wetspell {

namespace {

struct Words {
  Reason reason;
  std::string_view words;
};

constexpr std::array<Words, static_cast<std::size_t>(Reason::first_mismatch)> table{{
    {Reason::none, ""},
    {Reason::blank, "blank"},
    {Reason::not_measured, "not measured"},
    {Reason::not_known, "not known"},
    {Reason::too_deep, "too deep to measure"},
    {Reason::frozen, "frozen over"},
    {Reason::dry_nothing_to_measure, "dry, nothing to measure"},
    {Reason::error_value, "the sheet shows an error here"},
    {Reason::not_finite, "not a finite number"},
    {Reason::too_long, "too long for one reading"},
    {Reason::not_utf8, "broken characters (not UTF-8)"},
    {Reason::control_character, "a control character"},
    {Reason::unknown_character, "a character that has no place in a reading"},
    {Reason::not_a_number, "not a number"},
    {Reason::word_not_number, "a word where a number is expected"},
    {Reason::too_many_digits, "more digits than can be kept"},
    {Reason::too_large, "a number too large to be a reading"},
    {Reason::letter_o, "letter O where a zero may be meant"},
    {Reason::letter_l, "letter l or I where a one may be meant"},
    {Reason::comma_unclear, "the comma could be a decimal comma or part the thousands"},
    {Reason::space_in_number, "a space inside a number"},
    {Reason::slash, "a slash between two numbers: a fraction or two values"},
    {Reason::two_values, "two values"},
    {Reason::product, "two lengths multiplied"},
    {Reason::dash_before_number, "a dash before the number: minus or only a mark"},
    {Reason::plus_before_number, "a plus sign before the number"},
    {Reason::number_unfinished, "something is missing after the number"},
    {Reason::fraction_and_decimals, "decimals and a fraction in one number"},
    {Reason::words_before, "words before the number"},
    {Reason::words_after, "words after the number"},
    {Reason::unknown_unit, "unknown unit"},
    {Reason::inches_over_foot, "twelve inches or more after the feet"},
    {Reason::small_unit_over_large, "the smaller unit holds more than one of the larger"},
    {Reason::below_absolute_zero, "colder than anything can be"},
    {Reason::negative_count, "a count below zero"},
    {Reason::not_whole, "a fraction where a whole number is expected"},
    {Reason::range_falls, "a range whose second number is the smaller"},
    {Reason::range_unit_unclear, "a range in which the unit of the first number is not clear"},
    {Reason::compound_or_range, "could be feet and inches or a range"},
    {Reason::paces_not_one_number, "paces or steps that are not one number"},
    {Reason::assumed_unit, "the unit of the column does not fit what is measured"},
    {Reason::date_not_read, "not a date"},
    {Reason::no_such_date, "no such date"},
    {Reason::day_or_month, "day and month could be either way round"},
    {Reason::two_digit_year, "a year of two digits"},
    {Reason::year_missing, "the year is missing"},
    {Reason::day_missing, "the day is missing"},
    {Reason::weekday_wrong, "the weekday does not belong to the date"},
    {Reason::bare_number_for_date, "a bare number where a date is expected"},
    {Reason::time_zone, "a time zone after the time"},
    {Reason::time_not_read, "not a time of day"},
    {Reason::no_such_time, "no such time"},
    {Reason::morning_or_afternoon, "could be morning or afternoon"},
    {Reason::dot_in_time, "a point between the numbers: hours and minutes, or a decimal"},
    {Reason::bare_number_for_time, "a bare number where a time is expected"},
    {Reason::not_yes_or_no, "neither yes nor no"},
    {Reason::cross_unclear, "a cross can mean yes or no"},
}};

consteval bool in_order() {
  for (std::size_t i = 0; i < table.size(); ++i)
    if (static_cast<std::size_t>(table[i].reason) != i)
      return false;
  return true;
}
static_assert(in_order(), "the table of words follows the order of the enum");

constexpr std::array<std::string_view, 8> found_words{"a temperature", "a length", "an area", "a volume",
                                                      "a per cent",    "paces",    "a date",  "a time"};
constexpr std::array<std::string_view, kinds_of_quantity> expected_words{
    "a temperature", "a depth", "a length", "an area", "a volume",
    "a per cent",    "a count", "a date",   "a time",  "yes or no"};

constexpr std::size_t first = static_cast<std::size_t>(Reason::first_mismatch);
constexpr std::size_t mismatches = found_words.size() * expected_words.size();
static_assert(first + mismatches <= 256, "every reason fits the one byte of Reason");

/// The words of all mismatches, put together once.
const std::array<std::string, mismatches>& mismatch_words() {
  static const auto all = [] {
    std::array<std::string, mismatches> words;
    for (std::size_t f = 0; f < found_words.size(); ++f)
      for (std::size_t e = 0; e < expected_words.size(); ++e)
        words[f * expected_words.size() + e] =
            fmt::format("{} where {} is expected", found_words[f], expected_words[e]);
    return words;
  }();
  return all;
}

} // namespace

std::string_view text(Reason reason) {
  const auto index = static_cast<std::size_t>(reason);
  if (index < first)
    return table[index].words;
  return index < first + mismatches ? std::string_view{mismatch_words()[index - first]} : std::string_view{};
}

Found found_by(Unit unit) {
  switch (spec(unit).kind) {
  case Kind::temperature:
    return Found::temperature;
  case Kind::area:
    return Found::area;
  case Kind::volume:
    return Found::volume;
  case Kind::percent:
    return Found::percent;
  default:
    return unit == Unit::pace || unit == Unit::step ? Found::paces : Found::length;
  }
}

} // namespace wetspell
