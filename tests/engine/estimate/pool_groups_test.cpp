// Pools by the contents of any column of their table, ours or the programme's own.
#include "engine/check/fixture.hpp"
#include "estimate/pool_groups.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace wetspell {
namespace {

using ::testing::ElementsAre;

Season season() {
  Table pools(Place{"Pools", 1, 0}, 4, 3);
  const char* const texts[4][3] = {{"Pool code", "Owner", "Soil kind"},
                                   {"B01", "town", "loam"},
                                   {"B02", "Town", ""},
                                   {"B03", "private", "sand"}};
  for (std::size_t r = 0; r < 4; ++r)
    for (std::size_t c = 0; c < 3; ++c)
      pools.at(r, c) = Cell::of_text(texts[r][c]);
  std::vector<Table> sheets;
  sheets.push_back(std::move(pools));
  sheets.push_back(test::fixture_table(TableKind::visits, {{"pool", "date"}, {"B01", "2026-04-18"}}));
  auto read = read_season(std::move(sheets), test::fixture_today());
  EXPECT_TRUE(read);
  return std::move(read).value();
}

TEST(PoolGroups, ByColumnsOfOurCatalogueAndOthers) {
  const PoolGroups found = pool_groups(season(), "soil-kind, Owned by");
  ASSERT_EQ(found.groups.size(), 5u);
  EXPECT_EQ(found.groups[0].column, "Soil kind");
  EXPECT_EQ(found.groups[0].group, "(blank)");
  EXPECT_THAT(found.groups[0].pools, ElementsAre(1u));
  EXPECT_EQ(found.groups[4].column, "Owner");
  EXPECT_EQ(found.groups[4].group, "town");
  EXPECT_THAT(found.groups[4].pools, ElementsAre(0u, 1u));
  EXPECT_TRUE(found.not_found.empty());
}

TEST(PoolGroups, HeadingsThatAreNotThereAreTold) {
  const PoolGroups found = pool_groups(season(), "County,,Owner");
  EXPECT_THAT(found.not_found, ElementsAre("County"));
  EXPECT_EQ(found.groups.size(), 2u);
  EXPECT_TRUE(pool_groups(season(), " ").groups.empty());
}

} // namespace
} // namespace wetspell
