// Walks round a pool at their corners; areas are checked in tests/published/geographiclib_test.cpp.
#include "measure/walk.hpp"

#include "engine/measure/digits.hpp"

#include <vector>

namespace wetspell {
namespace {

using test::agrees;
using test::value_of;

// About 20 m by 10 m at 44.5 degrees north.
const std::vector<Position> field{
    {44.5, -71.2}, {44.5, -71.19974846}, {44.50009, -71.19974846}, {44.50009, -71.2}};

TEST(Walk, ClosedOrNotAndEitherWayRoundIsTheSame) {
  const auto open = value_of(walk_around(field));
  auto closed = field;
  closed.push_back(field.front());
  closed.insert(closed.begin() + 2, closed[1]);
  const auto same = value_of(walk_around(closed));
  EXPECT_EQ(open.area.value, same.area.value);
  EXPECT_EQ(same.points, 4u);
  EXPECT_EQ(same.gap, 0);
  EXPECT_NEAR(open.gap, 10, 0.01);
  const auto back = value_of(walk_around(std::vector<Position>(field.rbegin(), field.rend())));
  EXPECT_THAT(back.area.value, agrees(open.area.value, 1e-6));
  EXPECT_NEAR(open.area.value, 200, 1);
  EXPECT_NEAR(open.edge, 60, 0.1);
  EXPECT_NEAR(open.length, std::hypot(20, 10), 0.05);
  EXPECT_NEAR(open.width, 2 * 20 * 10 / std::hypot(20, 10), 0.05);
}

TEST(Walk, AcrossTheDateLineIsLikeAnywhereElse) {
  const auto shifted = [](double by) {
    std::vector<Position> moved;
    for (const Position& each : field) {
      const double east = each.longitude + by;
      moved.push_back({each.latitude, east > 180 ? east - 360 : east});
    }
    return value_of(walk_around(moved)).area.value;
  };
  EXPECT_THAT(shifted(251.1999), agrees(shifted(0), 1e-6));
}

TEST(Walk, UncertaintyGrowsWithThePositions) {
  EXPECT_EQ(value_of(walk_around(field)).area.uncertainty, 0);
  const double one = value_of(walk_around(field, 1)).area.uncertainty;
  EXPECT_THAT(one, agrees(std::hypot(20, 10), 0.01)); // four diagonals, half of their root sum of squares
  EXPECT_THAT(value_of(walk_around(field, 3)).area.uncertainty, agrees(3 * one, 1e-12));
}

TEST(Walk, Refuses) {
  const std::vector<Position> eight{field[0], field[2], field[1], field[3]};
  EXPECT_EQ(walk_around(eight).error().text,
            "The outline crosses itself: the stretch from point 1 to 2 and the one from 3 to 4. Cut the walk "
            "where it comes back to its start, and take out loops.");
  EXPECT_EQ(walk_around(std::vector<Position>{{1, 1}, {1, 1}, {2, 2}}).error().kind, ProblemKind::not_enough);
  EXPECT_EQ(walk_around(std::vector<Position>{{91, 1}, {1, 1}, {2, 2}}).error().kind,
            ProblemKind::bad_argument);
  EXPECT_EQ(walk_around(std::vector<Position>{{1, 1}, {1, 9}, {2, 2}}).error().kind,
            ProblemKind::bad_argument);
  EXPECT_EQ(walk_around(std::vector<Position>{{89.9, 0}, {89.9, 90}, {89.9, 180}, {89.9, -90}}).error().text,
            "The outline goes round a pole.");
  EXPECT_EQ(walk_around(field, -1).error().kind, ProblemKind::bad_argument);
}

} // namespace
} // namespace wetspell
