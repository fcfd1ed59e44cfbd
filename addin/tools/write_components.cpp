// write_components ENVIRONMENT LIBRARY FILE: what the library registers, as the file the office reads.

#include "base/registry.hpp"

#include <fmt/format.h>

#include <fstream>

int main(int argc, char** argv) {
  if (argc != 4) {
    fmt::print(stderr, "usage: write_components ENVIRONMENT LIBRARY FILE\n");
    return 2;
  }
  std::string text =
      fmt::format("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                  "<components xmlns=\"http://openoffice.org/2010/uno-components\">\n"
                  " <component loader=\"com.sun.star.loader.SharedLibrary\" prefix=\"wetspell\""
                  " environment=\"{}\" uri=\"{}\">\n",
                  argv[1], argv[2]);
  for (const auto& one : wetspell::addin::implementations()) {
    text += fmt::format("  <implementation name=\"{}\">", one.name);
    for (const auto& service : one.services) {
      text += fmt::format("<service name=\"{}\"/>", service);
    }
    text += "</implementation>\n";
  }
  text += " </component>\n</components>\n";
  std::ofstream file(argv[3], std::ios::binary);
  file << text;
  file.close();
  if (!file) {
    fmt::print(stderr, "write_components: cannot write {}\n", argv[3]);
    return 1;
  }
  return 0;
}
