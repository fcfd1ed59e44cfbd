#include "check/check.hpp"
#include "check/findings_table.hpp"
#include "command/command.hpp"
#include "command/files.hpp"
#include "command/options.hpp"
#include "command/sources.hpp"
#include "exchange/report.hpp"
#include "table/day.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <filesystem>

namespace wetspell::command {

namespace {

namespace fs = std::filesystem;
namespace po = boost::program_options;

struct Checked {
  Exit exit = Exit::nothing_to_fix;
  std::string output;
};

std::string rendered(const Season& season, const CheckReport& report, const std::string& file,
                     std::string_view format) {
  if (format == "json")
    return report_json(season, report, file);
  return format == "csv" ? report_csv(season, report) : report_text(season, report, file);
}

/// Tables of text: the engine alone.
Result<Checked> check_tables(const fs::path& path, const std::string& format, const fs::path& out) {
  auto tables = tables_at(path);
  if (!tables)
    return tables.error();
  auto season = read_season(std::move(tables).value(), serial_of_today());
  if (!season)
    return season.error();
  const auto answers = answers_in(season.value());
  CheckOptions options;
  options.answers = answers;
  const CheckReport report = check(season.value(), options);
  Checked checked{report.open_fix > 0 ? Exit::something_to_fix : Exit::nothing_to_fix,
                  rendered(season.value(), report, path.string(), format)};
  if (!out.empty()) {
    const std::string stem = path.filename().empty() ? "season" : path.stem().string();
    const std::array<std::pair<std::string_view, std::string_view>, 3> files{
        {{"text", ".txt"}, {"csv", ".csv"}, {"json", ".json"}}};
    for (const auto& [kind, ending] : files)
      if (auto written = write_file(out / (stem + "-findings" + std::string(ending)),
                                    rendered(season.value(), report, path.string(), kind));
          !written)
        return written.error();
  }
  return checked;
}

/// Workbooks: the office reads and writes them, with the extension that runs this same engine.
Result<Checked> check_workbook(const fs::path& path, const std::string& format, const fs::path& out) {
  Arguments words{"check",    path.string(), "--oxt", beside_program("wetspell.oxt").string(),
                  "--format", format};
  if (!out.empty())
    words.insert(words.end(), {"--out", out.string()});
  auto said = run_office(words);
  if (!said)
    return said.error();
  if (said.value().exit > 1)
    return Problem{ProblemKind::bad_argument,
                   fmt::format("{} could not be checked in the office.", path.string())};
  return Checked{static_cast<Exit>(said.value().exit), std::move(said.value().output)};
}

} // namespace

Exit check(const Arguments& arguments) {
  po::options_description options;
  options.add_options()("file", po::value<std::vector<std::string>>(),
                        "what to check")("out,o", po::value<std::string>()->default_value(""),
                                         "folder for the findings (and the checked workbook with its pages)")(
      "format,f", po::value<std::string>()->default_value("text"), "text, csv or json");
  const auto parsed = parse(arguments, "check", options, "file");
  if (!parsed)
    return refuse("check", parsed.error().text);
  if (!parsed.value())
    return Exit::nothing_to_fix;
  const auto& values = *parsed.value();
  if (values.count("file") == 0)
    return refuse("check", "name a workbook, a folder of CSV tables or a CSV file of visits.");
  const auto& format = values["format"].as<std::string>();
  if (format != "text" && format != "csv" && format != "json")
    return refuse("check", fmt::format("the format is text, csv or json, not '{}'.", format));
  const fs::path out = values["out"].as<std::string>();
  if (auto made = make_folder(out); !made)
    return refuse("check", made.error().text);

  const auto& files = values["file"].as<std::vector<std::string>>();
  const bool list = format == "json" && files.size() > 1;
  Exit worst = Exit::nothing_to_fix;
  std::string_view between = list ? "[" : "";
  for (const std::string& file : files) {
    std::error_code error;
    if (!fs::exists(file, error)) {
      worst = refuse("check", fmt::format("{}: there is no such file or folder.", file));
      continue;
    }
    const auto checked =
        is_workbook(file) ? check_workbook(file, format, out) : check_tables(file, format, out);
    if (!checked) {
      worst = refuse("check", checked.error().text);
      continue;
    }
    fmt::print("{}{}", between, checked.value().output);
    between = list ? "," : format == "text" ? "\n" : "";
    worst = std::max(worst, checked.value().exit);
  }
  if (list)
    fmt::print("{}]\n", between == "[" ? "[" : "");
  return worst;
}

} // namespace wetspell::command
