#include "check/temperature_family.hpp"

namespace wetspell {

std::span<const RuleSpec> temperature_rules() {
  static const std::vector<RuleSpec> all = [] {
    std::vector<RuleSpec> joined;
    for (auto part : {reading_rules(), warm_water_rules(), readings_rules()})
      joined.insert(joined.end(), part.begin(), part.end());
    return joined;
  }();
  return all;
}

} // namespace wetspell
