// The page of one pool, as PDF and PNG, made in the office.
#include "command/command.hpp"
#include "command/files.hpp"
#include "command/options.hpp"
#include "command/sources.hpp"

#include <fmt/format.h>

namespace wetspell::command {

Exit pool(const Arguments& arguments) {
  namespace po = boost::program_options;
  po::options_description options;
  options.add_options()("words", po::value<std::vector<std::string>>(),
                        "the season's workbook, the pool's code")(
      "out,o", po::value<std::string>()->default_value("."), "folder for the page");
  const auto parsed = parse(arguments, "pool", options, "words");
  if (!parsed)
    return refuse("pool", parsed.error().text);
  if (!parsed.value())
    return Exit::nothing_to_fix;
  const auto& values = *parsed.value();
  if (values.count("words") == 0 || values["words"].as<Arguments>().size() != 2)
    return refuse("pool", "name the season's workbook and the code of one pool.");
  const Arguments words = values["words"].as<Arguments>();
  const std::string out = values["out"].as<std::string>();
  if (!is_workbook(words[0]))
    return refuse("pool",
                  fmt::format("{} is no workbook: the page is made from .ods, .xlsx or .fods.", words[0]));
  if (auto made = make_folder(out); !made)
    return refuse("pool", made.error().text);
  const auto said = run_office(
      {"pool", words[0], words[1], "--oxt", beside_program("wetspell.oxt").string(), "--out", out});
  if (!said)
    return refuse("pool", said.error().text);
  fmt::print("{}", said.value().output);
  return said.value().exit == 0
             ? Exit::nothing_to_fix
             : refuse("pool", fmt::format("the page of pool {} could not be made.", words[1]));
}

} // namespace wetspell::command
