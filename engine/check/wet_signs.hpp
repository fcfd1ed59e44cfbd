// Which entries of a visit say that there was water, whatever the word for water says.
#pragma once

#include "season/records.hpp"

namespace wetspell {

struct WetSigns {
  bool temperature = false; ///< a water temperature was read
  bool depth = false;       ///< a depth over 0
  bool fill = false;        ///< a fill over 0

  [[nodiscard]] int count() const { return int{temperature} + int{depth} + int{fill}; }
};

inline WetSigns signs_of_water(const Visit& visit) {
  return {visit.temperature_1.has_value() || visit.temperature_2.has_value() ||
              visit.temperature_3.has_value() || visit.temperature_mean.has_value(),
          visit.depth.has_value() && visit.depth.si > 0, visit.fill.has_value() && visit.fill.si > 0};
}

} // namespace wetspell
