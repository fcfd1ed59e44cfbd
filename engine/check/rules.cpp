#include "check/rule.hpp"

#include <algorithm>
#include <iterator>

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

std::vector<Field> columns_missing(const Season& season, const RuleSpec& rule) {
  const auto has = [&](Field field) { return season.has(field); };
  std::vector<Field> fields;
  std::ranges::remove_copy_if(rule.needs, std::back_inserter(fields), has);
  if (!rule.needs_one_of.empty() && std::ranges::none_of(rule.needs_one_of, has))
    fields.push_back(rule.needs_one_of.front());
  return fields;
}

const RuleSpec* rule_named(std::string_view name) {
  const auto all = rules();
  const auto found = std::find_if(all.begin(), all.end(), [&](const RuleSpec& r) { return r.name == name; });
  return found == all.end() ? nullptr : &*found;
}

} // namespace wetspell
