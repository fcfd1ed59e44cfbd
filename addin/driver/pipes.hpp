#pragma once
// What a killed office leaves behind where pipes are files.

#include "driver/profile.hpp"

#include <string>

namespace wetspell::driver {

/// Removes the pipe we talked through and the one on which a second start would find the first.
void removePipes(const std::string& ours, const Profile& profile);

} // namespace wetspell::driver
