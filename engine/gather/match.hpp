// Which rows that came in stand in the season already: matched by pool, day and person (visits also by their
// start where both give one; counts of life also by animal and form).
#pragma once

#include "gather/came_in.hpp"
#include "gather/row_words.hpp"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

namespace wetspell {

/// A row of the season, or one that was added to it just now.
struct HeldRow {
  std::optional<std::uint32_t> row; ///< inside the season's table; nothing for one that was added
  std::vector<Cell> cells;          ///< in the catalogue's order
  std::string file, where;          ///< what it was gathered from; empty: typed in the season
  std::string key;                  ///< pool, day, person ... in one text
  std::string start;                ///< words of the start time
};

enum class Verdict : std::uint8_t { same, differs, added };

struct Match {
  Verdict verdict = Verdict::added;
  std::size_t held = 0;      ///< index of the row it was matched with, or of itself
  std::vector<Field> fields; ///< in which it differs
};

class TableMatch {
public:
  TableMatch(const Season& season, TableKind table, RowWords& words);

  [[nodiscard]] const std::vector<HeldRow>& held() const { return held_; }
  [[nodiscard]] const HeldRow& held(std::size_t at) const { return held_[at]; }
  /// Another content for a cell of a row, before anything is matched.
  void change(std::size_t at, Field field, const Cell& cell);

  /// One answer a row of the file. A row that stands nowhere is added, so that later files meet it.
  std::vector<Match> match(const CameFile& file);

private:
  using Rows = std::vector<std::size_t>;
  struct Coming {
    const CameRow* row;
    std::string key, start;
    bool complete; ///< pool and day can be told
  };
  [[nodiscard]] Coming coming(const CameRow& row);
  [[nodiscard]] bool may_be(const Coming& one, const HeldRow& other) const;
  [[nodiscard]] std::vector<Field> differences(const Coming& one, const HeldRow& other);
  [[nodiscard]] std::optional<Match> same(const Coming& one);
  [[nodiscard]] std::optional<Match> differing(const Coming& one, const std::string& file, const Rows& taken);
  [[nodiscard]] std::optional<Match> moved(const Coming& one, const std::string& file, const Rows& taken);
  void index(std::size_t at);

  TableKind table_;
  RowWords& words_;
  std::vector<HeldRow> held_;
  std::unordered_map<std::string, Rows> by_key_;
  std::map<std::pair<std::string, std::string>, std::size_t> by_source_;
};

/// The words of a key as one text.
std::string joined(const std::vector<std::string>& words);

} // namespace wetspell
