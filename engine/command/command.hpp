// The command line: one file a command, all with the same shape.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace wetspell::command {

/// What a command leaves behind for the shell.
enum class Exit : int {
  nothing_to_fix = 0,
  something_to_fix = 1,
  could_not = 2, ///< bad usage, or a file that could not be read
};

using Arguments = std::vector<std::string>;

struct CommandSpec {
  std::string_view name;
  std::string_view usage;
  std::string_view summary;
  Exit (*run)(const Arguments&);
};
std::span<const CommandSpec> commands();

// Each in its own file.
Exit audit(const Arguments& arguments);
Exit check(const Arguments& arguments);
Exit summarise(const Arguments& arguments);
Exit pool(const Arguments& arguments);
Exit gather(const Arguments& arguments);
Exit ask(const Arguments& arguments);
Exit handout(const Arguments& arguments);
Exit read(const Arguments& arguments);
Exit walk(const Arguments& arguments);
Exit new_workbook(const Arguments& arguments);
Exit rules(const Arguments& arguments);
Exit functions(const Arguments& arguments);
Exit fields(const Arguments& arguments);
Exit limits(const Arguments& arguments);
Exit figures(const Arguments& arguments);

} // namespace wetspell::command
