#include "command/command.hpp"
#include "command/files.hpp"
#include "command/options.hpp"

#include <fmt/format.h>

namespace wetspell::command {

Exit new_workbook(const Arguments& arguments) {
  namespace po = boost::program_options;
  namespace fs = std::filesystem;
  po::options_description options;
  options.add_options()("file", po::value<std::string>()->default_value(""), "the workbook to write");
  const auto parsed = parse(arguments, "new", options, "file");
  if (!parsed)
    return refuse("new", parsed.error().text);
  if (!parsed.value())
    return Exit::nothing_to_fix;
  const fs::path file = (*parsed.value())["file"].as<std::string>();
  if (file.extension() != ".ods")
    return refuse("new", "name the new workbook, ending in .ods (the working format of a season).");
  std::error_code error;
  const fs::path blank = beside_program("season.ods");
  if (!fs::exists(blank, error))
    return refuse("new",
                  "the blank season workbook season.ods is not beside this program; build or install it.");
  if (!fs::copy_file(blank, file, fs::copy_options::none, error))
    return refuse("new", fmt::format("{} cannot be written: {}.", file.string(), error.message()));
  fmt::print("{}: a fresh season. Open it in LibreOffice Calc and begin on the first sheet.\n",
             file.string());
  return Exit::nothing_to_fix;
}

} // namespace wetspell::command
