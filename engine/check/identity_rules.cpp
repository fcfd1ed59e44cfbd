#include "check/identity_family.hpp"

namespace wetspell {

std::span<const RuleSpec> identity_rules() {
  static const std::vector<RuleSpec> all = [] {
    std::vector<RuleSpec> joined;
    for (auto part : {who_rules(), date_rules(), clock_rules(), same_day_rules(), count_rules()})
      joined.insert(joined.end(), part.begin(), part.end());
    return joined;
  }();
  return all;
}

} // namespace wetspell
