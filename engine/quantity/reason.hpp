// Why a text cannot be read, or what stands in a cell instead of a reading. The words: quantity/reason.cpp.
#pragma once

#include "quantity/quantity.hpp"

#include <cstdint>

namespace wetspell {

enum class Reason : std::uint8_t {
  none,
  blank,
  // Status::missing: words for "no reading".
  not_measured,
  not_known,
  too_deep,
  frozen,
  dry_nothing_to_measure,
  // Status::bad: what stands there is no reading at all.
  error_value,
  not_finite,
  too_long,
  not_utf8,
  control_character,
  unknown_character,
  not_a_number,
  word_not_number,
  too_many_digits,
  too_large,
  // Numbers that could be meant in more than one way.
  letter_o,
  letter_l,
  comma_unclear,
  space_in_number,
  slash,
  two_values,
  product,
  dash_before_number,
  plus_before_number,
  number_unfinished,
  fraction_and_decimals,
  // Words around a number.
  words_before,
  words_after,
  unknown_unit,
  // Numbers that cannot be meant.
  inches_over_foot,
  small_unit_over_large,
  below_absolute_zero,
  negative_count,
  not_whole,
  range_falls,
  range_unit_unclear,
  compound_or_range,
  paces_not_one_number,
  assumed_unit,
  // Dates and times.
  date_not_read,
  no_such_date,
  day_or_month,
  two_digit_year,
  year_missing,
  day_missing,
  weekday_wrong,
  bare_number_for_date,
  time_zone,
  time_not_read,
  no_such_time,
  morning_or_afternoon,
  dot_in_time,
  bare_number_for_time,
  // Yes and no.
  not_yes_or_no,
  cross_unclear,
  // One kind of reading where another is expected: see mismatch().
  first_mismatch,
};

/// What was found in the place of something else.
enum class Found : std::uint8_t { temperature, length, area, volume, percent, paces, date, time };

/// "a temperature where a depth is expected", and so on for everything that can be found and expected.
constexpr Reason mismatch(Found found, Kind expected) {
  return static_cast<Reason>(static_cast<int>(Reason::first_mismatch) +
                             static_cast<int>(found) * static_cast<int>(kinds_of_quantity) +
                             static_cast<int>(expected));
}

/// What a typed unit says was measured.
Found found_by(Unit unit);

} // namespace wetspell
