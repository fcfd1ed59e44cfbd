#include "audit/heading_words.hpp"

#include "audit/heading_unit.hpp"

#include <gtest/gtest.h>

namespace wetspell {
namespace {

/// How surely the words mean the field; 0 when they do not.
double score(std::string_view heading, Field field) {
  for (const WordMatch& match : guess_heading(heading).matches)
    if (match.field == field)
      return match.score;
  return 0;
}

TEST(HeadingWords, ReadsShortenedMisspeltAndRunTogether) {
  for (const char* heading : {"Water temperature", "wtr temp", "H2O Temp", "WaterTemp", "water_temp_C",
                              "Temprature", "Water Temp (deg. F)", "temp, °C", "TEMP"})
    EXPECT_GE(score(heading, Field::visit_temperature_mean), known_heading) << heading;
  for (const char* heading : {"Depth", "Max. depth", "dpth", "Dpeth", "DepthCm", "depth (deepest point)",
                              "max_depth_in", "Water depth, inches"})
    EXPECT_GE(score(heading, Field::visit_depth), known_heading) << heading;
  for (const char* heading : {"T1", "Temp #1", "1st temp", "Water temp 1 (F)", "temp_1"})
    EXPECT_GE(score(heading, Field::visit_temperature_1), known_heading) << heading;
  for (const char* heading : {"Site", "Pool #", "PoolID", "pond no.", "Site code"})
    EXPECT_GE(score(heading, Field::visit_pool), known_heading) << heading;
}

TEST(HeadingWords, LeavesStrangersAlone) {
  for (const char* heading : {"Air temperature", "Soil temp", "Sepal.Length", "Wind", "pH",
                              "Dissolved oxygen", "Depth to bedrock", "Tail length", "Conductivity"})
    for (const WordMatch& match : guess_heading(heading).matches)
      EXPECT_LT(match.score, known_heading) << heading << " as " << spec(match.field).heading;
}

TEST(HeadingWords, KeepsApartWhatSharesAWord) {
  EXPECT_GT(score("Depth class", Field::visit_depth_class), score("Depth class", Field::visit_depth));
  EXPECT_LT(score("Depth class", Field::visit_depth), known_heading);
  EXPECT_LT(score("Thermometer depth", Field::visit_depth), known_heading);
  EXPECT_GE(score("2nd observer", Field::visit_second_person), known_heading);
  EXPECT_LT(score("2nd observer", Field::visit_person), known_heading);
}

TEST(HeadingWords, FindsTheUnitWhereverItStands) {
  EXPECT_EQ(unit_in_heading("Depth (cm)").unit, Unit::centimetre);
  EXPECT_EQ(unit_in_heading("Depth [in.]").unit, Unit::inch);
  EXPECT_EQ(unit_in_heading("Depth_cm").unit, Unit::centimetre);
  EXPECT_EQ(unit_in_heading("DepthCm").unit, Unit::centimetre);
  EXPECT_EQ(unit_in_heading("Depth, inches").unit, Unit::inch);
  EXPECT_EQ(unit_in_heading("Length in feet").unit, Unit::foot);
  EXPECT_EQ(unit_in_heading("Temp Celcius").unit, Unit::celsius);
  EXPECT_EQ(unit_in_heading("Temp (deg F)").unit, Unit::fahrenheit);
  EXPECT_EQ(unit_in_heading("Depth").unit, Unit::none);
  EXPECT_EQ(unit_in_heading("cm").unit, Unit::none);
  EXPECT_EQ(guess_heading("Time in").unit, Unit::none);
}

TEST(HeadingWords, NamesAnAnimalWithAColumnOfItsOwn) {
  const auto count = guess_heading("Wood frog egg masses").count;
  ASSERT_TRUE(count);
  EXPECT_EQ(count->species, "wood frog");
  EXPECT_EQ(count->seen_as, "egg masses");
  EXPECT_EQ(guess_heading("spotted sal. larvae").count.value_or(CountColumn{}).seen_as, "larvae");
  EXPECT_FALSE(guess_heading("Frog noises").count);
}

TEST(HeadingWords, PutsUpWithAnything) {
  for (const std::string& text :
       {std::string(), std::string(10'000, 'x'), std::string("\xFF\xFE\x01"), std::string("()[]"),
        std::string("((((Depth"), std::string("%%##'"), std::string(100, '(')})
    EXPECT_LT(guess_heading(text).best(), 1.0);
}

} // namespace
} // namespace wetspell
