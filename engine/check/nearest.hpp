// The known word that a mistyped one is nearest to.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace wetspell {

/// How many single slips lie between two texts: a letter too many, too few, another, or two swapped
/// (Damerau-Levenshtein in its restricted form: no letter takes part in two slips). Counting stops above
/// `most`.
std::size_t slips_between(std::string_view a, std::string_view b, std::size_t most);

/// Words made ready for finding which one a mistyped word meant. Answers are kept, since one slip often
/// stands in many rows.
class NearestWord {
public:
  void add(std::string_view word);

  /// Index (in the order of adding) of the word that is the same but for case, blanks, signs, leading zeros
  /// and O for 0; or else the nearest within one slip (two from six letters on). Nothing when two are equally
  /// near, or when the word is too short to tell.
  [[nodiscard]] std::optional<std::size_t> find(std::string_view typed) const;

private:
  [[nodiscard]] std::optional<std::size_t> look_up(const std::string& bare) const;

  std::vector<std::string> words_;
  mutable std::unordered_map<std::string, std::optional<std::size_t>> found_;
};

} // namespace wetspell
