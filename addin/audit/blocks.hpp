#pragma once
// Names of the blocks in which an audit stands; in files for ever.

#include "season/field.hpp"

#include <array>
#include <string>

namespace wetspell::addin {

inline constexpr const char* auditBlock = "wetspell_audit";
inline constexpr const char* headingsBlock = "wetspell_headings";

/// The kinds of record that an audit sorts rows into, a sheet each.
inline constexpr std::array tidyKinds{TableKind::visits, TableKind::life, TableKind::pools,
                                      TableKind::people};
/// "wetspell_tidy_visits"
inline std::string tidyBlock(TableKind kind) {
  return "wetspell_tidy_" + std::string(spec(kind).name);
}

} // namespace wetspell::addin
