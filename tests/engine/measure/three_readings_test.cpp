#include "measure/three_readings.hpp"

#include "engine/measure/digits.hpp"
#include "engine/measure/quantities.hpp"

#include <algorithm>
#include <vector>

namespace wetspell {
namespace {

using test::a_range;
using test::a_value;
using test::agrees;
using test::value_of;
using test::without_value;
using testing::HasSubstr;

std::vector<Quantity> readings(std::initializer_list<double> values, Unit unit) {
  std::vector<Quantity> made;
  for (const double value : values) {
    made.push_back(a_value(value, unit));
  }
  return made;
}

TEST(MeanOfReadings, OfThree) {
  const auto found = value_of(mean_of_readings(readings({10.2, 10.4, 10.3}, Unit::celsius)));
  EXPECT_EQ(found.expected, 3);
  EXPECT_EQ(found.read, 3);
  EXPECT_THAT(found.mean, agrees(10.3, 1e-15));
  EXPECT_THAT(found.spread, agrees(0.2, 1e-13));
  EXPECT_THAT(found.deviation, agrees(0.1, 1e-13));
  // 0.1 / sqrt(3) and the thermometer's 0.5 / sqrt(3) in quadrature: sqrt(0.26 / 3).
  EXPECT_THAT(found.uncertainty, agrees(std::sqrt(0.26 / 3), 1e-13));
}

TEST(MeanOfReadings, IsTheSameWhetherConvertedBeforeOrAfter) {
  const auto fahrenheit = value_of(mean_of_readings(readings({50, 51, 52}, Unit::fahrenheit)));
  EXPECT_THAT(fahrenheit.mean, agrees((51.0 - 32) * 5 / 9, 1e-15));
  // A difference of 1 °F is 5/9 °C; the 32 plays no part.
  EXPECT_THAT(fahrenheit.spread, agrees(2.0 * 5 / 9, 1e-14));
  EXPECT_THAT(fahrenheit.deviation, agrees(5.0 / 9, 1e-14));
}

TEST(MeanOfReadings, MayMixUnits) {
  const std::vector<Quantity> mixed{a_value(10, Unit::celsius), a_value(50, Unit::fahrenheit),
                                    a_value(283.15, Unit::kelvin)};
  const auto found = value_of(mean_of_readings(mixed));
  EXPECT_THAT(found.mean, agrees(10, 1e-14));
  EXPECT_NEAR(found.spread, 0, 1e-12);
}

TEST(MeanOfReadings, DoesNotDependOnTheOrder) {
  auto made = readings({7.1, 12.25, 9.4}, Unit::celsius);
  made.push_back(without_value(Status::blank));
  const auto by_value = [](const Quantity& a, const Quantity& b) { return a.written < b.written; };
  const auto first = value_of(mean_of_readings(made));
  std::sort(made.begin(), made.begin() + 3, by_value);
  do {
    const auto found = value_of(mean_of_readings(made));
    EXPECT_THAT(found.mean, agrees(first.mean, 1e-15));
    EXPECT_THAT(found.uncertainty, agrees(first.uncertainty, 1e-14));
  } while (std::next_permutation(made.begin(), made.begin() + 3, by_value));
}

TEST(MeanOfReadings, CountsWhatIsMissingAndTakesAboutAsAValue) {
  const std::vector<Quantity> some{a_value(8, Unit::celsius, Status::about), without_value(Status::blank),
                                   without_value(Status::missing), a_value(10, Unit::celsius)};
  const auto found = value_of(mean_of_readings(some));
  EXPECT_EQ(found.expected, 4);
  EXPECT_EQ(found.read, 2);
  EXPECT_EQ(found.blank, 1);
  EXPECT_EQ(found.missing, 1);
  EXPECT_THAT(found.mean, agrees(9, 1e-15));
}

TEST(MeanOfReadings, OfOneKnowsNoScatterButTheThermometer) {
  const auto found = value_of(mean_of_readings(readings({8}, Unit::celsius)));
  EXPECT_TRUE(std::isnan(found.spread));
  EXPECT_TRUE(std::isnan(found.deviation));
  EXPECT_THAT(found.uncertainty, agrees(thermometer_uncertainty(), 1e-15));
}

TEST(MeanOfReadings, NeverIsSurerThanTheThermometer) {
  const std::vector<Quantity> many(500, a_value(8, Unit::celsius));
  EXPECT_GE(value_of(mean_of_readings(many)).uncertainty, thermometer_uncertainty());
}

TEST(MeanOfReadings, RefusesWhenNoneWasTaken) {
  const std::vector<Quantity> none{without_value(Status::blank), without_value(Status::missing),
                                   without_value(Status::blank)};
  const auto refused = mean_of_readings(none);
  ASSERT_FALSE(refused);
  EXPECT_EQ(refused.error().kind, ProblemKind::not_enough);
  EXPECT_THAT(refused.error().text, HasSubstr("None of the 3"));
  EXPECT_EQ(mean_of_readings({}).error().kind, ProblemKind::not_enough);
}

TEST(MeanOfReadings, RefusesWhatIsNoReadingAndSaysWhich) {
  const Quantity good = a_value(9, Unit::celsius);
  const struct {
    Quantity reading;
    const char* words;
  } cases[] = {
      {without_value(Status::bad), "Reading 2 cannot be read"},
      {a_value(24, Unit::celsius, Status::over), "Reading 2 says over 24 °C"},
      {a_value(39, Unit::fahrenheit, Status::under), "Reading 2 says under 39 °F"},
      {a_range(8, 10, Unit::celsius), "Reading 2 is a range, 8 to 10 °C"},
      {a_value(12, Unit::step, Status::steps), "Reading 2 is a count of steps"},
      {a_value(12, Unit::inch), "Reading 2 is 12 in, not a temperature"},
  };
  for (const auto& [reading, words] : cases) {
    const auto refused = mean_of_readings(std::vector{good, reading, good});
    ASSERT_FALSE(refused) << words;
    EXPECT_EQ(refused.error().kind, ProblemKind::bad_argument);
    EXPECT_THAT(refused.error().text, HasSubstr(words));
  }
}

} // namespace
} // namespace wetspell
