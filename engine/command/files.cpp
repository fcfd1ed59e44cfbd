#include "command/files.hpp"

#include "exchange/csv.hpp"

#include <boost/dll/runtime_symbol_info.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <fstream>

namespace wetspell::command {

namespace fs = std::filesystem;

Result<std::string> file_text(const fs::path& path) {
  constexpr std::size_t piece = 1 << 20;
  std::ifstream file(path, std::ios::binary);
  std::string text;
  std::error_code no_size; // of a pipe
  if (const auto size = fs::file_size(path, no_size); !no_size)
    text.reserve(size + piece);
  while (file) {
    const std::size_t read = text.size();
    text.resize(read + piece);
    file.read(text.data() + read, piece);
    text.resize(read + static_cast<std::size_t>(file.gcount()));
  }
  if (!file.eof())
    return Problem{ProblemKind::bad_argument, fmt::format("{} cannot be read.", path.string())};
  return text;
}

Result<void> write_file(const fs::path& path, std::string_view text) {
  const Problem problem{ProblemKind::bad_argument, fmt::format("{} cannot be written.", path.string())};
  fs::path draft = path;
  draft += ".part";
  std::ofstream file(draft, std::ios::binary | std::ios::trunc);
  file << text;
  file.close();
  std::error_code error;
  if (file)
    fs::rename(draft, path, error);
  if (!file || error) {
    fs::remove(draft, error);
    return problem;
  }
  return boost::outcome_v2::success();
}

Result<void> make_folder(const fs::path& path) {
  std::error_code error;
  if (!path.empty())
    fs::create_directories(path, error);
  if (error)
    return Problem{ProblemKind::bad_argument,
                   fmt::format("the folder {} cannot be made: {}.", path.string(), error.message())};
  return boost::outcome_v2::success();
}

namespace {

Result<Table> table_at(const fs::path& path, TextFiles files) {
  auto text = file_text(path);
  if (!text)
    return text.error();
  if (files == TextFiles::any)
    return table_from_any_text(std::move(text).value(), path.stem().string());
  return table_from_csv(text.value(), path.stem().string());
}

bool is_table(const fs::path& path, TextFiles files) {
  const std::string ending = path.extension().string();
  return ending == ".csv" || (files == TextFiles::any && (ending == ".tsv" || ending == ".txt"));
}

} // namespace

Result<std::vector<Table>> tables_at(const fs::path& path, TextFiles wanted) {
  std::vector<fs::path> files;
  std::error_code error;
  if (!fs::is_directory(path, error)) {
    files.push_back(path);
  } else {
    for (fs::directory_iterator each(path, error), end; !error && each != end; each.increment(error))
      if (is_table(each->path(), wanted))
        files.push_back(each->path());
    if (error)
      return Problem{ProblemKind::bad_argument, fmt::format("{} cannot be read.", path.string())};
    if (files.empty())
      return Problem{ProblemKind::not_enough, fmt::format("{} holds no .csv file.", path.string())};
    std::sort(files.begin(), files.end());
  }
  std::vector<Table> tables;
  for (const fs::path& file : files) {
    auto table = table_at(file, wanted);
    if (!table)
      return table.error();
    tables.push_back(std::move(table).value());
  }
  return tables;
}

fs::path beside_program(std::string_view name) {
  return fs::path(boost::dll::program_location().string()).parent_path() / name;
}

} // namespace wetspell::command
