// Command line options by Boost.Program_options, with --help everywhere.
#pragma once

#include "base/result.hpp"
#include "command/command.hpp"

#include <boost/program_options.hpp>

#include <optional>
#include <string_view>

namespace wetspell::command {

/// Parses the arguments of a command. `positional` names the option that takes the words without dashes (""
/// for none). Prints the help and gives nothing when --help is there; a Problem says what is wrong with the
/// words.
Result<std::optional<boost::program_options::variables_map>>
parse(const Arguments& arguments, std::string_view command,
      boost::program_options::options_description options, const char* positional);

/// Says on standard error what went wrong.
Exit refuse(std::string_view command, std::string_view why);

} // namespace wetspell::command
