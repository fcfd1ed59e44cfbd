#pragma once
// Takes what came back in a folder into a season, as one undo step.

#include "commands/desk.hpp"
#include "gather/gathering.hpp"

#include <filesystem>

namespace wetspell::addin {

/// Reads all files of the folder in this office and adds what is new. Refuses in words, with nothing changed,
/// when there is no such folder, when something could not be written, or when it was cancelled. Where nothing
/// is new, nothing is written and there is no undo step.
Gathering gatherFolder(const Context& context, const SheetDocument& document,
                       const std::filesystem::path& folder, const Progress& progress = {});

} // namespace wetspell::addin
