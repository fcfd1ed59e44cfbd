#include "quantity/degrees.hpp"

#include <charconv>
#include <cmath>

namespace wetspell {

namespace {

void trim(std::string_view& text) {
  while (!text.empty() && (text.front() == ' ' || text.front() == '\t' || text.front() == '\r'))
    text.remove_prefix(1);
  while (!text.empty() && (text.back() == ' ' || text.back() == '\t' || text.back() == '\r'))
    text.remove_suffix(1);
}

/// 1 for the letter of north or east, -1 of south or west, 0 for any other.
int letter(char c, Axis axis) {
  const char small = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  if (small == (axis == Axis::latitude ? 'n' : 'e'))
    return 1;
  return small == (axis == Axis::latitude ? 's' : 'w') ? -1 : 0;
}

} // namespace

std::optional<double> read_degrees(std::string_view text, Axis axis) {
  constexpr std::string_view sign = "°";
  trim(text);
  int side = 0;
  if (!text.empty() && (side = letter(text.front(), axis)) != 0)
    text.remove_prefix(1);
  else if (!text.empty() && (side = letter(text.back(), axis)) != 0)
    text.remove_suffix(1);
  trim(text);
  if (text.ends_with(sign))
    text.remove_suffix(sign.size());
  trim(text);
  const bool plus = text.starts_with('+');
  if (plus)
    text.remove_prefix(1);
  if (text.empty() || ((side != 0 || plus) && text.front() == '-') || (side != 0 && plus))
    return std::nullopt;
  double degrees = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), degrees);
  if (error != std::errc{} || end != text.data() + text.size() || !std::isfinite(degrees) ||
      std::abs(degrees) > (axis == Axis::latitude ? 90 : 180))
    return std::nullopt;
  return side < 0 ? -degrees : degrees;
}

} // namespace wetspell
