#include "check/nearest.hpp"

#include <gtest/gtest.h>

namespace wetspell {
namespace {

// Damerau 1964, CACM 7:171-176, names the four slips; the pairs are the usual textbook ones, from memory.
TEST(Slips, CountsTheFourKinds) {
  EXPECT_EQ(slips_between("", "", 2), 0U);
  EXPECT_EQ(slips_between("pool", "pool", 2), 0U);
  EXPECT_EQ(slips_between("pol", "pool", 2), 1U);   // one left out
  EXPECT_EQ(slips_between("poool", "pool", 2), 1U); // one too many
  EXPECT_EQ(slips_between("poll", "pool", 2), 1U);  // another
  EXPECT_EQ(slips_between("polo", "pool", 2), 1U);  // two swapped
  EXPECT_EQ(slips_between("kitten", "sitting", 5), 3U);
  EXPECT_EQ(slips_between("ca", "abc", 5), 3U); // restricted form
}

TEST(Slips, StopsAboveTheMost) {
  EXPECT_EQ(slips_between("kitten", "sitting", 2), 3U);
  EXPECT_EQ(slips_between("a", "abcdefgh", 2), 3U);
}

struct Codes : NearestWord {
  Codes(std::initializer_list<std::string_view> words) {
    for (const auto word : words)
      add(word);
  }
};

TEST(NearestWord, SameButForCaseSignsZerosAndLookalikes) {
  const Codes known({"BRK-07", "BRK-17", "MDW-03"});
  EXPECT_EQ(known.find("brk 7"), 0U);
  EXPECT_EQ(known.find("BRK-O7"), 0U);
  EXPECT_EQ(known.find("brk-l7"), 1U);
  EXPECT_EQ(known.find("MDW3"), 2U);
}

TEST(NearestWord, OneSlipWhenOnlyOneIsNear) {
  const Codes known({"alder", "birch", "cedar"});
  EXPECT_EQ(known.find("aldre"), 0U);
  EXPECT_EQ(known.find("bircch"), 1U);
  EXPECT_FALSE(known.find("maple").has_value());
}

TEST(NearestWord, NothingWhenTwoAreEquallyNearOrTheWordIsTooShort) {
  EXPECT_FALSE(Codes({"B11", "B12"}).find("B13").has_value());
  EXPECT_FALSE(Codes({"RW", "AL"}).find("RM").has_value());
  EXPECT_FALSE(Codes({}).find("B13").has_value());
  EXPECT_FALSE(Codes({"B11"}).find("").has_value());
}

TEST(NearestWord, ANearerOneBreaksTheTie) {
  EXPECT_EQ(Codes({"walnut", "walnux", "walnutt"}).find("walnutt"), 2U);
}

} // namespace
} // namespace wetspell
