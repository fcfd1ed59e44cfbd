#include "exchange/finding_json.hpp"

#include <algorithm>

namespace wetspell {

namespace {

/// What the finding proposes for its own cell, or for the first cell that it would change.
const Change* own_change(const Finding& finding) {
  if (finding.changes.empty())
    return nullptr;
  const auto own = std::find_if(finding.changes.begin(), finding.changes.end(),
                                [&](const Change& change) { return change.place == finding.place; });
  return own != finding.changes.end() ? &*own : &finding.changes.front();
}

} // namespace

nlohmann::ordered_json finding_json(const Finding& finding) {
  using json = nlohmann::ordered_json;
  const Change* change = own_change(finding);
  return {{"rule", finding.rule->name},
          {"level", name(finding.rule->level)},
          {"sheet", finding.place.sheet},
          {"row", finding.place.row},
          {"column", column_letters(finding.place.column)},
          {"field", spec(finding.field).name},
          {"value", finding.value},
          {"message", finding.message},
          {"advice", finding.advice},
          {"replacement", change != nullptr ? json(to_text(change->content)) : json(nullptr)}};
}

} // namespace wetspell
