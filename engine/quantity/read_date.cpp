// Dates as people write them. A year of two digits and an order nobody can know are refused.
#include "quantity/calendar.hpp"
#include "quantity/marks.hpp"
#include "quantity/read_measure.hpp"
#include "quantity/read_time.hpp"
#include "quantity/vocabulary.hpp"

#include <algorithm>
#include <array>
#include <cstddef>
#include <optional>

namespace wetspell {

namespace {

constexpr WordMeaning<int> month_list[] = {
    {"jan", 1},  {"january", 1},  {"feb", 2},    {"february", 2},  {"mar", 3},  {"march", 3},
    {"apr", 4},  {"april", 4},    {"may", 5},    {"jun", 6},       {"june", 6}, {"jul", 7},
    {"july", 7}, {"aug", 8},      {"august", 8}, {"sep", 9},       {"sept", 9}, {"september", 9},
    {"oct", 10}, {"october", 10}, {"nov", 11},   {"november", 11}, {"dec", 12}, {"december", 12},
};
constexpr auto months = vocabulary(month_list);

constexpr WordMeaning<unsigned> weekday_list[] = {
    {"mon", 1},  {"monday", 1},    {"tue", 2}, {"tues", 2},     {"tuesday", 2}, {"wed", 3},
    {"weds", 3}, {"wednesday", 3}, {"thu", 4}, {"thur", 4},     {"thurs", 4},   {"thursday", 4},
    {"fri", 5},  {"friday", 5},    {"sat", 6}, {"saturday", 6}, {"sun", 7},     {"sunday", 7},
};
constexpr auto weekdays = vocabulary(weekday_list);

struct Part {
  int value = 0;
  int digits = 0; ///< 0: a month by name
};

/// The pieces of a date in the order in which they stand.
struct Pieces {
  std::array<Part, 4> parts{};
  std::size_t count = 0;
  std::size_t named = 4;      ///< which one is a month by name; 4: none
  char separator = '\0';      ///< between the first two
  unsigned weekday = 0;       ///< 1 to 7 when it was written
  std::optional<double> time; ///< a time of day behind the date
  bool about = false;
  Reason trouble{};
};

bool ordinal(Cursor& c, int value) {
  const auto word = c.word();
  const bool teen = value % 100 >= 11 && value % 100 <= 13;
  const int last = teen ? 0 : value % 10;
  const std::string_view right = last == 1 ? "st" : last == 2 ? "nd" : last == 3 ? "rd" : "th";
  if (word != right)
    return false;
  c.at += word.size();
  return true;
}

Part read_part(Cursor& c) {
  Part p;
  for (; is_digit(c.peek()); ++c.at, ++p.digits)
    if (p.digits < 8)
      p.value = p.value * 10 + (c.peek() - '0');
  return p;
}

/// A month, a weekday or a word that says nothing. False for any other word.
bool take_word(Cursor& c, Pieces& p) {
  const auto word = c.word();
  if (const auto month = months.find(word)) {
    if (p.named < 4 || p.count >= 4)
      return false;
    p.named = p.count;
    p.parts[p.count++] = {*month, 0};
  } else if (const auto day = weekdays.find(word)) {
    if (p.weekday != 0)
      return false;
    p.weekday = *day;
  } else if (word != "of" && word != "the") {
    return false;
  }
  c.at += word.size();
  return true;
}

/// A time of day behind a whole date: "2026-03-21 14:30", "2026-03-21T14:30:00".
bool take_time(Cursor& c, Pieces& p) {
  const auto has_year = [](const Part& part) { return part.digits == 4; };
  if (p.count != 3 || std::none_of(p.parts.begin(), p.parts.begin() + 3, has_year))
    return false;
  Cursor ahead = c;
  ahead.skip_space();
  if (ahead.skip('t') || ahead.skip("at "))
    ahead.skip_space();
  if (!is_digit(ahead.peek()))
    return false;
  const ClockTime time = read_clock(ahead);
  if (time.trouble == Reason::bare_number_for_time)
    return false;
  c = ahead;
  p.trouble = time.trouble;
  p.time = time.fraction;
  return true;
}

bool take_number(Cursor& c, Pieces& p) {
  if (p.count >= 4)
    return false;
  const Part part = read_part(c);
  p.parts[p.count++] = part;
  if (p.trouble = letters_for_digits(c, true); p.trouble != Reason::none)
    return true;
  if (part.digits <= 2 && is_letter(c.peek()) && !months.find(c.word()))
    ordinal(c, part.value);
  return true;
}

/// Why a date does not go on as it does after `count` pieces.
Reason why_not_date(const Cursor& c, std::size_t count) {
  if (const Reason letters = letters_for_digits(c, false); letters != Reason::none)
    return letters;
  return count > 3 ? Reason::two_values : count == 3 ? Reason::words_after : Reason::date_not_read;
}

Pieces read_pieces(Cursor c) {
  Pieces p;
  p.about = skip_about(c);
  while (!c.done() && p.trouble == Reason::none) {
    const char ch = c.peek();
    if (p.count == 3 && take_time(c, p)) {
      if (p.trouble == Reason::none && !skip_doubt(c, p.about))
        p.trouble = Reason::words_after;
      return p;
    }
    if (ch == ' ' || ch == ',' || ch == '-' || ch == '/' || ch == '.') {
      if (p.count == 1 && (p.separator == '\0' || p.separator == ' '))
        p.separator = ch;
      ++c.at;
    } else if (is_digit(ch)) {
      if (!take_number(c, p))
        p.trouble = Reason::two_values;
    } else if (!is_letter(ch) || !take_word(c, p)) {
      if (!skip_doubt(c, p.about))
        p.trouble = why_not_date(c, p.count);
      return p;
    }
  }
  return p;
}

struct Made {
  CalendarDate date;
  Reason trouble{};
};

Made trouble(Reason reason) {
  return {{}, reason};
}

bool a_year(const Part& p) {
  return p.digits == 4;
}

Made make(const Part& year, const Part& month, const Part& day) {
  Made m{{year.value, static_cast<unsigned>(month.value), static_cast<unsigned>(day.value)}, Reason::none};
  if (day.digits > 2 || month.digits > 2 || !serial_of(m.date))
    m.trouble = Reason::no_such_date;
  return m;
}

/// Day and month before the year, in figures: the order is certain only when a date comes out one way alone.
Made either_way(const Pieces& p, DateOrder order) {
  const auto& [first, second, year, rest] = p.parts;
  const Made day_first = make(year, second, first);
  const Made month_first = make(year, first, second);
  if (day_first.trouble != Reason::none || day_first.date == month_first.date)
    return month_first;
  if (month_first.trouble != Reason::none)
    return day_first;
  if (p.separator == '.' && order != DateOrder::month_first)
    return day_first; // 3.4.2026 with points is day first wherever it is written
  if (p.separator == '.' || order == DateOrder::unknown)
    return trouble(Reason::day_or_month);
  return order == DateOrder::day_first ? day_first : month_first;
}

Made with_month_name(const Pieces& p) {
  const Part& month = p.parts[p.named];
  if (p.count == 1)
    return trouble(Reason::day_missing);
  const Part& a = p.parts[p.named == 0 ? 1 : 0];
  if (p.count == 2)
    return trouble(a_year(a) ? Reason::day_missing : Reason::year_missing);
  const Part& b = p.parts[p.named == 2 ? 1 : 2];
  if (a_year(a) == a_year(b))
    return trouble(a_year(a) ? Reason::date_not_read : Reason::two_digit_year);
  if (a_year(a) && p.named == 0)
    return trouble(Reason::date_not_read); // March 2026 21
  return a_year(a) ? make(a, month, b) : make(b, month, a);
}

/// 20260321, the basic form of ISO 8601.
Made compact(int value) {
  const CalendarDate date{value / 10000, static_cast<unsigned>(value / 100 % 100),
                          static_cast<unsigned>(value % 100)};
  const bool plausible = date.year >= 1900 && date.year <= 2199 && serial_of(date);
  return plausible ? Made{date, Reason::none} : trouble(Reason::bare_number_for_date);
}

Made in_figures(const Pieces& p, DateOrder order) {
  const auto& [a, b, c, rest] = p.parts;
  switch (p.count) {
  case 0:
    return trouble(Reason::date_not_read);
  case 1:
    return a.digits == 8 ? compact(a.value) : trouble(Reason::bare_number_for_date);
  case 2:
    return trouble(a_year(a) || a_year(b) ? Reason::day_missing : Reason::year_missing);
  default:
    break;
  }
  if (a_year(a) && !a_year(b) && !a_year(c))
    return make(a, b, c);
  if (!a_year(a) && !a_year(b) && a_year(c))
    return either_way(p, order);
  return trouble(a.digits <= 2 && b.digits <= 2 && c.digits == 2 ? Reason::two_digit_year
                                                                 : Reason::date_not_read);
}

Made make(const Pieces& p, DateOrder order) {
  if (p.trouble != Reason::none)
    return trouble(p.trouble);
  if (p.count > 3)
    return trouble(Reason::two_values);
  Made m = p.named < 4 ? with_month_name(p) : in_figures(p, order);
  if (m.trouble == Reason::none && p.weekday != 0 && weekday_of(*serial_of(m.date)) != p.weekday)
    m.trouble = Reason::weekday_wrong;
  return m;
}

} // namespace

Quantity read_date(Cursor c, DateOrder order) {
  const Pieces p = read_pieces(c);
  const Made m = make(p, order);
  if (m.trouble != Reason::none)
    return bad(m.trouble);
  Quantity q;
  q.status = p.about ? Status::about : Status::value;
  q.written = q.si = q.si_high = *serial_of(m.date);
  q.resolution = 1;
  return q;
}

std::optional<double> time_behind_date(Cursor c, DateOrder order) {
  const Pieces p = read_pieces(c);
  return make(p, order).trouble == Reason::none ? p.time : std::nullopt;
}

} // namespace wetspell
