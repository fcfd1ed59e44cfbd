// The whole text of a file that a test looks into.
#pragma once

#include <filesystem>
#include <fstream>
#include <string>

namespace wetspell::test {

inline std::string text_of(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), {}};
}

} // namespace wetspell::test
