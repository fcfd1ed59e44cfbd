#include "audit/heading_scan.hpp"

#include "season/locate.hpp"

#include <algorithm>
#include <string_view>
#include <unordered_set>

namespace wetspell {

namespace {

constexpr std::size_t words_kept = 20'000; // so that a sheet of a million different texts stays small

bool may_mean(const HeadingGuess& guess, std::initializer_list<Field> fields) {
  return std::any_of(guess.matches.begin(), guess.matches.end(), [&](const WordMatch& match) {
    return match.score >= known_heading && match.score > guess.best() - 0.15 &&
           std::find(fields.begin(), fields.end(), match.field) != fields.end();
  });
}

} // namespace

std::string_view text_in(const Cell& cell) {
  return cell.kind() == CellKind::text ? cell.text() : std::string_view();
}

bool names_pool(const HeadingGuess& guess) {
  return may_mean(guess, {Field::visit_pool, Field::life_pool, Field::pool_code});
}
bool names_date(const HeadingGuess& guess) {
  return may_mean(guess, {Field::visit_date, Field::life_date});
}
bool names_key(const HeadingGuess& guess) {
  return names_pool(guess) || names_date(guess) || guess.part != Part::none ||
         may_mean(guess, {Field::person_code, Field::life_species});
}

const HeadingGuess& HeadingScan::guess(std::string_view text) {
  std::string word(text);
  if (const auto found = known_.find(word); found != known_.end())
    return found->second;
  if (known_.size() >= words_kept)
    known_.clear();
  return known_.emplace(std::move(word), guess_heading(text)).first->second;
}

bool HeadingScan::names_columns(std::size_t row) {
  std::size_t filled = 0;
  std::size_t texts = 0;
  for (std::size_t column = 0; column < grid_.columns(); ++column) {
    const Cell& cell = grid_.at(row, column);
    if (cell.kind() == CellKind::date)
      return false;
    filled += holds_something(cell);
    texts += cell.kind() == CellKind::text && holds_something(cell);
  }
  if (texts < 2 || (filled - texts) * 4 > filled)
    return false;
  std::size_t known = 0;
  std::size_t keys = 0;
  std::unordered_set<std::string_view> different;
  for (std::size_t column = 0; column < grid_.columns(); ++column) {
    const std::string_view text = text_in(grid_.at(row, column));
    if (text.empty())
      continue;
    const HeadingGuess& said = guess(text);
    known += says_something(said) && different.insert(text).second;
    keys += names_key(said);
  }
  return (keys > 0 && known >= 2 && known * 4 >= texts) || (known >= 3 && known * 2 >= texts);
}

} // namespace wetspell
