#include "check/size_lines.hpp"

#include "check/say.hpp"
#include "quantity/print.hpp"

#include <fmt/format.h>

namespace wetspell {

std::string line_words(const SeasonView& view, const Visit& visit, const Quantity& line) {
  if (const auto count = line_count(view.season, visit, line)) {
    return fmt::format("{} {}", plain(count->count, 2),
                       count->counted == CountedAs::steps ? "steps" : "paces");
  }
  return line.has_value() ? say(view, Kind::length, line.si) : "nothing";
}

std::string day_words(const Quantity& date) {
  return date.has_value() ? print_date(date.si) : "an earlier visit";
}

} // namespace wetspell
