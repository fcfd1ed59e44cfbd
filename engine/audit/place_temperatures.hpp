// Temperatures that are told apart by where in the pool they were taken.
#pragma once

#include "audit/candidates.hpp"

#include <cstddef>
#include <vector>

namespace wetspell {

/// Two or three columns side by side under headings that name a temperature and a place in the pool, alike
/// but for the place ("Temp left", "Temp middle", "Temp right"), with temperatures below. Nothing where there
/// is no such group, or more than one.
std::vector<std::size_t> temperatures_by_place(const std::vector<Column>& columns);

} // namespace wetspell
