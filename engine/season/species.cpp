#include "season/species.hpp"

#include "quantity/calendar.hpp"
#include "season/words.hpp"

#include <fmt/format.h>

#include <array>
#include <charconv>

namespace wetspell {

namespace {

constexpr std::array catalogue{
    SpeciesSpec{"wood frog", SeenAs::egg_masses, 215, 531, 1113},
    SpeciesSpec{"wood frog", SeenAs::larvae, 315, 815, 0},
    SpeciesSpec{"wood frog", SeenAs::juveniles, 515, 1031, 0},
    SpeciesSpec{"wood frog", SeenAs::adults, 201, 1031, 0},
    SpeciesSpec{"wood frog", SeenAs::signs, 201, 531, 0},
    SpeciesSpec{"spotted salamander", SeenAs::egg_masses, 215, 630, 0},
    SpeciesSpec{"spotted salamander", SeenAs::larvae, 415, 1115, 0},
    SpeciesSpec{"spotted salamander", SeenAs::signs, 201, 531, 0},
    SpeciesSpec{"blue-spotted salamander", SeenAs::egg_masses, 215, 615, 0},
    SpeciesSpec{"blue-spotted salamander", SeenAs::larvae, 401, 1031, 0},
    SpeciesSpec{"Jefferson salamander", SeenAs::egg_masses, 201, 615, 0},
    SpeciesSpec{"Jefferson salamander", SeenAs::larvae, 401, 1031, 0},
    SpeciesSpec{"marbled salamander", SeenAs::larvae, 1001, 715, 0},
    SpeciesSpec{"marbled salamander", SeenAs::egg_masses, 815, 1231, 0},
    SpeciesSpec{"four-toed salamander", SeenAs::egg_masses, 315, 731, 0},
    SpeciesSpec{"eastern newt", SeenAs::adults, 0, 0, 0},
    SpeciesSpec{"fairy shrimp", SeenAs::adults, 1101, 630, 0},
    SpeciesSpec{"spring peeper", SeenAs::adults, 215, 1115, 0},
    SpeciesSpec{"spring peeper", SeenAs::signs, 215, 1115, 0},
    SpeciesSpec{"American toad", SeenAs::egg_masses, 315, 715, 0},
    SpeciesSpec{"American toad", SeenAs::larvae, 401, 831, 0},
    SpeciesSpec{"gray treefrog", SeenAs::signs, 401, 930, 0},
    SpeciesSpec{"gray treefrog", SeenAs::larvae, 501, 1015, 0},
    SpeciesSpec{"green frog", SeenAs::adults, 301, 1115, 0},
    SpeciesSpec{"green frog", SeenAs::larvae, 0, 0, 0},
    SpeciesSpec{"fingernail clam", SeenAs::signs, 0, 0, 0},
    SpeciesSpec{"caddisfly", SeenAs::larvae, 0, 0, 0},
    SpeciesSpec{"caddisfly", SeenAs::signs, 0, 0, 0},
};

constexpr std::array<std::string_view, 12> months{"January",   "February", "March",    "April",
                                                  "May",       "June",     "July",     "August",
                                                  "September", "October",  "November", "December"};
constexpr std::array days_in_month{31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

bool digit(char c) {
  return c >= '0' && c <= '9';
}
bool letter(char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

/// 1 to 12 for a month's name or its first three letters or more; 0 for other words.
int month_named(std::string_view word) {
  std::string buffer;
  const std::string lower(plain_word(word, buffer));
  if (lower.size() < 3)
    return 0;
  for (std::size_t i = 0; i < months.size(); ++i)
    if (plain_word(months[i], buffer).starts_with(lower))
      return static_cast<int>(i) + 1;
  return lower == "sept" ? 9 : 0;
}

int day_of_year(int month, int day) {
  const bool real =
      month >= 1 && month <= 12 && day >= 1 && day <= days_in_month[static_cast<std::size_t>(month) - 1];
  return real ? month * 100 + day : -1;
}

int number_in(std::string_view text) {
  int value = -1;
  std::from_chars(text.data(), text.data() + text.size(), value);
  return value;
}

} // namespace

std::span<const SpeciesSpec> species_catalogue() {
  return catalogue;
}

std::string day_of_year_text(int day) {
  if (day <= 0)
    return {};
  return fmt::format("{} {}", months[static_cast<std::size_t>(day / 100 - 1)], day % 100);
}

int day_of_year_from(std::string_view text) {
  std::array<std::string_view, 2> words;
  std::size_t found = 0;
  for (std::size_t i = 0; i < text.size();) {
    const auto same = digit(text[i]) ? digit : letter;
    if (!same(text[i])) {
      if (std::string_view(" -/.,").find(text[i]) == std::string_view::npos)
        return -1;
      ++i;
      continue;
    }
    std::size_t end = i;
    while (end < text.size() && same(text[end]))
      ++end;
    if (found == words.size())
      return -1;
    words[found++] = text.substr(i, end - i);
    i = end;
  }
  if (found == 1) { // 301
    const int number = digit(words[0][0]) ? number_in(words[0]) : -1;
    return number < 0 ? -1 : day_of_year(number / 100, number % 100);
  }
  if (found != 2)
    return -1;
  if (!digit(words[0][0]))
    return digit(words[1][0]) ? day_of_year(month_named(words[0]), number_in(words[1])) : -1;
  if (!digit(words[1][0]))
    return day_of_year(month_named(words[1]), number_in(words[0]));
  return day_of_year(number_in(words[0]), number_in(words[1]));
}

bool within_days(double serial, int first_day, int last_day) {
  const auto date = date_of(serial);
  if (!date)
    return false;
  const int day = static_cast<int>(date->month * 100 + date->day);
  const int from = first_day == 0 ? 101 : first_day;
  const int to = last_day == 0 ? 1231 : last_day;
  return from <= to ? day >= from && day <= to : day >= from || day <= to;
}

} // namespace wetspell
