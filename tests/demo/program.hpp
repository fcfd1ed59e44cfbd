// Shell commands of a test, and what they wrote.
#pragma once

#include "text_of.hpp"

#include <cstdlib>
#include <string>

#include <sys/wait.h>

namespace wetspell::test {

/// What the command left for the shell.
inline int shell(const std::string& command) {
  const int status = std::system(command.c_str());
  return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

} // namespace wetspell::test
