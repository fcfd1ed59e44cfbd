// The known word that a mistyped one is nearest to.
#pragma once

#include <cstddef>
#include <mutex>
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

/// Finds which of many words a mistyped one meant. They are made ready when the first one is looked for,
/// since most seasons have no such slip; answers are kept, since one slip often stands in many rows. May be
/// asked from several threads.
class NearestWord {
public:
  /// The text must outlive this.
  void add(std::string_view word) { words_.push_back(word); }

  /// Index (in the order of adding) of the word that is the same but for case, blanks, signs, leading zeros
  /// and O for 0; or else the nearest within one slip (two from six letters on). Nothing when two are equally
  /// near, or when the word is too short to tell.
  [[nodiscard]] std::optional<std::size_t> find(std::string_view typed) const;

private:
  [[nodiscard]] std::optional<std::size_t> look_up(const std::string& bare) const;

  std::vector<std::string_view> words_;
  mutable std::mutex asking_;
  mutable std::vector<std::string> bare_; ///< of the words, as far as they have been made ready
  mutable std::unordered_map<std::string, std::optional<std::size_t>> found_;
};

} // namespace wetspell
