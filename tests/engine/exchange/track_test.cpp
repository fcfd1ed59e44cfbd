// Walks from GPX files and from lists of coordinates.
#include "exchange/track.hpp"

#include <gtest/gtest.h>

#include <string>

namespace wetspell {
namespace {

const std::string gpx = R"(<?xml version="1.0" encoding="UTF-8"?>
<gpx version="1.1" creator="anybody" xmlns="http://www.topografix.com/GPX/1/1">
  <wpt lat="1" lon="2"/>
  <trk><name>Round B07 &amp; back</name>
    <trkseg><trkpt lat="44.50000" lon="-71.20000"><ele>312.5</ele></trkpt><trkpt lat="44.50000" lon="-71.19975"/></trkseg>
    <trkseg><trkpt lat="44.50009" lon="-71.19975"/></trkseg>
  </trk>
</gpx>)";

TEST(Track, PointsOfAGpxTrackSegmentsJoined) {
  const auto points = read_walk("\xef\xbb\xbf" + gpx);
  ASSERT_TRUE(points.has_value()) << points.error().text;
  ASSERT_EQ(points.value().size(), 3u);
  EXPECT_EQ(points.value()[0].latitude, 44.5);
  EXPECT_EQ(points.value()[2].latitude, 44.50009);
  EXPECT_EQ(points.value()[2].longitude, -71.19975);
}

TEST(Track, ARouteWhereThereIsNoTrackAndAPrefix) {
  const auto points = read_walk(
      R"(<g:gpx xmlns:g="x"><g:rte><g:rtept lat="1" lon="2"/><g:rtept lat="3" lon="4"/></g:rte></g:gpx>)");
  ASSERT_TRUE(points.has_value()) << points.error().text;
  EXPECT_EQ(points.value().size(), 2u);
}

TEST(Track, RefusesOtherFiles) {
  EXPECT_TRUE(read_walk("<gpx><trk>").error().text.starts_with("This is no XML: line 1: "));
  EXPECT_EQ(read_walk("<kml></kml>").error().text, "This is XML, but no GPX.");
  EXPECT_EQ(read_walk("<gpx></gpx>").error().kind, ProblemKind::not_enough);
  const std::string track = R"(<trk><trkseg><trkpt lat="1" lon="2"/></trkseg></trk>)";
  EXPECT_EQ(read_walk("<gpx>" + track + track + "</gpx>").error().text,
            "The file has 2 tracks; keep the one round the pool in a file of its own.");
  EXPECT_EQ(read_walk(R"(<gpx><trk><trkseg><trkpt lat="91" lon="2"/></trkseg></trk></gpx>)").error().text,
            "Point 1: lat \"91\" and lon \"2\" are no degrees of a place.");
  std::string deep;
  for (int i = 0; i < 200000; ++i)
    deep += "<a>";
  EXPECT_EQ(read_walk(deep).error().kind, ProblemKind::bad_argument);
}

TEST(Track, ListsOfCoordinates) {
  const auto points =
      read_walk("latitude, longitude\r\n# round B07\n44.5, -71.2\r\n\n44.6;-71.3\n44.7\t-71.4\n"
                "44.8 71.5 W\n");
  ASSERT_TRUE(points.has_value()) << points.error().text;
  ASSERT_EQ(points.value().size(), 4u);
  EXPECT_EQ(points.value()[1].longitude, -71.3);
  EXPECT_EQ(points.value()[2].latitude, 44.7);
  EXPECT_EQ(points.value()[3].longitude, -71.5);
}

TEST(Track, RefusesLinesThatAreNoPlace) {
  EXPECT_EQ(
      read_walk("44.5, -71.2\nsomewhere\n").error().text,
      "Line 2 reads \"somewhere\"; it should be latitude, longitude in degrees with a decimal point, as "
      "44.5123, -71.2034.");
  EXPECT_EQ(read_walk("44,5 -71,2\n").error().kind, ProblemKind::bad_argument);
  EXPECT_EQ(read_walk("").error().kind, ProblemKind::not_enough);
}

} // namespace
} // namespace wetspell
