// Depth class limits: in centimetres by GNU units 2.22, classes by R 4.2.2, cut(right = TRUE, include.lowest
// = TRUE). To which side a limit belongs is common practice, no source.
#include "measure/class_table.hpp"

#include "engine/measure/digits.hpp"

namespace wetspell {
namespace {

TEST(ClassLimits, AsRCutsThem) {
  // R's breaks are 0, 6, 12, 24, 36, 48, Inf; it has no class of its own for 0.
  const struct {
    double inches;
    const char* r; ///< the interval that R prints
    std::size_t index;
  } cases[] = {{5.999, "[0,6]", 1}, {6, "[0,6]", 1},    {11.9, "(6,12]", 2}, {12, "(6,12]", 2},
               {24, "(12,24]", 3},  {36, "(24,36]", 4}, {48, "(36,48]", 5},  {60, "(48,Inf]", 6}};
  for (const auto& [inches, r, index] : cases) {
    EXPECT_EQ(test::value_of(classify(default_depth_classes(), inches, Unit::inch)), index)
        << inches << " " << r;
  }
}

TEST(ClassLimits, InCentimetresByGnuUnits) {
  const struct {
    double centimetres;
    double inches;
  } cases[] = {{15.24, 6}, {30.48, 12}, {60.96, 24}, {91.44, 36}, {121.92, 48}};
  for (const auto& [centimetres, inches] : cases) {
    const auto& table = default_depth_classes();
    const auto at = test::value_of(classify(table, centimetres, Unit::centimetre));
    EXPECT_EQ(table.rows.at(at).high, inches);
    EXPECT_EQ(test::value_of(classify(table, centimetres + 0.01, Unit::centimetre)), at + 1);
    EXPECT_EQ(test::value_of(classify(table, centimetres - 0.01, Unit::centimetre)), at);
  }
}

} // namespace
} // namespace wetspell
