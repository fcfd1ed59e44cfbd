// Runs the program under test and keeps what it said.
#pragma once

#include "text_of.hpp"

#include <boost/process.hpp>

#include <filesystem>
#include <fstream>
#include <string>
#include <string_view>
#include <vector>

#include <unistd.h>

namespace wetspell::test {

struct Said {
  int exit = -1;
  std::string out;
  std::string err;
};

inline void write(const std::filesystem::path& path, std::string_view text) {
  std::ofstream(path, std::ios::binary) << text;
}

/// A folder that is gone after the test.
class Folder {
public:
  Folder() {
    static int count = 0;
    path_ = std::filesystem::temp_directory_path() /
            ("wetspell-test-" + std::to_string(::getpid()) + "-" + std::to_string(++count));
    std::filesystem::create_directories(path_);
  }
  ~Folder() { std::filesystem::remove_all(path_); }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;
  [[nodiscard]] std::filesystem::path operator/(std::string_view name) const { return path_ / name; }

private:
  std::filesystem::path path_;
};

/// `wetspell WORDS`, with `input` on its standard input.
inline Said run(const std::vector<std::string>& words, std::string_view input = {}) {
  namespace bp = boost::process;
  const Folder folder;
  write(folder / "in", input);
  Said said;
  said.exit = bp::system(WETSPELL_PROGRAM, bp::args(words),
                         bp::std_in<(folder / "in").string(), bp::std_out>(folder / "out").string(),
                         bp::std_err > (folder / "err").string());
  said.out = text_of(folder / "out");
  said.err = text_of(folder / "err");
  return said;
}

} // namespace wetspell::test
