// Words as people type them, brought to one form so that they can be looked up.
#pragma once

#include "season/choice.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>

namespace wetspell {

/// Small letters; without blanks, hyphens, dots, underscores and other ASCII punctuation, and without
/// no-break spaces and typographic dashes; everything else as it is. "No-Standing water." is
/// "nostandingwater". A sign that means something alone ("%") is lost: compare whole words before.
/// Writes into `buffer` and returns a view of it, so that reading a million cells allocates nothing.
std::string_view plain_word(std::string_view text, std::string& buffer);

/// Lower case (ASCII), blanks at both ends cut, inner runs of blanks made one: the form in which codes and
/// names are compared. Punctuation stays: "P-1" is not "P1".
std::string_view plain_code(std::string_view text, std::string& buffer);

/// Whether the text says that nothing is known: "not known", "cannot tell", "?", "n/a", a lone dash.
bool says_not_known(std::string_view text);

/// Calls `use(part)` for every part of a list separated by "|".
template <class Use> void for_each_part(std::string_view list, Use use) {
  while (!list.empty()) {
    const std::size_t bar = list.find('|');
    use(list.substr(0, bar));
    list.remove_prefix(bar == std::string_view::npos ? list.size() : bar + 1);
  }
}

/// For looking up by views without making a string.
struct TextHash {
  using is_transparent = void;
  std::size_t operator()(std::string_view text) const { return std::hash<std::string_view>{}(text); }
};
using TextMap = std::unordered_map<std::string, std::int32_t, TextHash, std::equal_to<>>;

/// A list of words made ready for looking up many cells.
class ChoiceIndex {
public:
  explicit ChoiceIndex(const ChoiceList& list);
  ChoiceIndex() = default;
  void add(std::string_view word, std::int16_t index);
  [[nodiscard]] Choice find(std::string_view text);

private:
  TextMap words_;
  std::string buffer_;
};

} // namespace wetspell
