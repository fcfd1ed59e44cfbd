#pragma once
// Paths as the office wants them, and a folder that goes away.

#include <rtl/ustring.hxx>

#include <filesystem>
#include <string>

namespace wetspell::driver {

/// The file: address of a path, which may be relative to the working directory and need not exist.
/// Throws Failure when the path cannot be written as an address.
rtl::OUString urlOf(const std::filesystem::path& path);

/// A name nobody else uses: the prefix and 16 random hexadecimal digits.
std::string uniqueName(const std::string& prefix);

/// A new, empty folder among the temporary files, removed with all it holds.
class TemporaryFolder {
public:
  explicit TemporaryFolder(const std::string& prefix);
  ~TemporaryFolder();
  TemporaryFolder(const TemporaryFolder&) = delete;
  TemporaryFolder& operator=(const TemporaryFolder&) = delete;

  const std::filesystem::path& path() const { return path_; }

private:
  std::filesystem::path path_;
};

} // namespace wetspell::driver
