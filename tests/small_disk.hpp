// A disk with little room, for tests of what happens when it is full. Only root can make one, if only root of
// a namespace of its own.
#pragma once

#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <string>

#include <sys/mount.h>

namespace wetspell::test {

/// A disk of so many bytes, in memory.
class SmallDisk {
public:
  SmallDisk(const std::filesystem::path& folder, std::size_t bytes)
      : folder_(folder),
        mounted_(mount("tmpfs", folder.c_str(), "tmpfs", 0, ("size=" + std::to_string(bytes)).c_str()) == 0) {
  }
  ~SmallDisk() {
    if (mounted_)
      umount2(folder_.c_str(), MNT_DETACH);
  }
  SmallDisk(const SmallDisk&) = delete;
  SmallDisk& operator=(const SmallDisk&) = delete;
  [[nodiscard]] bool mounted() const { return mounted_; }

private:
  std::filesystem::path folder_;
  bool mounted_;
};

/// Runs the present test once more as root; 0 when it passed.
inline int run_again_as_root() {
  const auto* test = ::testing::UnitTest::GetInstance()->current_test_info();
  const std::string again = std::filesystem::read_symlink("/proc/self/exe").string() +
                            " --gtest_filter=" + test->test_suite_name() + "." + test->name();
  return std::system(("unshare --map-root-user --mount " + again + " || sudo -n " + again).c_str());
}

} // namespace wetspell::test
