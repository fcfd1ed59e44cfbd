#pragma once
// Which of the office's filters stands behind a file name.

#include <filesystem>
#include <string>

namespace wetspell::driver {

struct Format {
  std::string filter;  ///< the office's name for it
  std::string options; ///< of the filter, empty for none
};

/// By the ending of the name: ods, ots, fods, xlsx, csv, pdf, png. Throws Failure for another one.
Format formatOf(const std::filesystem::path& path);

} // namespace wetspell::driver
