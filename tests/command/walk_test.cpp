#include "command/program.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace wetspell::test {
namespace {

using testing::HasSubstr;

TEST(WalkCommand, SaysAreaAndEdgeBesideTheEllipse) {
  const Folder folder;
  const auto file = folder / "round.txt";
  write(file, "44.50000, -71.20000\n44.50000, -71.19975\n44.50009, -71.19975\n44.50009, -71.20000\n");
  const Said said = run({"walk", file.string(), "--error", "3"});
  EXPECT_EQ(said.exit, 0) << said.err;
  EXPECT_THAT(said.out, HasSubstr("Points                                        4\n"));
  EXPECT_THAT(said.out, HasSubstr("198.8 m²"));
  EXPECT_THAT(said.out, HasSubstr("Area of the ellipse on these two"));
  EXPECT_THAT(said.out, HasSubstr("standard uncertainty"));
}

TEST(WalkCommand, RefusesInWords) {
  const Folder folder;
  const auto file = folder / "round.gpx";
  write(file, "<kml></kml>");
  const Said said = run({"walk", file.string()});
  EXPECT_EQ(said.exit, 2);
  EXPECT_THAT(said.err, HasSubstr("This is XML, but no GPX."));
  EXPECT_EQ(run({"walk"}).exit, 2);
}

} // namespace
} // namespace wetspell::test
