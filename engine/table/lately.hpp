// What cells of one column mean, kept for those that came lately: people write the same few again and again.
#pragma once

#include "table/cell.hpp"

#include <array>
#include <cstddef>
#include <memory>

namespace wetspell {

/// `Meaning` is what reading a cell gives; the same cell must always give the same.
template <class Meaning> class Lately {
public:
  /// The meaning of a cell, by `read(cell)` unless it is still known. Stays until the next call.
  template <class Read> const Meaning& of(const Cell& cell, Read read) {
    if (cell.empty() || !cell.compact())
      return other_ = read(cell);
    if (!known_)
      known_ = std::make_unique<std::array<Known, places>>();
    Known& known = (*known_)[cell.hash() % places];
    if (known.cell != cell)
      known = {cell, read(cell)};
    return known.meaning;
  }

private:
  static constexpr std::size_t places = 512; ///< more do not stay in the processor's nearest memory
  struct Known {
    Cell cell;
    Meaning meaning{};
  };

  std::unique_ptr<std::array<Known, places>>
      known_; ///< nothing before the first cell: many columns stay blank
  Meaning other_{};
};

} // namespace wetspell
