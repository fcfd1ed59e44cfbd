#include "audit/place_temperatures.hpp"

#include <algorithm>
#include <array>
#include <span>
#include <string>
#include <string_view>

namespace wetspell {

namespace {

// Not "inlet" and "outlet": the water that runs there may be meant.
constexpr std::array<std::string_view, 24> places{"left",  "right", "mid",   "middle", "centre", "center",
                                                  "north", "south", "east",  "west",   "n",      "s",
                                                  "e",     "w",     "edge",  "edges",  "shore",  "bank",
                                                  "near",  "far",   "inner", "outer",  "deep",   "shallow"};

bool names_temperature(const std::string& words) {
  const HeadingGuess guess = guess_heading(words);
  return guess.best() >= known_heading && guess.matches.front().field == Field::visit_temperature_mean;
}

constexpr std::array<std::string_view, 4> sides_of_pool{"edge", "edges", "shore", "bank"};

bool is_one_of(std::span<const std::string_view> words, std::string_view word) {
  return std::find(words.begin(), words.end(), word) != words.end();
}

bool is_place(std::string_view word) {
  return is_one_of(places, word);
}

/// What a heading says beside one place; nothing where it names none or several, or no temperature.
std::string beside_place(const Column& column) {
  std::string rest;
  std::size_t named = 0;
  std::size_t sides = 0;
  std::size_t ends = 0;
  for (const std::string& word : words_of(column.heading())) {
    if (is_one_of(sides_of_pool, word))
      ++sides;
    else if (word == "end" || word == "side")
      ++ends;
    else if (is_place(word))
      ++named;
    else
      rest += (rest.empty() ? "" : " ") + word;
  }
  // "far edge" and "near end" are one place, an end without more is none.
  const bool one = named == 1 ? sides + ends <= 1 : named == 0 && sides == 1 && ends == 0;
  return one && names_temperature(rest) && !column.says_mean() ? rest : std::string();
}

} // namespace

bool place_of_temperature(const std::string& group, const std::string& line) {
  const auto words = words_of(line);
  return words.size() == 1 && is_place(words.front()) && names_temperature(group);
}

std::vector<std::size_t> temperatures_by_place(const std::vector<Column>& columns) {
  constexpr double most = 0.5; // of the cells
  std::vector<std::size_t> group;
  std::string before;
  bool several = false;
  for (std::size_t at = 0; at < columns.size(); ++at) {
    std::string rest = beside_place(columns[at]);
    if (!rest.empty() && columns[at].as(Kind::temperature).share() >= most) {
      several = several || (!group.empty() && (group.back() + 1 != at || rest != before));
      group.push_back(at);
    }
    before = std::move(rest);
  }
  return several || group.size() < 2 || group.size() > 3 ? std::vector<std::size_t>() : group;
}

} // namespace wetspell
