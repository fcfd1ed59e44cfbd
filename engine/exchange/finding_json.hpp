// A finding for programs.
#pragma once

#include "check/check.hpp"

#include <nlohmann/json.hpp>

namespace wetspell {

/// Rule, level, cell, message, advice, and as replacement what is proposed for the finding's own cell, or for
/// the first cell that would change; null for nothing.
nlohmann::ordered_json finding_json(const Finding& finding);

} // namespace wetspell
