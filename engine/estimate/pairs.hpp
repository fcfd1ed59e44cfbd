// Two visits to one pool on one day by two people: what they can be held against each other by.
#pragma once

#include "estimate/history.hpp"

#include <cstdint>
#include <vector>

namespace wetspell {

/// The person with the lower index (the one further up in the table of people) is first.
struct VisitPair {
  std::int32_t first_person = 0, second_person = 0; ///< indices into Season::people
  double day = 0;
  const CountedVisit* first = nullptr;
  const CountedVisit* second = nullptr;
};

/// Every two visits of different known people, pool by pool in the order of days. One visit by two people
/// together is no pair: they read one stick.
std::vector<VisitPair> visit_pairs(const SeasonHistory& history);

} // namespace wetspell
