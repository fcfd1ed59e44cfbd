// What the visits of a season say that counts: every reading with an open `fix` finding left out and listed.
#pragma once

#include "check/check.hpp"
#include "season/derive.hpp"
#include "season/season.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace wetspell {

/// One visit to one pool, in SI; what is not known, not readable or left out is empty. Two visits of a pool
/// on one day are both here.
struct CountedVisit {
  std::uint32_t visit = 0; ///< index into Season::visits
  double day = 0;          ///< days since 1899-12-30
  std::optional<bool> wet; ///< water stood in the pool (frozen counts as water), or the pool was dry
  std::optional<Measured> temperature; ///< mean of the readings
  std::optional<Measured> depth;       ///< 0 for a dry pool
  std::optional<Measured> fill;        ///< fraction of one, as judged; uncertainty a tenth (judgement by eye)
  std::optional<Measured> length, width, area, edge;
  double correlation = 0; ///< of the errors of length and width
};

/// One count of animals that counts, in numbers of things.
struct CountedLife {
  std::uint32_t life = 0; ///< index into Season::life
  double day = 0;
  std::int32_t species = 0; ///< index into Season::species_names
  Choice seen_as;           ///< SeenAs
  std::optional<double> by_first, by_second, by_both;
};

/// One pool's visits and counts in the order of days.
struct PoolHistory {
  std::uint32_t pool = 0; ///< index into Season::pools
  std::vector<CountedVisit> visits;
  std::vector<CountedLife> life;
};

/// A reading that stays out of every figure.
struct LeftOut {
  TableKind table = TableKind::visits;
  std::uint32_t record = 0;
  Field field{};
  Place place;
  std::string pool;  ///< its code; empty when the row has no known pool
  std::string value; ///< as typed
  std::string why;   ///< the finding's message
};

struct SeasonHistory {
  const Season& season;
  std::vector<PoolHistory> pools; ///< one a pool of the season, in its order
  std::vector<LeftOut> left_out;
};

/// Which readings a finding takes out: an open `fix` on a field takes out that field's reading and all that
/// is derived from it; on the pool, the date, or the row itself the whole visit (or count); on a person's
/// calibration every length by that person's paces. Rows without a known pool or a readable date are in no
/// history (the rules `fix` those).
SeasonHistory counted_history(const Season& season, const CheckReport& report);

} // namespace wetspell
