#include "gather/file_names.hpp"

#include <gtest/gtest.h>

namespace wetspell {
namespace {

using Names = std::vector<std::string>;

TEST(FileNames, AreSafeOnEverySystem) {
  EXPECT_EQ(file_names(Names{"RW", "A/L: 3", "../x", "", "Zoë"}),
            (Names{"RW", "A-L--3", "---x", "nobody", "Zo--"}));
}

TEST(FileNames, AreNeverTheSameForTwoPeople) {
  EXPECT_EQ(file_names(Names{"A/L", "A-L", "a l", "A-L-2"}), (Names{"A-L", "A-L-2", "a-l-3", "A-L-2-2"}));
}

} // namespace
} // namespace wetspell
