// Names for files that are written one a person.
#pragma once

#include <span>
#include <string>
#include <vector>

namespace wetspell {

/// A name every system takes for each code, all different: what a code holds beside letters and digits
/// becomes a hyphen, an empty one "nobody", and of names that differ in nothing but capitals the later ones
/// get a number behind.
std::vector<std::string> file_names(std::span<const std::string> codes);

} // namespace wetspell
