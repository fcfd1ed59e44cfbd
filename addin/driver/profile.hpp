#pragma once
// The settings an office of ours starts with.

#include "driver/files.hpp"

#include <string>

namespace wetspell::driver {

/// A profile of its own for one office, gone with the object: nobody's settings are read or changed.
class Profile {
public:
  /// locale: language and country as in de-DE; decides decimal sign and date order.
  explicit Profile(const std::string& locale);

  /// Holds user/, the office's settings, and temporary/, for its temporary files.
  const std::filesystem::path& path() const { return folder_.path(); }

private:
  TemporaryFolder folder_;
};

} // namespace wetspell::driver
