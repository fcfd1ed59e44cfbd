#include "quantity/amount.hpp"

#include "quantity/fold.hpp"
#include "quantity/unit_words.hpp"

#include <cmath>
#include <numeric>
#include <optional>

namespace wetspell {

namespace {

/// The denominators that tapes and sticks carry and people write; 5/6 may as well be two readings.
bool usual_denominator(double d) {
  return d == 2 || d == 3 || d == 4 || d == 8 || d == 16 || d == 32 || d == 64;
}

bool slash_ahead(const Cursor& c) {
  return (c.peek() == '/' || c.peek() == sign::fraction) && is_digit(c.next());
}

struct Fraction {
  double numerator = 0;
  double denominator = 0;
  Reason trouble{};
};

/// "/8" behind the number `numerator`, which the cursor has just passed. After a plain slash only what cannot
/// be two readings is a fraction; a fraction written as one sign is certain.
Fraction read_denominator(Cursor& c, const Number& numerator) {
  const bool certain = c.peek() == sign::fraction;
  ++c.at;
  const Number d = read_number(c);
  Fraction f{numerator.value, d.value, d.trouble};
  if (f.trouble != Reason::none)
    return f;
  const bool proper = numerator.whole && d.whole && f.numerator >= 1 && f.numerator < f.denominator;
  const bool clear =
      certain || (proper && usual_denominator(f.denominator) &&
                  std::gcd(static_cast<int>(f.numerator), static_cast<int>(f.denominator)) == 1);
  if (!proper || !clear || slash_ahead(c))
    f.trouble = Reason::slash;
  return f;
}

/// Whether " 1/2" or "-1/2" follows a whole number: digits, a slash and digits again.
bool fraction_ahead(Cursor c) {
  if (!c.skip(' ') && !c.skip('-'))
    return false;
  const char* first = c.at;
  while (is_digit(c.peek()))
    ++c.at;
  return c.at != first && slash_ahead(c);
}

/// Number, mixed number or fraction, without a unit.
Amount read_mixed(Cursor& c) {
  Amount a;
  const Number n = read_number(c);
  a.written = n.value;
  a.step = n.step;
  a.whole = n.whole;
  a.trouble = n.trouble;
  if (a.trouble != Reason::none)
    return a;
  if (slash_ahead(c)) {
    const char sign_of_fraction = c.peek();
    const Fraction f = read_denominator(c, n);
    a.written = f.numerator / f.denominator;
    a.step = 1 / f.denominator;
    a.slashed = sign_of_fraction == '/';
    a.fraction = true;
    a.whole = false;
    a.trouble = f.trouble;
  } else if (fraction_ahead(c)) {
    ++c.at;
    const Fraction f = read_denominator(c, read_number(c));
    a.written = (n.value * f.denominator + f.numerator) / f.denominator;
    a.step = 1 / f.denominator;
    a.whole = false;
    a.trouble = !n.whole && f.trouble == Reason::none ? Reason::fraction_and_decimals : f.trouble;
  }
  return a;
}

/// Whether the 2 here squares the unit before it: "ft2" and an end, but not the "2 in" of "3 ft2 in". Among
/// volumes a 3 cubes it in the same way; elsewhere "2 ft3" are feet and inches.
bool raises(Cursor c, Kind kind) {
  if (!c.skip('2') && !(kind == Kind::volume && c.skip('3')))
    return false;
  if (is_digit(c.peek()) || is_letter(c.peek()) || c.peek() == '.' || c.peek() == ',' || c.peek() == '/' ||
      c.peek() == '"' || c.peek() == '\'')
    return false;
  c.skip_space();
  const auto after = unit_word(c.word());
  return !after && !is_digit(c.peek());
}

std::optional<Unit> known_unit(std::string_view text, std::size_t& length) {
  const auto unit = text.empty() ? std::nullopt : unit_word(text);
  if (unit)
    length = text.size();
  return unit;
}

/// A quote, degree or per cent sign.
std::optional<Unit> sign_unit(const Cursor& c, std::size_t& length) {
  length = 1;
  switch (c.peek()) {
  case '"':
    return Unit::inch;
  case '%':
    return Unit::percent;
  case '\'':
    if (c.next() == '\'') {
      length = 2;
      return Unit::inch;
    }
    if (c.next() == '^' && (c.at[2] == '2' || c.at[2] == '3')) {
      length = 3;
      return c.at[2] == '2' ? Unit::square_foot : Unit::cubic_foot;
    }
    return Unit::foot;
  case sign::degree: {
    Cursor after{c.at + 1};
    after.skip_space();
    const auto word = after.word();
    const auto unit = word.empty() ? std::nullopt : unit_word(word);
    if (unit && spec(*unit).kind == Kind::temperature && unit != Unit::none) {
      length = static_cast<std::size_t>(after.at - c.at) + word.size();
      return unit;
    }
    return Unit::none;
  }
  default:
    return std::nullopt;
  }
}

/// The longest unit of up to three words that starts here, with its length.
std::optional<Unit> unit_here(const Cursor& c, Kind kind, std::size_t& length) {
  if (const auto unit = sign_unit(c, length))
    return unit;
  const auto word = c.word();
  if (word.empty())
    return std::nullopt;
  Cursor after{c.at + word.size()};
  if (after.peek() == '^' || raises(after, kind)) {
    after.at += after.peek() == '^' ? 1 : 0;
    while (is_digit(after.peek()))
      ++after.at;
    return known_unit({c.at, static_cast<std::size_t>(after.at - c.at)}, length);
  }
  if (after.peek() == ' ') {
    if (word == "of" && kind == Kind::percent && after.skip(" 1") && !number_ahead(after))
      return known_unit({c.at, static_cast<std::size_t>(after.at - c.at)}, length);
    if (const auto unit = known_unit(c.words(2), length))
      return unit;
  }
  // The degree sign typed as a small o: only apart from the digits, where it cannot be a zero.
  if (kind == Kind::temperature && (word == "oc" || word == "of")) {
    length = word.size();
    return word == "oc" ? Unit::celsius : Unit::fahrenheit;
  }
  return known_unit(word, length);
}

bool read_unit(Cursor& c, Amount& a, Kind kind) {
  Cursor ahead = c;
  if (!ahead.skip(' ') && ahead.peek() == '-' && is_letter(ahead.next()))
    ++ahead.at; // 25-inch
  std::size_t length = 0;
  const auto unit = unit_here(ahead, kind, length);
  if (!unit)
    return false;
  c.at = ahead.at + length;
  a.unit = *unit;
  a.typed = *unit != Unit::none;
  return true;
}

/// The next smaller unit of a compound and how many of it make one.
struct Smaller {
  Unit unit;
  double count;
};

std::optional<Smaller> smaller(Unit unit) {
  switch (unit) {
  case Unit::yard:
    return Smaller{Unit::foot, 3};
  case Unit::foot:
    return Smaller{Unit::inch, 12};
  case Unit::metre:
    return Smaller{Unit::centimetre, 100};
  case Unit::centimetre:
    return Smaller{Unit::millimetre, 10};
  default:
    return std::nullopt;
  }
}

/// Whether the text after a smaller amount goes on in a way that no compound does.
bool goes_on(const Cursor& c) {
  return number_ahead(c) || (c.peek() == ' ' && number_ahead({c.at + 1}));
}

/// "3 in" after "2 ft": adds it when it is one, and moves the cursor only then.
void read_smaller(Cursor& c, Amount& a, Kind kind) {
  const auto next = smaller(a.unit);
  if (!next || !a.whole)
    return;
  Cursor ahead = c;
  const bool comma = ahead.skip(',');
  ahead.skip_space();
  const bool dash = ahead.skip('-');
  if (dash)
    ahead.skip_space();
  if (!comma && !dash && ahead.skip("and "))
    ahead.skip_space();
  if (!is_digit(ahead.peek()) && !number_ahead(ahead))
    return;
  Amount low = read_mixed(ahead);
  if (low.trouble == Reason::none)
    read_unit(ahead, low, kind);
  // A bare number after feet is inches, as in 5'3; after other units it must say what it is.
  const bool bare_inches = !low.typed && a.unit == Unit::foot && !dash && !comma && !goes_on(ahead);
  if (low.trouble != Reason::none || (low.unit != next->unit && !bare_inches)) {
    a.trouble = dash || comma ? Reason::none : low.trouble;
    return;
  }
  if (dash && a.written * next->count <= low.written) {
    if (a.written == 0)
      a.trouble = Reason::compound_or_range; // 0'-6"
    return;                                  // 2 ft - 30 in: a range
  }
  if (low.written >= next->count) {
    a.trouble = a.unit == Unit::foot ? Reason::inches_over_foot : Reason::small_unit_over_large;
    return;
  }
  a.written = a.written * next->count + low.written;
  a.step = low.step;
  a.unit = next->unit;
  a.compound = true;
  a.whole = low.whole;
  c = ahead;
}

} // namespace

bool take_late_unit(Cursor& c, Amount& a, Kind kind) {
  Cursor ahead = c;
  if (a.typed || !read_unit(ahead, a, kind) || !a.typed)
    return false;
  c = ahead;
  return true;
}

bool amount_ahead(Cursor c) {
  c.skip('-');
  return number_ahead(c);
}

Amount read_amount(Cursor& c, Kind kind) {
  const bool negative = c.skip('-');
  Amount a = read_mixed(c);
  if (a.trouble == Reason::none)
    read_unit(c, a, kind);
  for (Unit before = Unit::none; a.trouble == Reason::none && a.typed && a.unit != before;) {
    before = a.unit;
    read_smaller(c, a, kind);
  }
  if (negative)
    a.written = -a.written;
  return a;
}

} // namespace wetspell
