// What a gathering did, for programs and for people.
#pragma once

#include "base/result.hpp"
#include "gather/gathering.hpp"

#include <string>
#include <string_view>

namespace wetspell {

/// {"folder", "changed", "added", "carried", "to_choose", "not_read", "answered", "files": [...], "remarks"}.
std::string gathering_json(const Gathering& gathering);

/// The same in sentences, from what gathering_json() wrote. Refuses other texts.
Result<std::string> gathering_text(std::string_view json);

/// One sentence or two, for a message on the screen.
std::string gathering_verdict(const Gathering& gathering);

} // namespace wetspell
