#include "check/depth_family.hpp"

namespace wetspell {

std::span<const RuleSpec> depth_rules() {
  static const std::vector<RuleSpec> all = [] {
    std::vector<RuleSpec> joined;
    for (auto part : {depth_reading_rules(), wet_or_dry_rules(), depth_change_rules()})
      joined.insert(joined.end(), part.begin(), part.end());
    return joined;
  }();
  return all;
}

} // namespace wetspell
