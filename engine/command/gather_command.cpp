// What came back in a folder, taken into a season in the office.
#include "command/command.hpp"
#include "command/files.hpp"
#include "command/options.hpp"
#include "command/sources.hpp"
#include "exchange/gather_report.hpp"

#include <fmt/format.h>

namespace wetspell::command {

namespace {

Result<std::string> rendered(const std::string& json, std::string_view format) {
  return format == "json" ? Result<std::string>(json) : gathering_text(json);
}

} // namespace

Exit gather(const Arguments& arguments) {
  namespace po = boost::program_options;
  po::options_description options;
  options.add_options()("folder", po::value<std::vector<std::string>>(), "the folder with what came back")(
      "into", po::value<std::string>()->default_value(""), "the season's workbook (.ods or .fods)")(
      "format,f", po::value<std::string>()->default_value("text"), "text or json");
  const auto parsed = parse(arguments, "gather", options, "folder");
  if (!parsed)
    return refuse("gather", parsed.error().text);
  if (!parsed.value())
    return Exit::nothing_to_fix;
  const auto& values = *parsed.value();
  const std::string season = values["into"].as<std::string>();
  const std::string format = values["format"].as<std::string>();
  if (values.count("folder") == 0 || values["folder"].as<Arguments>().size() != 1 || season.empty())
    return refuse("gather", "name one folder, and the season with --into.");
  if (format != "text" && format != "json")
    return refuse("gather", fmt::format("the format is text or json, not '{}'.", format));
  const auto said = run_office({"gather", season, values["folder"].as<Arguments>().front(), "--oxt",
                                beside_program("wetspell.oxt").string()});
  if (!said)
    return refuse("gather", said.error().text);
  constexpr int refused = static_cast<int>(Exit::could_not);
  if (said.value().exit >= refused || said.value().exit < 0)
    return refuse("gather", fmt::format("{} stays as it was.", season));
  const auto text = rendered(said.value().output, format);
  if (!text)
    return refuse("gather", text.error().text);
  fmt::print("{}", text.value());
  return said.value().exit == 0 ? Exit::nothing_to_fix : Exit::something_to_fix;
}

} // namespace wetspell::command
