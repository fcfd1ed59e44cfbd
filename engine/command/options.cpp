#include "command/options.hpp"

#include <fmt/format.h>
#include <fmt/ostream.h>

#include <algorithm>
#include <iostream>

namespace wetspell::command {

namespace po = boost::program_options;

Result<std::optional<po::variables_map>> parse(const Arguments& arguments, std::string_view command,
                                               po::options_description options, const char* positional) {
  options.add_options()("help,h", "say what the command does");
  po::options_description visible("Options");
  for (const auto& option : options.options())
    if (option->long_name() != positional)
      visible.add(option);
  po::positional_options_description words;
  if (*positional != '\0')
    words.add(positional, -1);
  try {
    po::variables_map values;
    po::store(po::command_line_parser(arguments).options(options).positional(words).run(), values);
    po::notify(values);
    if (values.count("help") == 0)
      return std::optional(std::move(values));
  } catch (const po::error& error) { // the library's way of telling a user's mistake
    return Problem{ProblemKind::bad_argument, error.what()};
  }
  const auto spec = std::find_if(commands().begin(), commands().end(),
                                 [&](const CommandSpec& each) { return each.name == command; });
  fmt::print("wetspell {}\n\n{}\n\n", spec->usage, spec->summary);
  std::cout << visible << std::flush;
  return std::optional<po::variables_map>{};
}

Exit refuse(std::string_view command, std::string_view why) {
  fmt::print(stderr, "wetspell {}: {}\n", command, why);
  return Exit::could_not;
}

} // namespace wetspell::command
