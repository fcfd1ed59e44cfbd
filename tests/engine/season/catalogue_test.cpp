// The catalogues: complete, in the order of their enums, and fit to be read by people.
#include "season/field.hpp"
#include "season/limits.hpp"
#include "season/settings.hpp"
#include "season/words.hpp"

#include <gtest/gtest.h>

#include <set>

namespace wetspell {
namespace {

TEST(Fields, StandInTheOrderOfTheEnum) {
  const auto all = fields();
  ASSERT_EQ(all.size(), static_cast<std::size_t>(Field::limit_source) + 1);
  for (std::size_t i = 0; i < all.size(); ++i)
    EXPECT_EQ(static_cast<std::size_t>(all[i].field), i) << all[i].name;
}

TEST(Fields, OfATableStandTogether) {
  std::size_t together = 0;
  for (const TableSpec& t : tables()) {
    EXPECT_FALSE(fields(t.table).empty()) << t.name;
    for (const FieldSpec& s : fields(t.table))
      EXPECT_EQ(s.table, t.table) << s.name;
    together += fields(t.table).size();
  }
  EXPECT_EQ(together, fields().size());
}

TEST(Fields, HaveOneMeaningToAHeadingInATable) {
  for (const TableSpec& t : tables()) {
    std::set<std::string> names;
    std::set<std::string> headings;
    std::string buffer;
    for (const FieldSpec& s : fields(t.table)) {
      EXPECT_TRUE(names.insert(std::string(s.name)).second) << t.name << " " << s.name;
      const auto add = [&](std::string_view heading) {
        EXPECT_TRUE(headings.insert(std::string(plain_word(heading, buffer))).second)
            << t.name << ": " << heading;
      };
      add(s.heading);
      EXPECT_EQ(s.heading.find('('), std::string_view::npos) << s.heading; // brackets are for units
      for_each_part(s.also, add);
    }
  }
}

TEST(Fields, HelpIsOneOrMoreSentences) {
  std::set<std::string_view> seen;
  for (const FieldSpec& s : fields()) {
    ASSERT_FALSE(s.help.empty()) << s.name;
    EXPECT_EQ(s.help.find("  "), std::string_view::npos) << s.help;
    EXPECT_GE(s.help.size(), 15u) << s.name;
    EXPECT_LE(s.help.size(), 250u) << s.name; // what Calc shows beside a cell
    const bool example = s.help.find("Example: ") != std::string_view::npos;
    EXPECT_TRUE(example || s.help.back() == '.') << s.help;
  }
}

TEST(Fields, SayWhereTypedReadingsAreKept) {
  for (const FieldSpec& s : fields()) {
    EXPECT_EQ(s.type == FieldType::choice, s.choices != nullptr) << s.name;
    const bool kept = !std::holds_alternative<std::monostate>(s.member);
    EXPECT_FALSE(kept && s.role != Role::typed) << s.name;
    const bool reading = s.table == TableKind::visits && s.role == Role::typed && s.type != FieldType::text;
    EXPECT_TRUE(kept || !reading) << s.name;
  }
}

TEST(Fields, AreFoundByNameOrHeading) {
  EXPECT_EQ(field_named(TableKind::visits, "temperature_1"), Field::visit_temperature_1);
  EXPECT_EQ(field_named(TableKind::visits, "Temperature 1"), Field::visit_temperature_1);
  EXPECT_EQ(field_named(TableKind::pools, "pool"), Field::pool_code);
  EXPECT_EQ(field_named(TableKind::pools, "temperature_1"), std::nullopt);
}

TEST(SettingsCatalogue, StandsInTheOrderOfTheEnumAndAllowsItsDefaults) {
  const auto all = settings_catalogue();
  ASSERT_EQ(all.size(), static_cast<std::size_t>(Setting::today) + 1);
  for (std::size_t i = 0; i < all.size(); ++i) {
    EXPECT_EQ(static_cast<std::size_t>(all[i].setting), i);
    bool allowed = all[i].choices.empty();
    for_each_part(all[i].choices, [&](std::string_view c) { allowed |= c == all[i].default_value; });
    EXPECT_TRUE(allowed) << all[i].name;
  }
}

TEST(LimitsCatalogue, StandsInTheOrderOfTheEnumWithASourceEach) {
  const auto all = limits_catalogue();
  ASSERT_EQ(all.size(), static_cast<std::size_t>(Limit::neighbours_far) + 1);
  for (std::size_t i = 0; i < all.size(); ++i) {
    EXPECT_EQ(static_cast<std::size_t>(all[i].limit), i) << all[i].name;
    EXPECT_GE(all[i].source.size(), 12u) << all[i].name;
    EXPECT_FALSE(all[i].meaning.empty()) << all[i].name;
  }
}

// Factors: NIST SP 811 (2008), appendix B.8 and B.9: 1 in = 0.0254 m; a difference has no zero offset.
TEST(LimitsCatalogue, IsInForceInSi) {
  const Limits limits = Limits::defaults();
  EXPECT_DOUBLE_EQ(limits[Limit::depth_wading], 0.9144);
  EXPECT_DOUBLE_EQ(limits[Limit::temperature_spread], 2.5);
  EXPECT_DOUBLE_EQ(limits[Limit::tape_against_paces], 0.15);
  EXPECT_DOUBLE_EQ(limits[Limit::depth_fall_per_day], 0.025);
  EXPECT_DOUBLE_EQ(limits[Limit::visit_gap], 42);
}

TEST(LimitsCatalogue, ReadsDifferencesWithoutTheZeroOfTheScale) {
  const LimitSpec& spread = limits_catalogue()[static_cast<std::size_t>(Limit::temperature_spread)];
  const LimitSpec& highest = limits_catalogue()[static_cast<std::size_t>(Limit::temperature_highest)];
  EXPECT_DOUBLE_EQ(limit_to_si(spread, 4.5, Unit::fahrenheit), 2.5);
  EXPECT_DOUBLE_EQ(limit_to_si(highest, 113, Unit::fahrenheit), 45);
}

} // namespace
} // namespace wetspell
