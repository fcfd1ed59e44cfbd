// The units that the lines above a table name for the readings in it: "Depths in cm, lengths and widths in
// feet".
#pragma once

#include "quantity/unit.hpp"

#include <array>
#include <optional>
#include <span>
#include <string>

namespace wetspell {

class TitleUnits {
public:
  explicit TitleUnits(std::span<const std::string> titles);

  /// The unit for readings of a kind; none where no line names one, or lines differ. What is measured
  /// elsewhere than in the pool's water ("air temperature", "snow depth") says nothing; measurements that are
  /// not named
  /// ("all measurements in cm") are depths and lengths.
  [[nodiscard]] Unit of(Kind kind) const;

private:
  /// What a line says of a kind; `Unit::none`: lines differ.
  std::array<std::optional<Unit>, kinds_of_quantity> said_{};
};

} // namespace wetspell
