#include "audit/title_units.hpp"

#include "audit/vocabulary.hpp"

#include <algorithm>
#include <string_view>
#include <vector>

namespace wetspell {

namespace {

constexpr std::size_t longest_title = 400; // bytes; longer texts are notes
constexpr std::string_view signs = "()[],;:=&+/\n";
constexpr std::string_view leads_to_unit = "([:=";

/// Words, and signs as tokens of their own.
std::vector<std::string> tokens_of(std::string_view title) {
  std::vector<std::string> tokens;
  std::string word;
  const auto close = [&] {
    if (!word.empty())
      tokens.push_back(std::move(word));
    word.clear();
  };
  for (const char c : title) {
    if (c == ' ' || c == '\t' || signs.find(c) != std::string_view::npos)
      close();
    if (signs.find(c) != std::string_view::npos)
      tokens.emplace_back(1, c);
    else if (c != ' ' && c != '\t')
      word += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  }
  close();
  return tokens;
}

bool is_sign(const std::string& token) {
  return token.size() == 1 && signs.find(token.front()) != std::string_view::npos;
}

/// What a word names that has a unit. Whole words only: "Long Pond" is no length.
std::optional<Kind> kind_of(std::string_view word) {
  struct Named {
    std::string_view word;
    Kind kind;
  };
  constexpr std::array named{Named{"temp", Kind::temperature}, Named{"temperature", Kind::temperature},
                             Named{"depth", Kind::depth},      Named{"length", Kind::length},
                             Named{"width", Kind::length},     Named{"size", Kind::length},
                             Named{"dimension", Kind::length}, Named{"area", Kind::area}};
  while (word.ends_with('.'))
    word.remove_suffix(1);
  if (word.ends_with('s'))
    word.remove_suffix(1);
  const auto found = std::find_if(named.begin(), named.end(), [&](const Named& n) { return n.word == word; });
  return found == named.end() ? std::nullopt : std::optional(found->kind);
}

/// Whether a word leaves open what is measured. Everything else ("probe", "snow") may name another thing.
bool says_no_more(std::string_view word) {
  constexpr std::array<std::string_view, 9> beside{"and",   "are",     "all",   "given",       "taken",
                                                   "whole", "nearest", "pools", "measurements"};
  if (std::find(beside.begin(), beside.end(), word) != beside.end())
    return true;
  switch (heading_word(word).value_or(Word::probe)) {
  case Word::filler:
  case Word::pool:
  case Word::water:
  case Word::most:
  case Word::mean:
  case Word::measured:
  case Word::visit:
  case Word::first:
  case Word::second:
  case Word::third:
  case Word::value:
  case Word::unit:
    return true;
  default:
    return false;
  }
}

struct UnitHere {
  Unit unit = Unit::none;
  std::size_t tokens = 0;
};

/// The unit at a token, of two words ("sq ft") or one. "in", and a letter that could be somebody's ("M.
/// Carter"), are units only where a unit is looked for.
UnitHere unit_at(const std::vector<std::string>& tokens, std::size_t at) {
  const std::string& token = tokens[at];
  if (at + 1 < tokens.size() && token != "in")
    if (const auto unit = unit_named(token + " " + tokens[at + 1]))
      return {*unit, 2};
  const auto unit = unit_named(token);
  if (!unit)
    return {};
  const bool behind_kind = at > 0 && kind_of(tokens[at - 1]);
  const bool led =
      at > 0 && (tokens[at - 1] == "in" || leads_to_unit.find(tokens[at - 1]) != std::string_view::npos);
  const bool last = at + 1 == tokens.size() || is_sign(tokens[at + 1]) || tokens[at + 1] == "and";
  const bool stopped = token.ends_with('.');
  const bool letter = token.size() == (stopped ? 2 : 1);
  const bool in = token == "in" || token == "in.";
  const bool meant = in ? led && last : letter ? (led && (last || !stopped)) || (behind_kind && last) : true;
  return meant ? UnitHere{*unit, 1} : UnitHere{};
}

} // namespace

TitleUnits::TitleUnits(std::span<const std::string> titles) {
  const auto say = [&](Kind kind, Unit unit) {
    std::optional<Unit>& said = said_[static_cast<std::size_t>(kind)];
    said = said && *said != unit ? Unit::none : unit;
  };
  for (const std::string& title : titles) {
    if (title.size() > longest_title)
      continue;
    const std::vector<std::string> tokens = tokens_of(title);
    std::vector<Kind> waiting; // named, and no unit yet
    bool unnamed = false;      // "measurements", "units"
    bool strange = false;      // what is named since the last sign may be another thing
    for (std::size_t at = 0; at < tokens.size(); ++at) {
      if (const UnitHere here = unit_at(tokens, at); here.unit != Unit::none) {
        if (waiting.empty() && unnamed && !strange)
          waiting = {Kind::depth, Kind::length};
        if (!strange)
          for (const Kind kind : waiting)
            if (fits(here.unit, kind))
              say(kind, here.unit);
        waiting.clear();
        unnamed = false;
        at += here.tokens - 1;
        continue;
      }
      if (is_sign(tokens[at])) {
        if (strange)
          waiting.clear();
        strange = false;
      } else if (const auto kind = kind_of(tokens[at])) {
        waiting.push_back(*kind);
      } else {
        unnamed = unnamed || tokens[at] == "measurements" || tokens[at] == "units";
        strange = strange || !says_no_more(tokens[at]);
      }
    }
  }
}

Unit TitleUnits::of(Kind kind) const {
  return said_[static_cast<std::size_t>(kind)].value_or(Unit::none);
}

} // namespace wetspell
