#include "demo/returns.hpp"

#include "demo/rounds.hpp"

#include <algorithm>

namespace wetspell::demo {

namespace {

/// Visits to all pools of a person, a day after the other.
std::vector<SheetRow> visits_between(const Programme& programme, std::size_t person, Chance& chance) {
  std::vector<SheetRow> rows;
  int day = day_of_year(4, 24) + static_cast<int>(person % 5);
  for (const TruePool& pool : programme.pools)
    if (pool.visitor == person)
      rows.push_back(write_visit_between(programme, pool, day++, chance));
  return rows;
}

/// The first person with such a hand from an index on.
std::size_t person_with(const Programme& programme, Hand hand, std::size_t from) {
  const auto found =
      std::find_if(programme.people.begin() + static_cast<std::ptrdiff_t>(from), programme.people.end(),
                   [hand](const TruePerson& person) { return person.hand == hand; });
  return static_cast<std::size_t>(found - programme.people.begin());
}

} // namespace

std::vector<Returned> invent_returns(const Programme& programme, Chance& chance) {
  const std::size_t renamer = person_with(programme, Hand::bare, 6);
  const std::size_t mover = person_with(programme, Hand::metric, 0);
  const std::size_t twice = person_with(programme, Hand::bare, 13);
  const auto code = [&](std::size_t person) { return programme.people[person].code; };

  Returned renamed{code(renamer), ".ods", "pools of " + code(renamer) + ".ods", "What I saw in April", {}, {},
                   true};
  renamed.visits = visits_between(programme, renamer, chance);
  Returned moved{code(mover), ".xlsx", "handout-" + code(mover) + ".xlsx", {}, Field::visit_depth, {}, false};
  moved.visits = visits_between(programme, mover, chance);
  Returned first{code(twice), ".ods", "handout-" + code(twice) + ".ods", {}, {}, {}, false};
  first.visits = visits_between(programme, twice, chance);
  Returned second = first;
  second.file = "handout-" + code(twice) + "_2.ods";
  Cell& depth = second.visits.front()[Field::visit_depth]; // bare inches
  depth = Cell::of_number(depth.number() + 3);
  return {renamed, moved, first, second};
}

} // namespace wetspell::demo
