#include "quantity/answer.hpp"

#include "quantity/fold.hpp"
#include "quantity/print.hpp"
#include "quantity/reason.hpp"
#include "quantity/scan.hpp"

#include <fmt/format.h>

#include <array>
#include <cmath>
#include <cstddef>

namespace wetspell {

namespace {

AnswerValue value(double si, Kind kind) {
  if (!std::isfinite(si))
    return std::monostate{};
  if (kind == Kind::date)
    return print_date(si);
  if (kind == Kind::time)
    return print_time(si);
  return si;
}

/// The last word of the text: an unknown unit is refused only where nothing follows it.
std::string_view last_word(std::string_view folded) {
  std::size_t start = folded.size();
  while (start > 0 && !is_letter(folded[start - 1]))
    --start;
  const std::size_t end = start;
  while (start > 0 && is_letter(folded[start - 1]))
    --start;
  return folded.substr(start, end - start);
}

std::string_view unit_words_of(Unit unit) {
  return unit == Unit::one ? spec(unit).name : symbol(unit);
}

} // namespace

std::string_view name(Status status) {
  constexpr std::array<std::string_view, 10> names{"missing", "missing", "value", "about", "over",
                                                   "under",   "range",   "paces", "steps", "bad"};
  return names[static_cast<std::size_t>(status)];
}

std::string reason_in_words(std::string_view text_typed, const Quantity& quantity) {
  const auto words = text(quantity.reason);
  if (quantity.reason != Reason::unknown_unit)
    return std::string(words);
  const Folded folded(text_typed);
  const auto word = last_word(folded.text());
  const auto near = unit_word_near(word);
  return near.empty() ? fmt::format("{} '{}'", words, word) : fmt::format("{} '{}' ({}?)", words, word, near);
}

Answer answer(std::string_view text_typed, const Quantity& quantity, Kind kind) {
  Answer a;
  a.text = text_typed;
  a.status = name(quantity.status);
  a.si = value(quantity.si, kind);
  if (quantity.status == Status::range)
    a.si_high = value(quantity.si_high, kind);
  if (quantity.status == Status::paces || quantity.status == Status::steps)
    a.count = quantity.written;
  a.unit = unit_words_of(quantity.unit);
  a.reason = reason_in_words(text_typed, quantity);
  return a;
}

} // namespace wetspell
