// Headings that count by letters: "Temp A", "Temp B", "Temp C".
#pragma once

#include "audit/find_tables.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace wetspell {

/// The heading with a number for its letter, where the headings beside it are alike but for the letters a, b
/// and c in their order. Nothing where it stands in no such run: "Temp C" alone is Celsius.
std::optional<std::string> numbered_by_letter(const std::vector<BlockHeading>& headings, std::size_t at);

} // namespace wetspell
