// The derived columns of a visit, in the order in which they stand in the workbook.
#pragma once

#include "season/field.hpp"

#include <array>

namespace wetspell {

/// What derived_cell knows, in catalogue order: one call over a range of visits returns these columns.
inline constexpr std::array derived_columns{
    Field::visit_mean,
    Field::visit_spread,
    Field::visit_depth_read,
    Field::visit_depth_class_read,
    Field::visit_fill_class_read,
    Field::visit_length_read,
    Field::visit_width_read,
    Field::visit_area,
    Field::visit_edge,
};

} // namespace wetspell
