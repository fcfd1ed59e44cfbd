#include "command/command.hpp"
#include "command/files.hpp"
#include "command/options.hpp"
#include "exchange/track.hpp"
#include "measure/ellipse.hpp"
#include "measure/shore.hpp"
#include "quantity/print.hpp"

#include <fmt/format.h>

namespace wetspell::command {

namespace {

/// In metres and in feet, as both are asked for in the field.
void line(std::string_view what, double si, Unit metric, Unit customary, int decimals) {
  fmt::print("{:<34} {:>12} {:<3} {:>12} {}\n", what, fixed(from_si(si, metric), decimals), symbol(metric),
             fixed(from_si(si, customary), decimals), symbol(customary));
}

void say(const Walk& walk) {
  fmt::print("{:<34} {:>12}\n", "Points", walk.points);
  line("Area inside the walk", walk.area.value, Unit::square_metre, Unit::square_foot, 1);
  if (walk.area.uncertainty > 0)
    line("  standard uncertainty", walk.area.uncertainty, Unit::square_metre, Unit::square_foot, 1);
  line("Edge as walked", walk.edge, Unit::metre, Unit::foot, 1);
  line("Closed by a straight line of", walk.gap, Unit::metre, Unit::foot, 1);
  line("Longest line", walk.length, Unit::metre, Unit::foot, 1);
  line("Widest across it", walk.width, Unit::metre, Unit::foot, 1);
  const Measured length{.value = walk.length, .uncertainty = 0};
  const Measured width{.value = walk.width, .uncertainty = 0};
  if (const auto area = ellipse_area(length, width))
    line("Area of the ellipse on these two", area.value().value, Unit::square_metre, Unit::square_foot, 1);
  if (const auto edge = ellipse_edge(length, width))
    line("Edge of that ellipse", edge.value().value, Unit::metre, Unit::foot, 1);
  if (const auto shore = shore_development({.value = walk.edge, .uncertainty = 0}, walk.area))
    fmt::print("{:<34} {:>12}\n", "Shore development as walked", fixed(shore.value().value, 2));
}

} // namespace

Exit walk(const Arguments& arguments) {
  namespace po = boost::program_options;
  po::options_description options;
  options.add_options()("file", po::value<std::string>()->default_value(""),
                        "a GPX file, or a list of latitude, longitude")(
      "error", po::value<double>()->default_value(0),
      "standard uncertainty of a position in metres, in each direction; 0 when not known");
  const auto parsed = parse(arguments, "walk", options, "file");
  if (!parsed)
    return refuse("walk", parsed.error().text);
  if (!parsed.value())
    return Exit::nothing_to_fix;
  const auto& values = *parsed.value();
  const auto& file = values["file"].as<std::string>();
  if (file.empty())
    return refuse("walk", "a file with the walk is needed.");
  const auto text = file_text(file);
  if (!text)
    return refuse("walk", text.error().text);
  const auto points = read_walk(text.value());
  if (!points)
    return refuse("walk", fmt::format("{}: {}", file, points.error().text));
  const auto walked = walk_around(points.value(), values["error"].as<double>());
  if (!walked)
    return refuse("walk", fmt::format("{}: {}", file, walked.error().text));
  say(walked.value());
  return Exit::nothing_to_fix;
}

} // namespace wetspell::command
