// Writes a fresh season workbook: write_workbook FILE.fods
#include "templates/workbook.hpp"

#include <cstdlib>
#include <exception>
#include <fstream>
#include <iostream>

int main(int count, char** arguments) {
  if (count != 2) {
    std::cerr << "usage: write_workbook FILE.fods\n";
    return EXIT_FAILURE;
  }
  try {
    std::ofstream file(arguments[1], std::ios::binary);
    file << wetspell::workbook::season_workbook();
    file.close();
    if (file)
      return EXIT_SUCCESS;
    std::cerr << "could not write " << arguments[1] << '\n';
  } catch (const std::exception& problem) {
    std::cerr << problem.what() << '\n';
  }
  return EXIT_FAILURE;
}
