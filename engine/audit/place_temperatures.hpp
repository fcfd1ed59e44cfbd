// Temperatures that are told apart by where in the pool they were taken.
#pragma once

#include "audit/candidates.hpp"

#include <cstddef>
#include <string>
#include <vector>

namespace wetspell {

/// Two or three columns side by side under headings that name a temperature and a place in the pool, alike
/// but for the place ("Temp left", "Temp middle", "Temp right"), with temperatures below. Nothing where there
/// is no such group, or more than one.
std::vector<std::size_t> temperatures_by_place(const std::vector<Column>& columns);

/// Whether a heading in two rows is a temperature above and a place in the pool below ("Water temp" over
/// "N").
bool place_of_temperature(const std::string& group, const std::string& line);

} // namespace wetspell
