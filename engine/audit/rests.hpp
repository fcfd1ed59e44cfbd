// A quantity in two columns: whole feet and the inches beyond them, metres and the centimetres beyond them.
#pragma once

#include "audit/mapper.hpp"

#include <functional>
#include <vector>

namespace wetspell {

/// Finds the column that holds the rest of each mapped quantity. `given`: whether a person gave a column its
/// meaning; such a column is nobody's rest.
void find_rests(BlockMap& map, const std::vector<Column>& columns,
                const std::function<bool(std::size_t)>& given);

/// The two cells of one quantity as one: "1 ft 9 in".
Cell with_rest(const Cell& whole, Unit unit, const Cell& rest, Unit rest_unit);

} // namespace wetspell
