#include "quantity/scan.hpp"

#include "quantity/fold.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstdint>

namespace wetspell {

namespace {

constexpr std::array<double, 23> powers_of_ten{1,    1e1,  1e2,  1e3,  1e4,  1e5,  1e6,  1e7,
                                               1e8,  1e9,  1e10, 1e11, 1e12, 1e13, 1e14, 1e15,
                                               1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22};

/// The digits of a number in groups, as they stand between points, commas and spaces that do not break.
struct Groups {
  std::uint64_t digits = 0; ///< all digits as one integer
  int count = 0;            ///< digits in all
  int first = 0;            ///< digits in the first group
  int last = 0;             ///< digits in the last group
  int separators = 0;
  bool threes = true; ///< every group between the first and the last holds three digits
  bool leading_zero = false;
  bool same_but_last = true; ///< all separators but the last are one and the same
  char first_separator = '\0';
  char last_separator = '\0';
};

bool separates(const Cursor& c) {
  return (c.peek() == '.' || c.peek() == ',' || c.peek() == sign::group) && is_digit(c.next());
}

Groups read_groups(Cursor& c) {
  Groups g;
  g.leading_zero = c.peek() == '0';
  for (;;) {
    int here = 0;
    for (; is_digit(c.peek()); ++c.at, ++here)
      if (g.count + here < 19)
        g.digits = g.digits * 10 + static_cast<std::uint64_t>(c.peek() - '0');
    g.count += here;
    g.last = here;
    if (g.separators == 0)
      g.first = here;
    if (!separates(c))
      return g;
    if (g.separators > 0) {
      g.threes = g.threes && here == 3;
      g.same_but_last = g.same_but_last && g.last_separator == g.first_separator;
    } else {
      g.first_separator = c.peek();
    }
    g.last_separator = c.peek();
    ++g.separators;
    ++c.at;
  }
}

/// How many of the digits are decimals, or why nobody can tell.
Reason decimals_of(const Groups& g, int& decimals) {
  const bool could_group = g.first >= 1 && g.first <= 3 && !g.leading_zero;
  const bool one_kind = g.same_but_last && g.first_separator == g.last_separator;
  decimals = 0;
  if (g.separators == 0)
    return Reason::none;
  if (g.separators == 1) {
    if (g.last_separator == sign::group)
      return could_group && g.last == 3 ? Reason::none : Reason::two_values;
    if (g.last_separator == ',' && could_group && g.last == 3)
      return Reason::comma_unclear;
    decimals = g.last;
    return Reason::none;
  }
  if (!could_group || !g.threes || !g.same_but_last)
    return g.first_separator == ',' && g.last_separator == ',' ? Reason::two_values : Reason::not_a_number;
  if (one_kind)
    return g.last == 3 ? Reason::none : Reason::not_a_number;
  if (g.last_separator == sign::group)
    return Reason::two_values;
  decimals = g.last;
  return Reason::none;
}

/// The power of ten behind an "e", which moves the cursor on only when it is one.
int read_exponent(Cursor& c) {
  if (c.peek() != 'e')
    return 0;
  const bool negative = c.next() == '-';
  const char* at = c.at + 1 + (c.next() == '-' || c.next() == '+' ? 1 : 0);
  if (!is_digit(*at))
    return 0;
  int exponent = 0;
  for (; is_digit(*at); ++at)
    exponent = std::min(exponent * 10 + (*at - '0'), 999);
  c.at = at;
  return negative ? -exponent : exponent;
}

double scaled_by_ten(std::uint64_t digits, int exponent) {
  constexpr std::uint64_t exact = std::uint64_t{1} << 53U;
  if (digits <= exact && exponent >= -22 && exponent <= 22) {
    const auto value = static_cast<double>(digits);
    return exponent < 0 ? value / powers_of_ten[static_cast<std::size_t>(-exponent)]
                        : value * powers_of_ten[static_cast<std::size_t>(exponent)];
  }
  std::array<char, 32> buffer{};
  char* end = std::to_chars(buffer.data(), buffer.data() + 20, digits).ptr;
  *end++ = 'e';
  end = std::to_chars(end, buffer.data() + buffer.size(), exponent).ptr;
  double value = 0;
  const auto result = std::from_chars(buffer.data(), end, value);
  return result.ec == std::errc{} ? value : Quantity::no_value;
}

} // namespace

bool Cursor::skip(std::string_view text) {
  const char* p = at;
  for (const char c : text)
    if (*p++ != c) // a zero byte differs from every character of a text
      return false;
  at = p;
  return true;
}

std::string_view Cursor::word() const {
  const char* end = at;
  while (is_letter(*end) || (*end == '\'' && end > at && is_letter(end[1])))
    ++end;
  return {at, static_cast<std::size_t>(end - at)};
}

std::string_view Cursor::words(std::size_t count) const {
  Cursor c = *this;
  for (std::size_t i = 0; i < count; ++i) {
    if (i > 0 && !c.skip(' ') && !c.skip('-'))
      return {};
    const auto w = c.word();
    if (w.empty())
      return {};
    c.at += w.size();
  }
  return {at, static_cast<std::size_t>(c.at - at)};
}

bool number_ahead(Cursor c) {
  return is_digit(c.peek()) || ((c.peek() == '.' || c.peek() == ',') && is_digit(c.next()));
}

Number read_number(Cursor& c) {
  Number n;
  Groups g;
  int decimals = 0;
  if (is_digit(c.peek())) {
    g = read_groups(c);
    n.trouble = decimals_of(g, decimals);
  } else { // .5
    ++c.at;
    g = read_groups(c);
    decimals = g.count;
    if (g.separators > 0)
      n.trouble = Reason::not_a_number;
    g.first = 0;
  }
  n.digits = g.first;
  n.whole = decimals == 0;
  if (n.trouble == Reason::none && c.peek() == '.' && !is_digit(c.next()) && c.next() != '.')
    ++c.at; // the full stop of a sentence: "25."
  if (n.trouble == Reason::none)
    n.trouble = letters_for_digits(c, true);
  if (n.trouble == Reason::none && g.count > 18)
    n.trouble = Reason::too_many_digits;
  if (n.trouble != Reason::none)
    return n;
  const int exponent = read_exponent(c);
  n.value = scaled_by_ten(g.digits, exponent - decimals);
  n.step = scaled_by_ten(1, exponent - decimals);
  n.whole = n.whole && exponent >= 0;
  if (!(n.value < 1e300) || !(n.step < 1e300)) // also what from_chars found out of range, and 0e999
    n.trouble = Reason::too_large;
  return n;
}

std::optional<Number> figures_only(std::string_view text) {
  if (text.empty() || text.size() > 16 || !is_digit(text.front()) || !is_digit(text.back()))
    return std::nullopt;
  std::uint64_t digits = 0;
  std::size_t point = 0; // never the first character
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (is_digit(text[i]))
      digits = digits * 10 + static_cast<std::uint64_t>(text[i] - '0');
    else if (text[i] == '.' && point == 0)
      point = i;
    else
      return std::nullopt;
  }
  if (text.size() == 16 && point == 0)
    return std::nullopt;
  const double scale = powers_of_ten[point == 0 ? 0 : text.size() - 1 - point];
  Number n;
  n.value = static_cast<double>(digits) / scale;
  n.step = 1 / scale;
  n.whole = point == 0;
  return n;
}

Reason letters_for_digits(Cursor c, bool after_digit) {
  bool o = false;
  bool l = false;
  bool digit = after_digit;
  for (; is_digit(c.peek()) || c.peek() == 'o' || c.peek() == 'l' || c.peek() == 'i'; ++c.at) {
    o = o || c.peek() == 'o';
    l = l || c.peek() == 'l' || c.peek() == 'i';
    digit = digit || is_digit(c.peek());
  }
  const bool degree = after_digit && o && !l && (c.peek() == 'c' || c.peek() == 'f') && !is_letter(c.next());
  if (!digit || (is_letter(c.peek()) && !degree))
    return Reason::none;
  if (o)
    return Reason::letter_o;
  return l ? Reason::letter_l : Reason::none;
}

} // namespace wetspell
