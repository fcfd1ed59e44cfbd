#include "quantity/read_measure.hpp"

#include "quantity/amount.hpp"
#include "quantity/decimal.hpp"
#include "quantity/fold.hpp"
#include "quantity/marks.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace wetspell {

namespace {

bool walked(Unit unit) {
  return unit == Unit::pace || unit == Unit::step;
}

/// Why no number stands where one should begin.
Reason why_no_number(Cursor c) {
  if (const Reason letters = letters_for_digits(c, false); letters != Reason::none)
    return letters;
  if (c.peek() == 'o' && c.next() == '\0')
    return Reason::letter_o;
  if (c.peek() == '-') {
    Cursor after{c.at + 1};
    if (const Reason letters = letters_for_digits(after, false); letters != Reason::none)
      return letters;
    after.skip_space();
    if (number_ahead(after))
      return Reason::dash_before_number;
  }
  bool letters = false;
  for (; !c.done(); ++c.at) {
    if (is_digit(c.peek()))
      return letters ? Reason::words_before : Reason::not_a_number;
    letters = letters || is_letter(c.peek());
  }
  return letters ? Reason::word_not_number : Reason::not_a_number;
}

/// Why the text goes on after what was read.
Reason why_more(Cursor c, const Amount& last) {
  c.skip_space();
  if (c.peek() == sign::times || c.peek() == '*' ||
      ((c.peek() == 'x' || c.words(1) == "by") && Cursor{c.at + 1}.word().size() <= 1)) {
    Cursor after{c.at + (c.words(1) == "by" ? 2 : 1)};
    after.skip_space();
    if (number_ahead(after))
      return Reason::product;
  }
  if (c.peek() == '.')
    return Reason::not_a_number; // 25..5
  bool letters = false;
  const Cursor rest = c;
  for (; !c.done(); ++c.at) {
    if (is_digit(c.peek()))
      return letters ? Reason::words_after : Reason::two_values;
    letters = letters || is_letter(c.peek());
  }
  const auto word = rest.word();
  if (word.size() + rest.at == c.at && (word == "to" || word == "or" || word == "and"))
    return Reason::number_unfinished;
  if (letters && !last.typed && word.size() + rest.at == c.at)
    return Reason::unknown_unit;
  if (letters)
    return Reason::words_after;
  return rest.peek() == '-' || rest.peek() == '/' || rest.peek() == ',' ? Reason::number_unfinished
                                                                        : Reason::not_a_number;
}

Quantity measured(const Decimal& decimal, double written, double step, Unit unit, bool typed, Status status) {
  const UnitSpec& u = spec(unit);
  Quantity q;
  q.status = status;
  q.written = written;
  q.unit = unit;
  q.unit_typed = typed;
  q.resolution = static_cast<float>(step * u.numerator) / static_cast<float>(u.denominator);
  q.si = q.si_high = scaled(decimal, u.zero, u.numerator, u.denominator, 0);
  return q;
}

Quantity measured(const Amount& a, Status status) {
  return measured(decimal_of(a.written), a.written, a.step, a.unit, a.typed, status);
}

/// What cannot be meant, whoever wrote it.
Reason impossible(const Quantity& q, Kind kind) {
  if (!std::isfinite(q.si) || !(std::fabs(q.written) < 1e15))
    return Reason::too_large;
  if (kind == Kind::temperature && q.si < -273.15)
    return Reason::below_absolute_zero;
  if (kind == Kind::count && q.written < 0)
    return Reason::negative_count;
  return Reason::none;
}

Quantity checked(const Quantity& q, Kind kind) {
  const Reason reason = impossible(q, kind);
  return reason == Reason::none ? q : bad(reason);
}

/// Paces and steps: a count, and whose they are decides later how long they are.
Quantity paced(const Amount& a, Unit unit, const Marks& marks, bool two) {
  if (two || marks.over || marks.under || a.written < 0 || a.fraction || !(a.written < 1e15))
    return bad(Reason::paces_not_one_number);
  Quantity q;
  q.status = unit == Unit::pace ? Status::paces : Status::steps;
  q.written = a.written;
  q.unit = unit;
  q.unit_typed = a.typed;
  return q;
}

/// The unit of an amount in a column: as typed, that of its neighbour, or the column's. Reason when it cannot
/// be.
Reason settle_unit(Amount& a, const Amount* neighbour, Kind kind, Unit assume) {
  if (kind == Kind::percent && !a.typed && a.fraction && neighbour == nullptr) {
    a.unit = Unit::one; // 3/4 is three quarters, nobody means 0.75 %
    return Reason::none;
  }
  if (!a.typed && neighbour != nullptr && neighbour->typed) {
    if (neighbour->compound)
      return Reason::range_unit_unclear;
    a.unit = neighbour->unit;
  } else if (!a.typed) {
    a.unit = assume;
  }
  if (!fits(a.unit, kind))
    return mismatch(found_by(a.unit), kind);
  if (a.slashed && kind == Kind::temperature)
    return Reason::slash;
  if (kind == Kind::count && !a.whole && a.written != std::floor(a.written))
    return Reason::not_whole;
  return Reason::none;
}

Quantity one_amount(Amount a, const Marks& marks, Kind kind, Unit assume) {
  if (const Reason r = settle_unit(a, nullptr, kind, assume); r != Reason::none)
    return bad(r);
  if ((marks.over && marks.under) || marks.between || marks.from)
    return bad(Reason::number_unfinished);
  if (walked(a.unit))
    return paced(a, a.unit, marks, false);
  const Status status = marks.over    ? Status::over
                        : marks.under ? Status::under
                        : marks.about ? Status::about
                                      : Status::value;
  Quantity q = measured(a, status);
  if (const Reason r = impossible(q, kind); r != Reason::none)
    return bad(r);
  if (status == Status::over)
    q.si_high = Quantity::no_value;
  return q;
}

Quantity two_amounts(Amount a, Amount b, const Marks& marks, Kind kind, Unit assume) {
  const Amount first = a;
  if (const Reason r = settle_unit(a, &b, kind, assume); r != Reason::none)
    return bad(r);
  if (const Reason r = settle_unit(b, first.typed && !first.compound ? &first : nullptr, kind, assume);
      r != Reason::none)
    return bad(r);
  if (walked(a.unit) || walked(b.unit))
    return paced(a, a.unit, marks, true);
  if (marks.over || marks.under)
    return bad(Reason::two_values);
  Quantity low = measured(a, Status::range);
  low.unit_typed = first.typed || b.typed;
  const Quantity high = measured(b, Status::range);
  for (const Quantity& q : {low, high})
    if (const Reason r = impossible(q, kind); r != Reason::none)
      return bad(r);
  if (low.si > high.si)
    return bad(Reason::range_falls);
  low.si_high = high.si;
  low.resolution = std::max(low.resolution, high.resolution);
  return low;
}

/// 25 ± 1: what is meant lies between 24 and 26.
Quantity plus_minus(Amount a, Amount b, const Marks& marks, Kind kind, Unit assume) {
  const bool other_unit = a.typed && b.typed && a.unit != b.unit;
  if (b.written < 0 || other_unit || a.fraction || marks.over || marks.under)
    return bad(Reason::two_values);
  a.unit = a.typed ? a.unit : b.unit;
  a.typed = a.typed || b.typed;
  if (const Reason r = settle_unit(a, nullptr, kind, assume); r != Reason::none)
    return bad(r);
  if (walked(a.unit))
    return bad(Reason::paces_not_one_number);
  // Sum and difference of short decimals, taken on their digits so that 17.8 - 0.3 is 17.5.
  const Decimal middle = decimal_of(a.written);
  const Decimal reach = decimal_of(b.written);
  const double scale = middle.exact && reach.exact ? std::max(middle.scale, reach.scale) : 1;
  const auto digits = [scale](const Decimal& d) { return d.digits * (scale / d.scale); };
  Amount low = a;
  Amount high = a;
  low.written = (digits(middle) - digits(reach)) / scale;
  high.written = (digits(middle) + digits(reach)) / scale;
  return two_amounts(low, high, {}, kind, assume);
}

} // namespace

Quantity bad(Reason reason) {
  Quantity q;
  q.status = Status::bad;
  q.reason = reason;
  return q;
}

Quantity bare_number(double value, double step, Kind kind, Unit assume) {
  if (!std::isfinite(value))
    return bad(Reason::not_finite);
  if (kind == Kind::count && value != std::floor(value))
    return bad(Reason::not_whole);
  if (walked(assume)) {
    Amount a;
    a.written = value;
    return paced(a, assume, {}, false);
  }
  const Decimal d = decimal_of(value);
  return checked(measured(d, value, step > 0 || !d.exact ? step : 1 / d.scale, assume, false, Status::value),
                 kind);
}

Quantity read_measure(Cursor c, Kind kind, Unit assume) {
  Marks marks = read_before(c, kind);
  if (marks.trouble != Reason::none)
    return bad(marks.trouble);
  if (!amount_ahead(c))
    return bad(why_no_number(c));
  Amount a = read_amount(c, kind);
  if (a.trouble != Reason::none)
    return bad(a.trouble);
  if (marks.minus)
    a.written = -a.written;
  Amount b;
  Joint joined = Joint::none;
  while (!c.done()) {
    if (c.skip(' ') || take_after(c, marks, kind) || take_late_unit(c, joined == Joint::none ? a : b, kind))
      continue;
    if (joined != Joint::none || (joined = read_joint(c, marks)) == Joint::none)
      return bad(why_more(c, joined == Joint::none ? a : b));
    b = read_amount(c, kind);
    if (b.trouble != Reason::none)
      return bad(b.trouble);
  }
  switch (joined) {
  case Joint::range:
    return two_amounts(a, b, marks, kind, assume);
  case Joint::plus_minus:
    return plus_minus(a, b, marks, kind, assume);
  case Joint::none:
    break;
  }
  return one_amount(a, marks, kind, assume);
}

} // namespace wetspell
