#include "check/nearest.hpp"

#include <algorithm>
#include <array>

namespace wetspell {

namespace {

constexpr std::size_t longest = 64; // longer words are not codes or names

bool digit(char c) {
  return c >= '0' && c <= '9';
}

char small(char c) {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

/// Letters and digits alone, small; "o" and "l" inside or after digits become 0 and 1; zeros in front of
/// other digits go.
std::string bare(std::string_view text) {
  std::string kept;
  for (const char c : text)
    if (digit(c) || (small(c) >= 'a' && small(c) <= 'z') || static_cast<unsigned char>(c) >= 0x80)
      kept += small(c);
  for (std::size_t i = 0; i < kept.size(); ++i) {
    const bool beside = (i > 0 && digit(kept[i - 1])) || (i + 1 < kept.size() && digit(kept[i + 1]));
    if (beside && kept[i] == 'o')
      kept[i] = '0';
    else if (beside && kept[i] == 'l')
      kept[i] = '1';
  }
  std::string out;
  for (std::size_t i = 0; i < kept.size(); ++i)
    if (!(kept[i] == '0' && (out.empty() || !digit(out.back())) && i + 1 < kept.size() && digit(kept[i + 1])))
      out += kept[i];
  return out;
}

} // namespace

std::size_t slips_between(std::string_view a, std::string_view b, std::size_t most) {
  const std::size_t apart = a.size() > b.size() ? a.size() - b.size() : b.size() - a.size();
  if (apart > most || a.size() > longest || b.size() > longest)
    return most + 1;
  std::array<std::array<std::size_t, longest + 1>, 3> rows{};
  for (std::size_t j = 0; j <= b.size(); ++j)
    rows[0][j] = j;
  for (std::size_t i = 1; i <= a.size(); ++i) {
    auto& row = rows[i % 3];
    const auto& above = rows[(i + 2) % 3];
    const auto& two_above = rows[(i + 1) % 3];
    row[0] = i;
    std::size_t least = row[0];
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const std::size_t other = a[i - 1] == b[j - 1] ? 0 : 1;
      row[j] = std::min({above[j] + 1, row[j - 1] + 1, above[j - 1] + other});
      if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
        row[j] = std::min(row[j], two_above[j - 2] + 1);
      least = std::min(least, row[j]);
    }
    if (least > most)
      return most + 1;
  }
  return std::min(rows[a.size() % 3][b.size()], most + 1);
}

std::optional<std::size_t> NearestWord::find(std::string_view typed) const {
  const std::string word = bare(typed);
  if (word.empty())
    return std::nullopt;
  const std::lock_guard asking(asking_);
  const auto [known, is_new] = found_.try_emplace(word);
  if (is_new) {
    while (bare_.size() < words_.size())
      bare_.push_back(bare(words_[bare_.size()]));
    known->second = look_up(word);
  }
  return known->second;
}

std::optional<std::size_t> NearestWord::look_up(const std::string& word) const {
  std::size_t best = word.size() < 3 ? 0 : word.size() < 6 ? 1 : 2;
  std::optional<std::size_t> found;
  bool tied = false;
  for (std::size_t i = 0; i < bare_.size(); ++i) {
    const std::size_t slips = bare_[i].empty() ? best + 1 : slips_between(word, bare_[i], best);
    if (slips > best)
      continue;
    tied = found && slips == best;
    best = slips;
    found = i;
  }
  return tied ? std::nullopt : found;
}

} // namespace wetspell
