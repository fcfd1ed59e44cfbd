// What a command is given to read: workbooks through one headless office, folders of CSV tables and CSV files
// by the engine alone.
#pragma once

#include "base/result.hpp"
#include "command/command.hpp"
#include "command/files.hpp"
#include "table/table.hpp"

#include <filesystem>
#include <span>
#include <string>
#include <vector>

namespace wetspell::command {

/// By its ending, in small letters or capitals.
bool is_workbook(const std::filesystem::path& path);

/// The office's own part of the command line; refuses in words when it is not there.
Result<std::filesystem::path> office_program();

struct OfficeSaid {
  int exit = 0;
  std::string output;
};
/// Runs wetspell-office with these words and waits for it; what it has to complain about goes to standard
/// error.
Result<OfficeSaid> run_office(const Arguments& words);

struct Source {
  std::string file;
  Result<std::vector<Table>> tables;
};
/// Whether sheets that Wetspell wrote into a workbook are read like others.
enum class OwnSheets { left_out, read };
/// In the order of `files`. All workbooks are read by one office; one that is too much for it gives a problem
/// and the others are read all the same. With `any`, old workbooks (.xls) and text files of any kind too.
std::vector<Source> read_sources(std::span<const std::string> files, TextFiles wanted = TextFiles::ours,
                                 OwnSheets own = OwnSheets::left_out);

} // namespace wetspell::command
