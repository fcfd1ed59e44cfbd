#pragma once
// A column of cells that lead to other cells.

#include "sheet/cells.hpp"

#include <optional>
#include <string>
#include <vector>

namespace wetspell::addin {

/// The links of a column take the office about a fifth of a millisecond each: further down the addresses
/// stand there as words.
inline constexpr std::size_t mostLinks = 20'000;

struct Link {
  std::string shown;
  std::optional<Place> to; ///< nothing: no link
};

/// Puts the links from the corner down, one a row; rows without one are left as they are.
void putLinks(const SheetDocument& document, const Corner& corner, const std::vector<Link>& links);

} // namespace wetspell::addin
