// Finkelstein and Wolfe 1985, Biometrics 41:933-945, the arm with radiotherapy alone: 46 intervals. The share
// after 5, 0.9537, is in Fay and Shaw 2010, J. Stat. Softw. 36(2). Masses: R 4.2.2, npsurv 0.5-0, npsurv().
#include "estimate/event_curve.hpp"

#include "engine/measure/digits.hpp"

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;

constexpr double inf = std::numeric_limits<double>::infinity();

const std::vector<Between>& radiotherapy() {
  static const std::vector<Between> all{
      {45, inf}, {6, 10},   {0, 7},    {46, inf}, {46, inf}, {7, 16},   {17, inf}, {7, 14},
      {37, 44},  {0, 8},    {4, 11},   {15, inf}, {11, 15},  {22, inf}, {46, inf}, {46, inf},
      {25, 37},  {46, inf}, {26, 40},  {46, inf}, {27, 34},  {36, 44},  {46, inf}, {36, 48},
      {37, inf}, {40, inf}, {17, 25},  {46, inf}, {11, 18},  {38, inf}, {5, 12},   {37, inf},
      {0, 5},    {18, inf}, {24, inf}, {36, inf}, {5, 11},   {19, 35},  {17, 25},  {24, inf},
      {32, inf}, {33, inf}, {19, 26},  {37, inf}, {34, inf}, {36, inf}};
  return all;
}

TEST(FinkelsteinWolfe, Masses) {
  const EventCurve curve = value_of(event_curve(radiotherapy()));
  const std::vector<EventMass> expected{{{4, 5}, 0.0463467739931},   {{6, 7}, 0.0333633709348},
                                        {{7, 8}, 0.0886673680630},   {{11, 12}, 0.0707529217927},
                                        {{24, 25}, 0.0926458365855}, {{33, 34}, 0.0817857649032},
                                        {{38, 40}, 0.1208798273471}, {{46, 48}, 0.4655581363806}};
  ASSERT_EQ(curve.masses.size(), expected.size());
  for (std::size_t i = 0; i < expected.size(); ++i) {
    EXPECT_EQ(curve.masses[i].where, expected[i].where);
    EXPECT_THAT(curve.masses[i].weight, agrees(expected[i].weight, 1e-8));
    test::record("mass_" + std::to_string(i), curve.masses[i].weight, expected[i].weight);
  }
  EXPECT_THAT(curve.log_likelihood, agrees(-58.060021954, 1e-11));
  EXPECT_EQ(share_after(curve, 4), 1);
  EXPECT_NEAR(share_after(curve, 5), 0.9537, 5e-5);
}

} // namespace
} // namespace wetspell
