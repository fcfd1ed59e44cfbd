#include "exchange/track.hpp"

#include "measure/refuse.hpp"
#include "quantity/degrees.hpp"

#include <boost/property_tree/ptree.hpp>
#include <boost/property_tree/xml_parser.hpp>

#include <algorithm>
#include <optional>
#include <sstream>
#include <string>

namespace wetspell {

namespace {

using Tree = boost::property_tree::ptree;

constexpr std::size_t deepest_nesting = 64; // GPX needs six; the parser calls itself once a level

/// How deep elements stand inside each other, roughly: enough to keep the parser from running out of stack.
std::size_t nesting(std::string_view xml) {
  std::size_t depth = 0;
  std::size_t most = 0;
  for (std::size_t at = xml.find('<'); at != std::string_view::npos; at = xml.find('<', at + 1)) {
    const char next = at + 1 < xml.size() ? xml[at + 1] : '\0';
    const std::size_t end = xml.find('>', at);
    if (next == '/')
      depth -= depth > 0 ? 1 : 0;
    else if (next != '!' && next != '?' && (end == std::string_view::npos || xml[end - 1] != '/'))
      most = std::max(most, ++depth);
  }
  return most;
}

/// The local name of an element: GPX may be written with a prefix.
std::string_view local(const std::string& name) {
  const std::size_t colon = name.find(':');
  return colon == std::string::npos ? std::string_view(name) : std::string_view(name).substr(colon + 1);
}

std::vector<const Tree*> children(const Tree& parent, std::string_view name) {
  std::vector<const Tree*> found;
  for (const auto& [key, child] : parent)
    if (local(key) == name)
      found.push_back(&child);
  return found;
}

Result<Position> position_of(const Tree& point, std::size_t number) {
  const auto north = point.get<std::string>("<xmlattr>.lat", "");
  const auto east = point.get<std::string>("<xmlattr>.lon", "");
  const auto latitude = read_degrees(north, Axis::latitude);
  const auto longitude = read_degrees(east, Axis::longitude);
  if (!latitude || !longitude)
    return bad_argument(
        fmt::format("Point {}: lat \"{}\" and lon \"{}\" are no degrees of a place.", number, north, east));
  return Position{*latitude, *longitude};
}

Result<std::vector<Position>> positions_of(const std::vector<const Tree*>& points) {
  std::vector<Position> found;
  for (const Tree* point : points) {
    const auto position = position_of(*point, found.size() + 1);
    if (!position)
      return position.error();
    found.push_back(position.value());
  }
  return found;
}

/// The points of every track (or route) that has any.
std::vector<std::vector<const Tree*>> ways_of(const Tree& gpx) {
  std::vector<std::vector<const Tree*>> ways;
  for (const Tree* track : children(gpx, "trk")) {
    std::vector<const Tree*> points;
    for (const Tree* segment : children(*track, "trkseg"))
      for (const Tree* point : children(*segment, "trkpt"))
        points.push_back(point);
    if (!points.empty())
      ways.push_back(std::move(points));
  }
  if (ways.empty())
    for (const Tree* route : children(gpx, "rte"))
      if (auto points = children(*route, "rtept"); !points.empty())
        ways.push_back(std::move(points));
  return ways;
}

std::string_view trimmed(std::string_view line) {
  constexpr std::string_view blank = " \t\r";
  const std::size_t first = line.find_first_not_of(blank);
  return first == std::string_view::npos ? std::string_view()
                                         : line.substr(first, line.find_last_not_of(blank) - first + 1);
}

std::optional<Position> position_in(std::string_view line) {
  const std::size_t mark = std::min(line.find_first_of(",;\t"), line.find(' '));
  if (mark == std::string_view::npos)
    return std::nullopt;
  const auto latitude = read_degrees(line.substr(0, mark), Axis::latitude);
  std::string_view rest = trimmed(line.substr(mark));
  if (rest.starts_with(',') || rest.starts_with(';'))
    rest.remove_prefix(1);
  const auto longitude = read_degrees(rest, Axis::longitude);
  if (!latitude || !longitude)
    return std::nullopt;
  return Position{*latitude, *longitude};
}

} // namespace

Result<std::vector<Position>> read_gpx(std::string_view text) {
  if (nesting(text) > deepest_nesting)
    return bad_argument(
        fmt::format("The file's elements stand more than {} deep; that is no GPX.", deepest_nesting));
  Tree tree;
  try {
    std::istringstream stream{std::string(text)};
    boost::property_tree::read_xml(stream, tree);
  } catch (const boost::property_tree::xml_parser_error& error) {
    return bad_argument(fmt::format("This is no XML: line {}: {}.", error.line(), error.message()));
  }
  const auto roots = children(tree, "gpx");
  if (roots.empty())
    return bad_argument("This is XML, but no GPX.");
  const auto ways = ways_of(*roots.front());
  if (ways.empty())
    return not_enough("The file has no track and no route with points.");
  if (ways.size() > 1)
    return bad_argument(fmt::format(
        "The file has {} tracks; keep the one round the pool in a file of its own.", ways.size()));
  return positions_of(ways.front());
}

Result<std::vector<Position>> read_positions(std::string_view text) {
  std::vector<Position> found;
  std::size_t number = 0;
  bool headings = true; // may still come
  while (!text.empty()) {
    const std::size_t end = std::min(text.find('\n'), text.size());
    const std::string_view line = trimmed(text.substr(0, end));
    text.remove_prefix(std::min(end + 1, text.size()));
    ++number;
    if (line.empty() || line.front() == '#')
      continue;
    const auto position = position_in(line);
    const bool digits = line.find_first_of("0123456789") != std::string_view::npos;
    if (!position && (!headings || digits))
      return bad_argument(
          fmt::format("Line {} reads \"{}\"; it should be latitude, longitude in degrees with a "
                      "decimal point, as 44.5123, -71.2034.",
                      number, line));
    headings = false;
    if (position)
      found.push_back(*position);
  }
  if (found.empty())
    return not_enough("There is no line with a latitude and a longitude.");
  return found;
}

Result<std::vector<Position>> read_walk(std::string_view text) {
  constexpr std::string_view mark = "\xef\xbb\xbf"; // of UTF-8
  if (text.starts_with(mark))
    text.remove_prefix(mark.size());
  const std::size_t first = text.find_first_not_of(" \t\r\n");
  const bool xml = first != std::string_view::npos && text[first] == '<';
  return xml ? read_gpx(text.substr(first)) : read_positions(text);
}

} // namespace wetspell
