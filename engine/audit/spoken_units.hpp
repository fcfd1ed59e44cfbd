// The units in which an audit speaks.
#pragma once

#include "season/season.hpp"

namespace wetspell {

/// Lets messages name each kind of quantity in the unit in which most of the season's readings of the kind
/// are written. A kind without readings follows the system of the others, areas that of lengths; where no
/// reading has a unit, the settings stay.
void speak_as_written(Season& season);

} // namespace wetspell
