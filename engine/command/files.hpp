// Files in and out for the commands.
#pragma once

#include "base/result.hpp"
#include "table/table.hpp"

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace wetspell::command {

/// The whole file; a Problem in words when it cannot be read.
Result<std::string> file_text(const std::filesystem::path& path);

/// Writes the whole file or leaves the old one as it was; a Problem in words when it cannot be written.
Result<void> write_file(const std::filesystem::path& path, std::string_view text);

/// Makes the folder (and those it stands in) where it is not there yet; an empty path asks for none.
Result<void> make_folder(const std::filesystem::path& path);

/// Which text files are read: our own tables (comma-separated, UTF-8), or whatever people have kept (.tsv and
/// .txt too, any delimiter and encoding).
enum class TextFiles { ours, any };
/// The tables of a folder (its .csv files, by name) or of one .csv file. A table is called as its file.
Result<std::vector<Table>> tables_at(const std::filesystem::path& path, TextFiles files = TextFiles::ours);

/// A file that was built or installed beside this program.
std::filesystem::path beside_program(std::string_view name);

} // namespace wetspell::command
