#pragma once
// Questions to the person at the window: one of a list, a folder. Nothing when they are not answered, or when
// nobody looks.

#include "commands/commands.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace wetspell::addin {

/// Which line of the list; `first` is chosen to begin with.
std::optional<std::size_t> chooseLine(const Window& window, const std::string& question,
                                      const std::vector<std::string>& lines, std::size_t first);

/// The address of a folder ("file:///...").
std::optional<std::string> chooseFolder(const Window& window, const std::string& title);

} // namespace wetspell::addin
