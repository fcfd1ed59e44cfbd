#include "estimate/say_figure.hpp"

#include "measure/distribution.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace wetspell {

namespace {

bool never_negative(Figured figured) {
  switch (figured) {
  case Figured::depth:
  case Figured::length:
  case Figured::area:
  case Figured::volume:
  case Figured::share:
  case Figured::count:
  case Figured::days:
    return true;
  case Figured::temperature:
  case Figured::temperature_apart:
  case Figured::depth_a_day:
  case Figured::number:
  case Figured::date:
  case Figured::words:
    break;
  }
  return false;
}

} // namespace

Figure cannot_say(const FigureSpec& spec, std::string why, std::size_t n) {
  Figure figure;
  figure.spec = &spec;
  figure.n = n;
  figure.note = std::move(why);
  return figure;
}

Figure counted_figure(const FigureSpec& spec, std::size_t count) {
  return plain_figure(spec, static_cast<double>(count), count);
}

Figure plain_figure(const FigureSpec& spec, double si, std::size_t n) {
  Figure figure;
  figure.spec = &spec;
  figure.value = si;
  figure.n = n;
  return figure;
}

Figure measured_figure(const FigureSpec& spec, const Measured& measured, std::size_t n, double level) {
  if (!(measured.uncertainty > 0))
    return plain_figure(spec, measured.value, n);
  const double half = normal_factor(level) * measured.uncertainty;
  return interval_figure(spec, measured.value, measured.value - half, measured.value + half, n, level);
}

Figure interval_figure(const FigureSpec& spec, double si, std::optional<double> low,
                       std::optional<double> high, std::size_t n, double level) {
  Figure figure = plain_figure(spec, si, n);
  figure.low = low && never_negative(spec.figured) ? std::max(0.0, *low) : low;
  figure.high = high && spec.figured == Figured::share ? std::min(1.0, *high) : high;
  figure.level = low || high ? level : 0;
  return figure;
}

Figure with_note(Figure figure, std::string note) {
  figure.note = std::move(note);
  return figure;
}

std::string too_few(std::size_t n, std::string_view one, std::string_view many) {
  if (n == 0)
    return fmt::format("no {}", one);
  constexpr std::array<std::string_view, 5> numbers{"", "one", "two", "three", "four"};
  return n < numbers.size() ? fmt::format("{} {}: no estimate", numbers[n], n == 1 ? one : many)
                            : fmt::format("{} {}: no estimate", n, many);
}

} // namespace wetspell
