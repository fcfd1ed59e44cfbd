#pragma once
// A file on the disk replaced by what a document holds now: whole, or not at all.

#include "driver/document.hpp"

namespace wetspell::driver {

/// Stores the document beside the file, brings it to the disk, looks whether it is whole, and only then gives
/// it the file's name (in one step, as the system does it). Whatever goes wrong before leaves the file as it
/// was, removes what was begun, and is told in a Failure in words: no room, no right to write, an office that
/// ended. A name that leads elsewhere keeps leading there; the file's permissions stay.
void replaceFile(const Document& document, const std::filesystem::path& file);

} // namespace wetspell::driver
