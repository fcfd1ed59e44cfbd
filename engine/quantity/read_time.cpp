// Times of day. Without "am" or "pm" the clock has 24 hours.
#include "quantity/read_time.hpp"

#include "quantity/marks.hpp"
#include "quantity/read_measure.hpp"

#include <algorithm>

namespace wetspell {

namespace {

constexpr double hours_a_day = 24;
constexpr double minutes_a_day = 1440;
constexpr double seconds_a_day = 86400;

struct Digits {
  int value = 0;
  int count = 0;
};

Digits read_digits(Cursor& c) {
  Digits d;
  for (; is_digit(c.peek()); ++c.at, ++d.count)
    if (d.count < 6)
      d.value = d.value * 10 + (c.peek() - '0');
  return d;
}

enum class Half : std::uint8_t { unsaid, morning, afternoon };

Half read_half(Cursor& c) {
  Cursor ahead = c;
  ahead.skip_space();
  const auto word = ahead.word();
  const Half half = word == "am" || word == "a m"   ? Half::morning
                    : word == "pm" || word == "p m" ? Half::afternoon
                                                    : Half::unsaid;
  if (half != Half::unsaid)
    c.at = ahead.at + word.size();
  return half;
}

/// "h", "hr", "hrs", "hours" behind figures.
bool skip_hour_word(Cursor& c) {
  Cursor ahead = c;
  ahead.skip_space();
  const auto word = ahead.word();
  if (word != "h" && word != "hr" && word != "hrs" && word != "hours")
    return false;
  c.at = ahead.at + word.size();
  return true;
}

/// The figures of a time as they stand, before anybody asked whether there is such a time.
struct Figures {
  Digits hour;
  Digits minute;
  Digits second;
  bool point = false;      ///< a point parts hours and minutes
  bool hours_said = false; ///< a colon, or a word for hours
};

Figures read_figures(Cursor& c) {
  Figures f;
  f.hour = read_digits(c);
  if (f.hour.count == 4 || f.hour.count == 3) { // 1430, 905
    f.minute = {f.hour.value % 100, 2};
    f.hour = {f.hour.value / 100, f.hour.count - 2};
    f.hours_said = skip_hour_word(c) || f.hour.count == 2;
    return f;
  }
  const char sign = c.peek();
  f.point = sign == '.' && is_digit(c.next());
  if ((sign == ':' || sign == 'h' || f.point) && is_digit(c.next())) {
    ++c.at;
    f.minute = read_digits(c);
    f.hours_said = !f.point;
    if (sign == ':' && c.peek() == ':' && is_digit(c.next())) {
      ++c.at;
      f.second = read_digits(c);
      if (c.peek() == '.' && is_digit(c.next())) {
        ++c.at;
        read_digits(c); // parts of a second, as instruments write them, are below what a visit knows
      }
    }
  }
  f.hours_said = skip_hour_word(c) || f.hours_said;
  return f;
}

Reason why_not(const Figures& f, Half half, const Cursor& c) {
  const bool zone = (c.peek() == 'z' && !is_letter(c.next())) || c.peek() == '+' ||
                    (f.second.count > 0 && c.peek() == '-' && is_digit(c.next()));
  if (zone)
    return Reason::time_zone;
  if (const Reason letters = letters_for_digits(c, true); letters != Reason::none)
    return letters;
  if (c.peek() == ':' && letters_for_digits({c.at + 1}, false) != Reason::none)
    return letters_for_digits({c.at + 1}, false);
  if (f.point && half == Half::unsaid)
    return Reason::dot_in_time;
  if (!f.hours_said && half == Half::unsaid)
    return Reason::bare_number_for_time;
  if (f.hour.count > 2 || (f.minute.count != 0 && f.minute.count != 2) || f.second.count > 2)
    return Reason::time_not_read;
  if (f.hour.value > 23 || f.minute.value > 59 || f.second.value > 59)
    return Reason::no_such_time;
  const bool twelve_hours = f.hour.value >= 1 && f.hour.value <= 12;
  if ((half == Half::morning && !twelve_hours) || (half == Half::afternoon && f.hour.value == 0))
    return Reason::no_such_time;
  return Reason::none;
}

} // namespace

ClockTime read_clock(Cursor& c) {
  ClockTime time;
  if (c.skip("noon") || c.skip("midday")) {
    time.fraction = 0.5;
    time.step = 1 / hours_a_day;
    return time;
  }
  if (!is_digit(c.peek())) {
    time.trouble = letters_for_digits(c, false);
    if (time.trouble == Reason::none)
      time.trouble = Reason::time_not_read;
    return time;
  }
  const Figures f = read_figures(c);
  const Half half = read_half(c);
  Cursor behind = c;
  behind.skip_space();
  time.trouble = why_not(f, half, c);
  if (half == Half::unsaid && (behind.skip("o'clock") || behind.skip("oclock")))
    time.trouble = f.hour.value > 12 ? Reason::no_such_time : Reason::morning_or_afternoon;
  if (time.trouble != Reason::none)
    return time;
  int hour = f.hour.value;
  if (half == Half::morning && hour == 12)
    hour = 0;
  if (half == Half::afternoon && hour < 12)
    hour += 12;
  time.fraction = (hour * 3600 + f.minute.value * 60 + f.second.value) / seconds_a_day;
  time.step = 1 / (f.second.count > 0 ? seconds_a_day : f.minute.count > 0 ? minutes_a_day : hours_a_day);
  return time;
}

Quantity read_time(Cursor c, DateOrder order) {
  if (const auto time = time_behind_date(c, order)) {
    Quantity q;
    q.status = Status::value;
    q.written = q.si = q.si_high = *time;
    q.resolution = static_cast<float>(1 / minutes_a_day);
    return q;
  }
  bool about = skip_about(c);
  const ClockTime from = read_clock(c);
  ClockTime to = from;
  bool range = false;
  if (from.trouble == Reason::none) {
    Cursor ahead = c;
    ahead.skip_space();
    if (ahead.skip('-') || ahead.skip("to ")) {
      ahead.skip_space();
      to = read_clock(ahead);
      range = true;
      c = ahead;
    }
  }
  for (const auto& time : {from, to})
    if (time.trouble != Reason::none)
      return bad(time.trouble);
  if (!skip_doubt(c, about))
    return bad(is_digit(c.peek()) ? Reason::two_values : Reason::words_after);
  if (to.fraction < from.fraction)
    return bad(Reason::range_falls);
  Quantity q;
  q.status = range ? Status::range : about ? Status::about : Status::value;
  q.written = q.si = from.fraction;
  q.si_high = to.fraction;
  q.resolution = static_cast<float>(std::max(from.step, to.step));
  return q;
}

} // namespace wetspell
