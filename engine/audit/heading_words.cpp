#include "audit/heading_words.hpp"

#include "audit/count_heading.hpp"
#include "audit/heading_unit.hpp"
#include "audit/vocabulary.hpp"
#include "season/heading.hpp"

#include <algorithm>
#include <array>

namespace wetspell {

namespace {

constexpr std::size_t longest_heading = 160; // bytes; longer texts are notes
constexpr double own_heading = 0.97;
constexpr double listed_heading = 0.93;
constexpr double slip_costs = 0.08;
constexpr double stranger_costs = 0.4; // a word that the pattern has no place for
constexpr double bare_remark_costs = 0.02;

bool letter(unsigned char c) {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c >= 0x80;
}
bool capital(unsigned char c) {
  return c >= 'A' && c <= 'Z';
}
bool digit(unsigned char c) {
  return c >= '0' && c <= '9';
}

/// Two known words run together: "poolid", "watertemp".
std::optional<std::array<Word, 2>> run_together(const std::string& word) {
  for (std::size_t at = 3; at + 2 <= word.size(); ++at) {
    const auto first = heading_word(word.substr(0, at));
    const auto second = heading_word(word.substr(at));
    if (first && second && *first != Word::filler && *second != Word::filler)
      return std::array{*first, *second};
  }
  return std::nullopt;
}

struct Tokens {
  std::vector<Word> words; ///< without fillers
  std::size_t strangers = 0;
  std::size_t slips = 0;
};

/// `whole`: no unit was cut off behind, to which an "in" would belong.
Tokens tokens_of(std::string_view text, bool whole) {
  Tokens tokens;
  const auto slip = [&](Word meaning) {
    ++tokens.slips;
    if (meaning != Word::filler)
      tokens.words.push_back(meaning);
  };
  // At the end they are no fillers: "t a" is that of the air, "temp in" of what runs in,
  // "depth s" that in the south.
  constexpr std::array<std::string_view, 5> never_last{"a", "s", "in", "out", "off"};
  const std::vector<std::string> words = words_of(text);
  for (const std::string& word : words) {
    const bool last = words.size() > 1 && &word == &words.back() && (whole || word != "in");
    if (last && std::find(never_last.begin(), never_last.end(), word) != never_last.end()) {
      ++tokens.strangers;
    } else if (const auto meaning = heading_word(word)) {
      if (*meaning != Word::filler)
        tokens.words.push_back(*meaning);
    } else if (const auto near = heading_word_near(word, 1)) {
      slip(*near);
    } else if (const auto two = run_together(word)) {
      tokens.words.insert(tokens.words.end(), two->begin(), two->end());
    } else if (const auto far = heading_word_near(word, 2)) {
      slip(*far);
    } else {
      ++tokens.strangers;
    }
  }
  return tokens;
}

double fit(const Pattern& pattern, const Tokens& tokens) {
  const auto holds = [](std::span<const Word> words, Word word) {
    return std::find(words.begin(), words.end(), word) != words.end();
  };
  if (!std::all_of(pattern.needs.begin(), pattern.needs.end(),
                   [&](Word word) { return holds(tokens.words, word); }))
    return 0;
  std::size_t strangers = tokens.strangers;
  for (const Word word : tokens.words)
    strangers += !holds(pattern.needs, word) && !holds(pattern.may, word);
  // A pattern with more needed words says more: "Depth class" is not a depth.
  const double told = 0.002 * static_cast<double>(pattern.needs.size());
  return pattern.score + told - stranger_costs * static_cast<double>(strangers) -
         slip_costs * static_cast<double>(tokens.slips);
}

void keep(std::vector<WordMatch>& matches, const WordMatch& match) {
  const auto same = std::find_if(matches.begin(), matches.end(),
                                 [&](const WordMatch& other) { return other.field == match.field; });
  if (same == matches.end())
    matches.push_back(match);
  else if (same->score < match.score)
    *same = match;
}

/// Brackets cut out; what stood in them apart.
std::string without_brackets(std::string_view text, std::string& inside) {
  std::string rest;
  int depth = 0;
  for (const char c : text) {
    if (c == '(' || c == '[') {
      ++depth;
      inside += ' ';
    } else if ((c == ')' || c == ']') && depth > 0) {
      --depth;
    } else {
      (depth > 0 ? inside : rest) += c;
    }
  }
  return rest;
}

Part part_of(const Tokens& tokens) {
  if (tokens.strangers > 0 || tokens.words.empty() || tokens.words.size() > 2)
    return Part::none;
  switch (tokens.words.size() == 2 && tokens.words[0] == Word::visit ? tokens.words[1] : tokens.words[0]) {
  case Word::year:
    return Part::year;
  case Word::month:
    return Part::month;
  case Word::day:
    return Part::day;
  case Word::parameter:
    return Part::parameter;
  case Word::value:
    return Part::value;
  case Word::measured:
    return tokens.words.size() == 1 ? Part::parameter : Part::none;
  case Word::unit:
    return Part::unit_name;
  default:
    return Part::none;
  }
}

void match_patterns(HeadingGuess& guess, std::string_view text, Unit unit) {
  std::string inside;
  const Tokens plain = tokens_of(without_brackets(text, inside), unit == Unit::none);
  Tokens all = plain;
  if (!inside.empty()) { // remarks in brackets add what they say; what they say beyond that is their own
    const Tokens remark = tokens_of(inside, false);
    all.words.insert(all.words.end(), remark.words.begin(), remark.words.end());
  }
  guess.part = guess.part == Part::none && unit == Unit::none ? part_of(plain) : guess.part;
  for (const Pattern& pattern : heading_patterns()) {
    const FieldSpec& field = spec(pattern.field);
    const bool takes_unit = field.type == FieldType::quantity && fits(unit, field.kind);
    if (unit != Unit::none && !takes_unit)
      continue;
    const std::string_view how = plain.slips > 0 ? "its words, one of them misspelt" : "its words";
    const double score = std::max(fit(pattern, plain), fit(pattern, all) - bare_remark_costs);
    if (score > 0.2)
      keep(guess.matches, {field.table, pattern.field, score, how});
  }
}

} // namespace

std::vector<std::string> words_of(std::string_view text) {
  std::vector<std::string> words;
  std::string word;
  const auto close = [&] {
    if (!word.empty())
      words.push_back(std::move(word));
    word.clear();
  };
  for (std::size_t i = 0; i < text.size(); ++i) {
    const auto c = static_cast<unsigned char>(text[i]);
    const auto before = static_cast<unsigned char>(i > 0 ? text[i - 1] : ' ');
    if (c == 0xC2 && i + 1 < text.size() && static_cast<unsigned char>(text[i + 1]) == 0xA0) {
      close(); // a blank that does not break the line
      ++i;
    } else if (c == '#') {
      close();
      words.emplace_back("no");
    } else if (c == '%') {
      close();
      words.emplace_back("percent");
    } else if (letter(c)) {
      const bool hump = capital(c) && letter(before) && !capital(before);
      if ((digit(before) && word != "h2") || hump) // "h2o" is one word
        close();
      word += capital(c) ? static_cast<char>(c - 'A' + 'a') : static_cast<char>(c);
    } else if (digit(c)) {
      if (letter(before) && word != "h")
        close();
      word += static_cast<char>(c);
    } else if (c != '\'') {
      close();
    }
  }
  close();
  // "1st" comes apart at the digit; the ending says nothing.
  std::vector<std::string> joined;
  for (std::string& each : words) {
    const bool ending = each == "st" || each == "nd" || each == "rd" || each == "th";
    if (!(ending && !joined.empty() && digit(static_cast<unsigned char>(joined.back().front()))))
      joined.push_back(std::move(each));
  }
  return joined;
}

HeadingGuess guess_heading(std::string_view text) {
  HeadingGuess guess;
  if (text.size() > longest_heading)
    return guess;
  const Heading known = read_heading(text);
  for (const HeadingMatch& match : known.matches) {
    const FieldSpec& field = spec(match.field);
    if (known.unit != Unit::none && field.type == FieldType::quantity && !fits(known.unit, field.kind))
      continue; // "Temp in" is no temperature in inches
    keep(guess.matches, {match.table, match.field, match.exact ? own_heading : listed_heading,
                         match.exact ? "our own heading" : "a heading we know"});
  }
  guess.unit = known.unit;
  if (known.matches.empty()) {
    const HeadingUnit cut = unit_in_heading(text);
    guess.unit = cut.unit;
    guess.unit_text = cut.text;
    match_patterns(guess, cut.rest, cut.unit);
    if (guess.matches.empty() && cut.unit != Unit::none) {
      guess.unit = Unit::none; // the words looked like a unit and were none
      match_patterns(guess, text, Unit::none);
    }
  } else {
    match_patterns(guess, text, Unit::none); // the same words may mean something in another table
  }
  guess.count = count_heading(text);
  if (guess.count && known.matches.empty())
    guess.matches.clear(); // a wood frog is no wood
  std::stable_sort(guess.matches.begin(), guess.matches.end(),
                   [](const WordMatch& a, const WordMatch& b) { return a.score > b.score; });
  return guess;
}

bool says_something(const HeadingGuess& guess) {
  return guess.best() >= known_heading || guess.part != Part::none || guess.count.has_value();
}

} // namespace wetspell
