#include "measure/class_table.hpp"
#include "quantity/read.hpp"

#include "engine/measure/digits.hpp"
#include "engine/measure/quantities.hpp"

#include <limits>
#include <string>

namespace wetspell {
namespace {

using test::a_range;
using test::a_value;
using test::agrees;
using test::value_of;
using test::without_value;
using testing::HasSubstr;

constexpr double nan = std::numeric_limits<double>::quiet_NaN();
constexpr double inf = std::numeric_limits<double>::infinity();

std::string depth_class(double value, Unit unit) {
  const auto index = value_of(classify(default_depth_classes(), value, unit));
  return default_depth_classes().rows.at(index).label;
}

std::string class_of(const ClassTable& table, const Quantity& quantity) {
  const auto found = classify(table, quantity);
  return found ? table.rows.at(found.value()).label : found.error().text;
}

/// A limit as people would type it in each unit.
struct Limit {
  double inches;
  double centimetres;
  double metres;
  double feet;
  const char* at_and_below;
  const char* above;
};

constexpr Limit limits[] = {
    {0, 0, 0, 0, "no standing water", "over 0 to 6 in"},
    {6, 15.24, 0.1524, 0.5, "over 0 to 6 in", "over 6 to 12 in"},
    {12, 30.48, 0.3048, 1, "over 6 to 12 in", "over 12 to 24 in"},
    {24, 60.96, 0.6096, 2, "over 12 to 24 in", "over 24 to 36 in"},
    {36, 91.44, 0.9144, 3, "over 24 to 36 in", "over 36 to 48 in"},
    {48, 121.92, 1.2192, 4, "over 36 to 48 in", "over 48 in"},
};

TEST(DepthClass, ADepthOnALimitBelongsToTheShallowerClassInEveryUnit) {
  for (const Limit& limit : limits) {
    for (const auto& [typed, unit] :
         {std::pair{limit.inches, Unit::inch}, std::pair{limit.centimetres, Unit::centimetre},
          std::pair{limit.metres, Unit::metre}, std::pair{limit.feet, Unit::foot},
          std::pair{limit.centimetres * 10, Unit::millimetre}}) {
      // A hundredth of a millimetre is finer than anybody types and far coarser than rounding.
      const double little = from_si(1e-5, unit);
      EXPECT_EQ(depth_class(typed, unit), limit.at_and_below) << typed << " " << symbol(unit);
      EXPECT_EQ(depth_class(typed + little, unit), limit.above) << typed << " " << symbol(unit);
      if (typed > 0) {
        EXPECT_EQ(depth_class(typed - little, unit), limit.at_and_below) << typed << " " << symbol(unit);
      }
    }
  }
}

TEST(DepthClass, IsTheSameForAllSpellingsOfOneDepthAndRisesWithIt) {
  std::size_t before = 0;
  for (int quarter_inches = 0; quarter_inches <= 400; ++quarter_inches) {
    const double inches = quarter_inches / 4.0;
    const auto index = value_of(classify(default_depth_classes(), inches, Unit::inch));
    EXPECT_EQ(value_of(classify(default_depth_classes(), inches * 2.54, Unit::centimetre)), index) << inches;
    EXPECT_EQ(value_of(classify(default_depth_classes(), inches * 0.0254, Unit::metre)), index) << inches;
    EXPECT_EQ(value_of(classify(default_depth_classes(), inches / 12, Unit::foot)), index) << inches;
    EXPECT_GE(index, before);
    before = index;
  }
}

TEST(DepthClass, RefusesInWords) {
  const auto negative = classify(default_depth_classes(), -3, Unit::centimetre);
  ASSERT_FALSE(negative);
  EXPECT_EQ(negative.error().kind, ProblemKind::bad_argument);
  EXPECT_EQ(negative.error().text,
            "The depth reads -3 cm; no class holds that: the classes run from 0 in to the highest value.");
  for (const double bad : {nan, inf, -inf}) {
    EXPECT_EQ(classify(default_depth_classes(), bad, Unit::inch).error().kind, ProblemKind::not_a_number);
  }
  for (const Unit unit : {Unit::celsius, Unit::percent, Unit::pace, Unit::none}) {
    const auto other = classify(default_depth_classes(), 3, unit);
    ASSERT_FALSE(other);
    EXPECT_EQ(other.error().kind, ProblemKind::bad_argument);
    EXPECT_THAT(other.error().text, HasSubstr("inch"));
  }
}

TEST(DepthClass, OfAQuantityAsWritten) {
  const ClassTable& table = default_depth_classes();
  EXPECT_EQ(class_of(table, a_value(91.44, Unit::centimetre)), "over 24 to 36 in");
  EXPECT_EQ(class_of(table, a_value(25, Unit::inch, Status::about)), "over 24 to 36 in");
  EXPECT_EQ(class_of(table, a_value(48, Unit::inch, Status::over)), "over 48 in");
  EXPECT_EQ(class_of(table, a_value(3, Unit::metre, Status::over)), "over 48 in");
  EXPECT_EQ(class_of(table, a_value(6, Unit::inch, Status::under)), "over 0 to 6 in");
  EXPECT_EQ(class_of(table, a_value(15.24, Unit::centimetre, Status::under)), "over 0 to 6 in");
  EXPECT_EQ(class_of(table, a_range(26, 30, Unit::inch)), "over 24 to 36 in");
  EXPECT_EQ(class_of(table, a_range(24, 36, Unit::inch)), "over 24 to 36 in");
  EXPECT_EQ(class_of(table, a_range(60.96, 91.44, Unit::centimetre)), "over 24 to 36 in");
  EXPECT_EQ(class_of(table, a_range(24, 24, Unit::inch)), "over 12 to 24 in");
}

TEST(DepthClass, OfAQuantityIsRefusedInWords) {
  const ClassTable& table = default_depth_classes();
  const struct {
    Quantity quantity;
    ProblemKind kind;
    const char* words;
  } cases[] = {
      {without_value(Status::blank), ProblemKind::not_enough, "No depth was typed."},
      {without_value(Status::missing), ProblemKind::not_enough, "The depth was not measured."},
      {without_value(Status::bad), ProblemKind::bad_argument, "The depth cannot be read"},
      {a_value(12, Unit::pace, Status::paces), ProblemKind::bad_argument, "counted in paces"},
      {a_range(20, 40, Unit::inch), ProblemKind::bad_argument,
       "The depth reads 20 to 40 in; that may be \"over 12 to 24 in\" as well as \"over 36 to 48 in\"."},
      {a_value(24, Unit::inch, Status::over), ProblemKind::bad_argument,
       "over 24 in; that may be \"over 24 to 36 in\" as well as \"over 48 in\""},
      {a_value(12, Unit::inch, Status::under), ProblemKind::bad_argument,
       "under 12 in; that may be \"over 0 to 6 in\" as well as \"over 6 to 12 in\""},
      {a_value(0, Unit::inch, Status::under), ProblemKind::bad_argument, "under 0 in; no class holds that"},
      {a_range(-2, 4, Unit::inch), ProblemKind::bad_argument, "-2 to 4 in; no class holds that"},
  };
  for (const auto& [quantity, kind, words] : cases) {
    const auto refused = classify(table, quantity);
    ASSERT_FALSE(refused) << words;
    EXPECT_EQ(refused.error().kind, kind) << words;
    EXPECT_THAT(refused.error().text, HasSubstr(words));
  }
}

TEST(DepthClass, OfWhatPeopleType) {
  const struct {
    const char* typed;
    const char* label;
  } cases[] = {{"dry", "no standing water"},        {"3'", "over 24 to 36 in"},
               {"2' 11 1/2\"", "over 24 to 36 in"}, {"2 ft", "over 12 to 24 in"},
               {"0,9144 m", "over 24 to 36 in"},    {"~25", "over 24 to 36 in"},
               {"> 48 in", "over 48 in"},           {"48+", "over 48 in"},
               {"under 6 in", "over 0 to 6 in"},    {"26-30", "over 24 to 36 in"},
               {"1 to 2 ft", "over 12 to 24 in"},   {"61 cm", "over 24 to 36 in"}};
  for (const auto& [typed, label] : cases) {
    const Quantity quantity = read(typed, {.kind = Kind::depth, .assume = Unit::inch});
    EXPECT_EQ(class_of(default_depth_classes(), quantity), label) << typed;
  }
}

TEST(FillClass, BeginsAtItsLowerLimit) {
  const ClassTable& table = default_fill_classes();
  const auto label = [&](double value, Unit unit) {
    return table.rows.at(value_of(classify(table, value, unit))).label;
  };
  const struct {
    double percent;
    const char* label;
  } cases[] = {{0, "0 to 24 %"},     {24, "0 to 24 %"},     {24.999, "0 to 24 %"}, {25, "25 to 49 %"},
               {49.9, "25 to 49 %"}, {50, "50 to 74 %"},    {74, "50 to 74 %"},    {74.6, "50 to 74 %"},
               {75, "75 to 100 %"},  {99.9, "75 to 100 %"}, {100, "75 to 100 %"}};
  for (const auto& [percent, expected] : cases) {
    EXPECT_EQ(label(percent, Unit::percent), expected) << percent;
    EXPECT_EQ(label(percent / 100, Unit::one), expected) << percent;
  }
}

TEST(FillClass, RefusesWhatNoBasinCanHold) {
  for (const double bad : {-0.5, -1.0, 100.5, 140.0}) {
    const auto refused = classify(default_fill_classes(), bad, Unit::percent);
    ASSERT_FALSE(refused) << bad;
    EXPECT_EQ(refused.error().kind, ProblemKind::bad_argument);
    EXPECT_THAT(refused.error().text, HasSubstr("the classes run from 0 % to 100 %"));
  }
  EXPECT_THAT(classify(default_fill_classes(), 140, Unit::percent).error().text, HasSubstr("140 %"));
}

TEST(FillClass, OfAQuantityAsWritten) {
  const ClassTable& table = default_fill_classes();
  EXPECT_EQ(class_of(table, a_value(75, Unit::percent, Status::over)), "75 to 100 %");
  EXPECT_EQ(class_of(table, a_value(25, Unit::percent, Status::under)), "0 to 24 %");
  EXPECT_EQ(class_of(table, a_range(25, 49, Unit::percent)), "25 to 49 %");
  EXPECT_EQ(class_of(table, a_range(50, 75, Unit::percent)), "50 to 74 %");
  EXPECT_THAT(class_of(table, a_value(100, Unit::percent, Status::over)), HasSubstr("no class holds that"));
  EXPECT_THAT(class_of(table, a_range(90, 110, Unit::percent)),
              HasSubstr("90 to 110 %; no class holds that"));
}

TEST(ClassNamed, DoesNotMindCapitalsAndBlanks) {
  const ClassTable& table = default_depth_classes();
  EXPECT_EQ(value_of(class_named(table, "over 12 to 24 in")), 3U);
  EXPECT_EQ(value_of(class_named(table, "  Over 12  to 24\u00a0IN ")), 3U);
  EXPECT_EQ(value_of(class_named(table, "No standing water")), 0U);
  EXPECT_EQ(value_of(class_named(table, "NOT KNOWN")), table.rows.size());
  for (std::size_t i = 0; i < table.rows.size(); ++i) {
    EXPECT_EQ(value_of(class_named(table, table.rows[i].label)), i);
  }
}

TEST(ClassNamed, RefusesInWords) {
  const auto other = class_named(default_depth_classes(), "deep");
  ASSERT_FALSE(other);
  EXPECT_EQ(other.error().kind, ProblemKind::bad_argument);
  EXPECT_THAT(other.error().text, HasSubstr("\"deep\" is not one of the depth classes"));
  EXPECT_THAT(other.error().text, HasSubstr("over 48 in; not known"));
  EXPECT_EQ(class_named(default_depth_classes(), "  ").error().kind, ProblemKind::not_enough);
}

TEST(ClassMiddle, IsTheMiddleWithARectangularUncertainty) {
  const auto found = value_of(middle(default_depth_classes(), 3));
  EXPECT_THAT(found.si, agrees(18 * 0.0254, 1e-15));
  EXPECT_THAT(found.uncertainty, agrees(6 * 0.0254 / std::sqrt(3.0), 1e-15));
  const auto dry = value_of(middle(default_depth_classes(), 0));
  EXPECT_EQ(dry.si, 0);
  EXPECT_EQ(dry.uncertainty, 0);
  const auto fill = value_of(middle(default_fill_classes(), 3));
  EXPECT_THAT(fill.si, agrees(0.875, 1e-15));
  EXPECT_THAT(fill.uncertainty, agrees(0.125 / std::sqrt(3.0), 1e-15));
}

TEST(ClassMiddle, RefusesOpenAndUnknownClasses) {
  const ClassTable& table = default_depth_classes();
  const auto open = middle(table, table.rows.size() - 1);
  ASSERT_FALSE(open);
  EXPECT_EQ(open.error().kind, ProblemKind::not_enough);
  EXPECT_THAT(open.error().text, HasSubstr("over 48 in"));
  EXPECT_EQ(middle(table, table.rows.size()).error().kind, ProblemKind::not_enough);
  EXPECT_EQ(middle(table, table.rows.size() + 1).error().kind, ProblemKind::bad_argument);
}

} // namespace
} // namespace wetspell
