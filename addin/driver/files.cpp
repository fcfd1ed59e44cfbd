#include "driver/files.hpp"

#include "base/text.hpp"
#include "driver/failure.hpp"

#include <fmt/format.h>
#include <osl/file.hxx>

#include <random>

namespace wetspell::driver {

namespace fs = std::filesystem;

rtl::OUString urlOf(const fs::path& path) {
  const std::u8string utf8 = fs::absolute(path).lexically_normal().u8string();
  const std::string bytes(utf8.begin(), utf8.end());
  rtl::OUString url;
  if (osl::FileBase::getFileURLFromSystemPath(addin::toOffice(bytes), url) != osl::FileBase::E_None) {
    throw Failure(fmt::format("{} is not a path that can be opened", bytes));
  }
  return url;
}

std::string uniqueName(const std::string& prefix) {
  std::random_device device;
  return fmt::format("{}{:08x}{:08x}", prefix, device(), device());
}

TemporaryFolder::TemporaryFolder(const std::string& prefix)
    : path_(fs::temp_directory_path() / uniqueName(prefix)) {
  std::error_code error;
  if (!fs::create_directory(path_, error)) {
    throw Failure(fmt::format("no temporary folder {}: {}", path_.string(), error.message()));
  }
  fs::permissions(path_, fs::perms::owner_all, error);
}

TemporaryFolder::~TemporaryFolder() {
  std::error_code ignored;
  fs::remove_all(path_, ignored);
}

} // namespace wetspell::driver
