#include "audit/dates.hpp"

#include "quantity/answer.hpp"
#include "quantity/calendar.hpp"
#include "quantity/reason.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>

namespace wetspell {

namespace {

constexpr double days_to_1904 = 1462;  // 1904-01-01 in days since 1899-12-30
constexpr double first_serial = 18264; // 1950-01-01; numbers below may be anything
constexpr double last_serial = 73051;  // 2100-01-01
constexpr int leap_year = 2000;

bool digit(char c) {
  return c >= '0' && c <= '9';
}

ReadDate day(double serial) {
  return {true, std::floor(serial), {}, false};
}

int century(int two_digits, const DateSense& sense) {
  int best = 2000 + two_digits;
  if (sense.year) { // the century that comes nearest to the sheet's own year
    for (const int century : {1900, 2000})
      if (std::abs(century + two_digits - *sense.year) < std::abs(best - *sense.year))
        best = century + two_digits;
    return best;
  }
  return best > sense.this_year ? best - 100 : best;
}

/// The text with its last number of two digits written as a year of four; empty when there is none.
std::string with_full_year(std::string_view text, const DateSense& sense) {
  for (std::size_t end = text.size(); end > 0; --end) {
    if (!digit(text[end - 1]))
      continue;
    std::size_t first = end;
    while (first > 0 && digit(text[first - 1]))
      --first;
    if (end - first != 2)
      return {};
    int year = 0;
    std::from_chars(text.data() + first, text.data() + end, year);
    std::string full(text.substr(0, first));
    while (!full.empty() && (full.back() == '\'' || static_cast<unsigned char>(full.back()) >= 0x80))
      full.pop_back(); // '19
    return full + fmt::format("{}{}", century(year, sense), text.substr(end));
  }
  return {};
}

/// The text with the sheet's year put behind, in the way in which its pieces are parted.
std::string with_sheet_year(std::string_view text, int year) {
  const std::size_t at = text.find_first_of("/-.");
  std::string whole(text);
  while (!whole.empty() && (whole.back() == ' ' || whole.back() == '.'))
    whole.pop_back();
  return whole + (at == std::string_view::npos ? ' ' : text[at]) + std::to_string(year);
}

ReadDate from_text(std::string_view text, const DateSense& sense, int depth = 0) {
  const Quantity q = read(text, {.kind = Kind::date, .date_order = sense.order});
  if (q.has_value())
    return day(q.si);
  if (q.status == Status::blank)
    return {false, 0, "nothing stands there", false};
  if (depth == 0 && q.reason == Reason::two_digit_year)
    if (const std::string full = with_full_year(text, sense); !full.empty())
      return from_text(full, sense, 1);
  if (depth == 0 && q.reason == Reason::year_missing && sense.year)
    return from_text(with_sheet_year(text, *sense.year), sense, 1);
  const bool askable = q.reason == Reason::day_or_month || q.reason == Reason::year_missing;
  return {false, 0, reason_in_words(text, q), askable};
}

/// 20190403.
bool in_figures(double value) {
  return value == std::floor(value) && value >= 19000101 && value <= 21991231;
}

bool in_days(double value) {
  return value >= first_serial - days_to_1904 && value <= last_serial;
}

ReadDate from_number(double value, const DateSense& sense) {
  if (in_figures(value))
    return from_text(fmt::format("{}", value), sense);
  const double serial = value + (sense.from_1904 ? days_to_1904 : 0);
  const Quantity q = read(Cell::of_number(serial), {.kind = Kind::date});
  return q.has_value() ? day(q.si) : ReadDate{false, 0, std::string(text(q.reason)), false};
}

std::optional<double> serial(int year, int month, int day) {
  if (year < 1 || month < 1 || day < 1)
    return std::nullopt;
  return serial_of({year, static_cast<unsigned>(month), static_cast<unsigned>(day)});
}

} // namespace

ReadDate date_from(const Cell& cell, const DateSense& sense) {
  switch (cell.kind()) {
  case CellKind::empty:
    return {false, 0, "nothing stands there", false};
  case CellKind::number:
    return from_number(cell.number(), sense);
  case CellKind::text:
    return from_text(cell.text(), sense);
  case CellKind::date:
  case CellKind::error:
    break;
  }
  const Quantity q = read(cell, {.kind = Kind::date});
  return q.has_value() ? day(q.si) : ReadDate{false, 0, std::string(text(q.reason)), false};
}

bool could_be_date(const Cell& cell) {
  if (cell.kind() != CellKind::text)
    return false;
  if (const auto two = two_numbers(cell.text());
      two && !serial(leap_year, two->first, two->second) && !serial(leap_year, two->second, two->first))
    return false; // "45-48" is no day of any year
  const Quantity q = read(cell.text(), {.kind = Kind::date});
  return q.reason == Reason::day_or_month || q.reason == Reason::two_digit_year ||
         (q.reason == Reason::year_missing && cell.text().find_first_of("/-. ") != std::string::npos);
}

bool counts_days(double number) {
  return (number == std::floor(number) && in_days(number)) ||
         (in_figures(number) && from_number(number, {}).readable);
}

std::optional<TwoNumbers> two_numbers(std::string_view text) {
  int numbers[3] = {-1, -1, -1};
  std::size_t digits[3] = {0, 0, 0};
  std::size_t count = 0;
  for (std::size_t i = 0; i < text.size();) {
    if (text[i] == ' ' && count == 3)
      break; // a time of day behind
    if (!digit(text[i])) {
      if (std::string_view(" /-.").find(text[i]) == std::string_view::npos)
        return std::nullopt;
      ++i;
      continue;
    }
    const std::size_t first = i;
    while (i < text.size() && digit(text[i]))
      ++i;
    if (count == 3 || i - first > 4)
      return std::nullopt;
    digits[count] = i - first;
    if (count < 2 && digits[count] > 2)
      return std::nullopt; // a year in front says the order itself
    std::from_chars(text.data() + first, text.data() + i, numbers[count++]);
  }
  if (count < 2 || (count == 3 && digits[2] != 2 && digits[2] != 4))
    return std::nullopt;
  return TwoNumbers{numbers[0], numbers[1], numbers[2]};
}

void DateColumn::Reading::add(std::optional<double> serial) {
  if (!serial) {
    ++impossible;
    return;
  }
  first = count == 0 ? *serial : std::min(first, *serial);
  last = count == 0 ? *serial : std::max(last, *serial);
  backwards += count > 0 && *serial < before;
  before = *serial;
  ++count;
}

int DateColumn::full_year(int written) const {
  if (written >= 100)
    return written;
  return written < 0 ? sense_.year.value_or(sense_.this_year) : century(written, sense_);
}

void DateColumn::add(const Cell& cell) {
  if (cell.kind() == CellKind::number) {
    if (!in_days(cell.number()))
      return;
    ++numbers_;
    if (sense_.year) {
      const auto in_year = [&](double serial) {
        const auto date = date_of(serial);
        return date && date->year == *sense_.year;
      };
      numbers_fit_1900_ += in_year(cell.number());
      numbers_fit_1904_ += in_year(cell.number() + days_to_1904);
    }
    return;
  }
  const auto two = cell.kind() == CellKind::text ? two_numbers(cell.text()) : std::nullopt;
  if (!two)
    return;
  ++in_figures_;
  const int year = full_year(two->year);
  const auto by_day = serial(year, two->second, two->first);
  const auto by_month = serial(year, two->first, two->second);
  only_day_first_ += by_day && !by_month;
  only_month_first_ += by_month && !by_day;
  day_first_.add(by_day);
  month_first_.add(by_month);
}

DateSense DateColumn::decide(std::string& reason) const {
  DateSense sense = sense_;
  if (numbers_ > 0 && numbers_fit_1904_ > numbers_fit_1900_) {
    sense.from_1904 = true;
    reason = fmt::format("numbers count from 1904: so {} of {} fall in {}", numbers_fit_1904_, numbers_,
                         *sense.year);
  }
  if (in_figures_ == 0)
    return sense;
  const auto take = [&](DateOrder order, std::string why) {
    sense.order = order;
    reason = std::move(why);
  };
  if (only_day_first_ > 0 && only_month_first_ == 0)
    take(DateOrder::day_first,
         fmt::format("day before month: {} of {} dates can be nothing else", only_day_first_, in_figures_));
  else if (only_month_first_ > 0 && only_day_first_ == 0)
    take(DateOrder::month_first,
         fmt::format("month before day: {} of {} dates can be nothing else", only_month_first_, in_figures_));
  else if (only_day_first_ > 0)
    reason =
        fmt::format("of {} dates {} can only have the day first and {} only the month; the others stay open",
                    in_figures_, only_day_first_, only_month_first_);
  else if (sense_.order != DateOrder::unknown)
    reason = sense_.order == DateOrder::day_first ? "day before month, as elsewhere in the file"
                                                  : "month before day, as elsewhere in the file";
  else if (in_figures_ >= 5 && day_first_.impossible == 0 && month_first_.impossible == 0) {
    // A column that was written from day to day runs forward and keeps close together one way only.
    const double by_day = day_first_.last - day_first_.first;
    const double by_month = month_first_.last - month_first_.first;
    constexpr double closer = 3;
    if (day_first_.backwards * 2 < month_first_.backwards && by_day * closer <= by_month)
      take(DateOrder::day_first,
           fmt::format("day before month: so {} dates follow each other within {} days, "
                       "the other way they are spread over {}",
                       in_figures_, by_day, by_month));
    else if (month_first_.backwards * 2 < day_first_.backwards && by_month * closer <= by_day)
      take(DateOrder::month_first, fmt::format("month before day: so {} dates follow each other within {} "
                                               "days, the other way they are spread over {}",
                                               in_figures_, by_month, by_day));
  }
  if (sense.order == DateOrder::unknown && reason.empty())
    reason = "day or month first cannot be told";
  return sense;
}

std::optional<int> year_in(std::string_view text) {
  std::optional<int> found;
  for (std::size_t i = 0; i < text.size();) {
    std::size_t end = i;
    while (end < text.size() && digit(text[end]))
      ++end;
    if (end - i == 4) {
      int year = 0;
      std::from_chars(text.data() + i, text.data() + end, year);
      if (year >= 1900 && year < 2200) {
        if (found && *found != year)
          return std::nullopt;
        found = year;
      }
    }
    i = end == i ? i + 1 : end;
  }
  return found;
}

} // namespace wetspell
