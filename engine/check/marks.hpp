// Which cells are in doubt already, so that one mistake is reported once.
#pragma once

#include "check/fingerprint.hpp"

#include <cstddef>
#include <unordered_map>

namespace wetspell {

class Marks {
public:
  explicit Marks(const Season& season) : season_(season) {}

  /// Whether the doubt points to, or rests on, a cell to which another rule has pointed. `own_too`: a mark of
  /// the same rule on the other row counts as well (a leap up is not followed by the leap back).
  [[nodiscard]] bool cover(RecordAt at, const Doubt& doubt, std::size_t rule, bool own_too) const;

  /// Marks the doubt's cell; notes mark nothing, since what is worth knowing is not in doubt.
  void add(RecordAt at, const Doubt& doubt, std::size_t rule, Level level);

private:
  [[nodiscard]] bool marked(RecordAt at, Field field, std::size_t rule, bool own_too) const;

  const Season& season_;
  std::unordered_map<std::uint64_t, std::size_t> by_cell_; ///< cell to the first rule that pointed to it
};

} // namespace wetspell
