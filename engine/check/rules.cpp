#include "check/rule.hpp"

#include <algorithm>

namespace wetspell {

namespace {

std::vector<RuleSpec> joined() {
  std::vector<RuleSpec> all;
  // The order matters: see Doubt in rule.hpp.
  for (const auto family : {identity_rules(), temperature_rules(), depth_rules(), fill_rules(), size_rules(),
                            setting_rules(), life_rules(), among_pools_rules()})
    all.insert(all.end(), family.begin(), family.end());
  return all;
}

} // namespace

std::span<const RuleSpec> rules() {
  static const std::vector<RuleSpec> all = joined();
  return all;
}

const RuleSpec* rule_named(std::string_view name) {
  const auto all = rules();
  const auto found = std::find_if(all.begin(), all.end(), [&](const RuleSpec& r) { return r.name == name; });
  return found == all.end() ? nullptr : &*found;
}

} // namespace wetspell
