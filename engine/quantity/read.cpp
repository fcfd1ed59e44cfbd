#include "quantity/read.hpp"

#include "quantity/calendar.hpp"
#include "quantity/fold.hpp"
#include "quantity/phrase.hpp"
#include "quantity/read_measure.hpp"

#include <cmath>
#include <iterator>
#include <optional>

namespace wetspell {

namespace {

Quantity blank() {
  Quantity q;
  q.reason = Reason::blank;
  return q;
}

Quantity dated(double written, double resolution) {
  Quantity q;
  q.status = Status::value;
  q.written = q.si = q.si_high = written;
  q.resolution = static_cast<float>(resolution);
  return q;
}

/// An error value of a sheet that came through as text.
bool error_text(std::string_view folded) {
  return (folded.starts_with('#') && folded.size() > 1) || folded.starts_with("err:");
}

/// "dry?" and "~dry" are "dry" with a doubt.
std::optional<Quantity> doubted_phrase(std::string_view folded, Kind kind, Unit assume) {
  if (const auto q = read_phrase(folded, kind, assume))
    return q;
  std::string_view core = folded;
  while (!core.empty() && (core.back() == '?' || core.back() == ' ' || core.back() == '!'))
    core.remove_suffix(1);
  while (!core.empty() && (core.front() == '~' || core.front() == '?' || core.front() == ' '))
    core.remove_prefix(1);
  if (core.size() == folded.size() || core.empty())
    return std::nullopt;
  auto q = read_phrase(core, kind, assume);
  if (q && q->status == Status::value && folded.find_first_of("?~") != std::string_view::npos)
    q->status = Status::about;
  return q;
}

/// Counts in words, up to twelve.
std::optional<double> number_word(std::string_view folded) {
  constexpr std::string_view words[] = {"one",   "two",   "three", "four", "five",   "six",
                                        "seven", "eight", "nine",  "ten",  "eleven", "twelve"};
  for (std::size_t i = 0; i < std::size(words); ++i)
    if (words[i] == folded)
      return static_cast<double>(i + 1);
  return std::nullopt;
}

/// In a column of dates, times or answers a lone measurement is told by name.
Quantity named_stranger(Quantity q, std::string_view folded, Kind kind) {
  if (q.status != Status::bad || q.reason == Reason::letter_o || q.reason == Reason::letter_l)
    return q;
  for (const Kind other : {Kind::temperature, Kind::length, Kind::area, Kind::volume, Kind::percent}) {
    const Quantity as = read_measure({folded.data()}, other, usual_unit(other));
    if (as.status != Status::bad && as.unit_typed)
      return bad(mismatch(found_by(as.unit), kind));
  }
  return q;
}

/// A date or a time in a column of something else.
Quantity dated_stranger(Quantity q, std::string_view folded, Kind kind) {
  if (q.status != Status::bad || folded.size() < 4)
    return q;
  const bool marks = folded.find_first_of("-/:.,") != std::string_view::npos;
  const bool named = folded.find(' ') != std::string_view::npos;
  if (!marks && !named)
    return q;
  const Cursor c{folded.data()};
  const Quantity date = read_date(c, DateOrder::unknown);
  if (date.status != Status::bad || date.reason == Reason::day_or_month)
    return bad(mismatch(Found::date, kind));
  if (folded.find(':') != std::string_view::npos && read_time(c, DateOrder::unknown).status != Status::bad)
    return bad(mismatch(Found::time, kind));
  return q;
}

Quantity read_number_cell(double value, Kind kind, Unit assume) {
  if (!std::isfinite(value))
    return bad(Reason::not_finite);
  switch (kind) {
  case Kind::date: // 1950-01-01 to 2199-12-31: below lie the numbers that are years, such as 2026
    return value >= 18264 && value < 109574 ? dated(std::floor(value), 1) : bad(Reason::bare_number_for_date);
  case Kind::time:
    return value > 0 && value < 1 ? dated(value, 1.0 / 1440) : bad(Reason::bare_number_for_time);
  case Kind::truth:
    return value == 0 || value == 1 ? dated(value, 0) : bad(Reason::not_yes_or_no);
  default:
    return bare_number(value, 0, kind, assume);
  }
}

Quantity read_date_cell(double serial, Kind kind) {
  if (!std::isfinite(serial))
    return bad(Reason::not_finite);
  const double day = std::floor(serial);
  const bool time_only = day == 0;
  if (kind == Kind::date)
    return time_only          ? bad(mismatch(Found::time, kind))
           : !date_of(serial) ? bad(Reason::no_such_date)
                              : dated(day, 1);
  if (kind == Kind::time)
    return time_only || serial != day ? dated(serial - day, 1.0 / 1440) : bad(mismatch(Found::date, kind));
  return bad(mismatch(time_only && serial != 0 ? Found::time : Found::date, kind));
}

bool plain_number_kind(Kind kind) {
  return kind != Kind::date && kind != Kind::time && kind != Kind::truth;
}

Unit unit_for(const ReadOptions& options) {
  return options.assume == Unit::none ? usual_unit(options.kind) : options.assume;
}

} // namespace

Quantity read(std::string_view text, const ReadOptions& options) {
  const Kind kind = options.kind;
  const Unit assume = unit_for(options);
  if (!fits(assume, kind))
    return bad(Reason::assumed_unit);
  if (plain_number_kind(kind))
    if (const auto number = figures_only(text))
      return bare_number(number->value, number->step, kind, assume);
  const Folded folded(text);
  if (folded.trouble() != Reason::none)
    return bad(folded.trouble());
  const std::string_view plain = folded.text();
  if (plain.empty())
    return blank();
  if (!is_digit(plain.front()) || kind == Kind::truth)
    if (const auto phrase = doubted_phrase(plain, kind, assume))
      return *phrase;
  if (error_text(plain))
    return bad(Reason::error_value);
  const Cursor start{plain.data()};
  switch (kind) {
  case Kind::date:
    return named_stranger(read_date(start, options.date_order), plain, kind);
  case Kind::time: {
    const Quantity q = read_time(start, options.date_order);
    const bool a_date = q.status == Status::bad && read_date(start, options.date_order).status != Status::bad;
    return a_date ? bad(mismatch(Found::date, kind)) : named_stranger(q, plain, kind);
  }
  case Kind::truth:
    return named_stranger(bad(Reason::not_yes_or_no), plain, kind);
  case Kind::count:
    if (const auto number = number_word(plain))
      return bare_number(*number, 1, kind, assume);
    break;
  default:
    break;
  }
  const Quantity q = read_measure(start, kind, assume);
  return q.status == Status::bad ? dated_stranger(q, plain, kind) : q;
}

Quantity read(const Cell& cell, const ReadOptions& options) {
  switch (cell.kind()) {
  case CellKind::empty:
    return blank();
  case CellKind::text:
    return read(std::string_view{cell.text()}, options);
  case CellKind::error:
    return bad(Reason::error_value);
  case CellKind::date:
    return read_date_cell(cell.number(), options.kind);
  case CellKind::number: {
    const Unit assume = unit_for(options);
    return fits(assume, options.kind) ? read_number_cell(cell.number(), options.kind, assume)
                                      : bad(Reason::assumed_unit);
  }
  }
  return blank();
}

double in_unit(const Quantity& quantity, Unit unit) {
  return convert(quantity.written, quantity.unit, unit);
}

double high_in_unit(const Quantity& quantity, Unit unit) {
  // One value: by the same step as in_unit, so that the two agree to the last bit.
  return quantity.si_high == quantity.si ? in_unit(quantity, unit) : from_si(quantity.si_high, unit);
}

} // namespace wetspell
