// The fingerprint of a finding: what an answer belongs to.
#pragma once

#include "check/rule.hpp"

#include <optional>
#include <string>

namespace wetspell {

/// A record of the season: which table, which index in its vector.
struct RecordAt {
  TableKind table = TableKind::visits;
  std::uint32_t record = 0;
  bool operator==(const RecordAt&) const = default;
};

/// The record in which a field of a rule stands: the record itself, or the pool or person it refers to (for
/// paces the one who paced). Nothing for fields of other tables, and where the reference is not known.
std::optional<RecordAt> holder(const Season& season, RecordAt at, Field field);

/// Row of the record inside its table.
std::uint32_t row_of(const Season& season, RecordAt at);

/// The cell as typed.
const Cell& cell_of(const Season& season, RecordAt at, Field field);

/// 16 hexadecimal digits: FNV-1a (64 bits) over the rule's name, who the record is (codes and date as typed,
/// never the row, so that sorted rows keep their answers), and the texts of all fields behind the doubt, in
/// this record and in the one it is compared with.
std::string fingerprint(const Season& season, const RuleSpec& rule, RecordAt at, const Doubt& doubt);

} // namespace wetspell
