// Which rows below the headings are records.
#pragma once

#include "audit/heading_scan.hpp"

namespace wetspell {

/// The columns by which rows are told apart; the number of columns where there is none.
struct KeyColumns {
  std::size_t pool = 0;
  std::size_t date = 0;
};
KeyColumns key_columns(const std::vector<BlockHeading>& headings, HeadingScan& scan);

/// Looks at the rows of a block one by one.
class RowUses {
public:
  RowUses(const Grid& grid, const std::vector<BlockHeading>& headings, KeyColumns keys)
      : grid_(grid), headings_(headings), keys_(keys) {}

  /// What the row is used for; nothing for a record.
  [[nodiscard]] std::optional<RowUse> use(std::size_t row) const;
  /// The row's first words.
  [[nodiscard]] std::string words(std::size_t row) const;

private:
  [[nodiscard]] bool repeats_headings(std::size_t row) const;
  [[nodiscard]] bool sums(std::size_t row) const;
  [[nodiscard]] bool lone_text(std::size_t row, std::size_t column) const;
  [[nodiscard]] bool label(std::size_t row, std::size_t column) const;

  Grid grid_;
  const std::vector<BlockHeading>& headings_;
  KeyColumns keys_;
};

} // namespace wetspell
