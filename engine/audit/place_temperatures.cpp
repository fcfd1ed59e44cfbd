#include "audit/place_temperatures.hpp"

#include <algorithm>
#include <array>
#include <string>
#include <string_view>

namespace wetspell {

namespace {

// Not "inlet" and "outlet": the water that runs there may be meant.
constexpr std::array<std::string_view, 24> places{"left",  "right", "mid",   "middle", "centre", "center",
                                                  "north", "south", "east",  "west",   "n",      "s",
                                                  "e",     "w",     "edge",  "edges",  "shore",  "bank",
                                                  "near",  "far",   "inner", "outer",  "deep",   "shallow"};

/// What a heading says beside one place; nothing where it names none or several, or no temperature.
std::string beside_place(const Column& column) {
  std::string rest;
  std::size_t named = 0;
  for (const std::string& word : words_of(column.heading())) {
    if (std::find(places.begin(), places.end(), word) != places.end())
      ++named;
    else
      rest += (rest.empty() ? "" : " ") + word;
  }
  const HeadingGuess guess = guess_heading(rest);
  const bool temperature =
      guess.best() >= known_heading && guess.matches.front().field == Field::visit_temperature_mean;
  return named == 1 && temperature && !column.says_mean() ? rest : std::string();
}

} // namespace

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
