// Fill and depth of one pool over its visits.
#pragma once

#include "check/rule.hpp"

namespace wetspell {

/// Visits of a pool of which one was judged clearly fuller although clearly shallower than another. Of each
/// such pair, the visit that disagrees with more of the others is the doubtful one (the later one when they
/// are even), so that one wrong entry gives one doubt.
void fuller_yet_shallower(const SeasonView& view, Verdicts& verdicts);

} // namespace wetspell
