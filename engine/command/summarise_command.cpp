// What seasons say: figures of every pool and of the programme, and trends when several seasons are given.
#include "check/findings_table.hpp"
#include "command/command.hpp"
#include "command/files.hpp"
#include "command/options.hpp"
#include "command/sources.hpp"
#include "exchange/summary_report.hpp"
#include "table/day.hpp"

#include <fmt/format.h>

#include <array>
#include <optional>

namespace wetspell::command {

namespace {

namespace fs = std::filesystem;
namespace po = boost::program_options;

struct Asked {
  std::string format;
  fs::path out;
  std::optional<std::string> group_by;
};

std::string rendered(const Season& season, const SeasonSummary& summary, const std::string& file,
                     std::string_view format) {
  if (format == "json")
    return summary_json(season, summary, file);
  return format == "csv" ? summary_csv(season, summary) : summary_text(season, summary, file);
}

/// The summarised workbook with its sheets and charts, made in the office.
Result<void> store_workbook(const std::string& file, const Asked& asked) {
  const auto said = run_office({"summarise", file, "--oxt", beside_program("wetspell.oxt").string(),
                                "--format", "text", "--out", asked.out.string()});
  if (!said)
    return said.error();
  if (said.value().exit > 0)
    return Problem{ProblemKind::bad_argument, fmt::format("{} could not be summarised in the office.", file)};
  return boost::outcome_v2::success();
}

Result<void> store(const Season& season, const SeasonSummary& summary, const std::string& file,
                   const Asked& asked) {
  const fs::path path = file;
  const std::string stem =
      path.filename().empty() ? path.parent_path().filename().string() : path.stem().string();
  constexpr std::array<std::pair<std::string_view, std::string_view>, 3> files{
      {{"text", ".txt"}, {"csv", ".csv"}, {"json", ".json"}}};
  for (const auto& [kind, ending] : files)
    if (auto written = write_file(asked.out / fmt::format("{}-summary{}", stem, ending),
                                  rendered(season, summary, file, kind));
        !written)
      return written.error();
  return is_workbook(path) ? store_workbook(file, asked) : boost::outcome_v2::success();
}

Result<std::string> summarised(Source source, const Asked& asked) {
  if (!source.tables)
    return source.tables.error();
  auto season = read_season(std::move(source.tables).value(), serial_of_today());
  if (!season)
    return Problem{season.error().kind, fmt::format("{}: {}", source.file, season.error().text)};
  const auto answers = answers_in(season.value());
  CheckOptions check_options;
  check_options.answers = answers;
  const CheckReport report = wetspell::check(season.value(), check_options);
  SummaryOptions options;
  options.group_by = asked.group_by.value_or(season.value().settings.group_by);
  const SeasonSummary summary = summarise(season.value(), report, options);
  if (!asked.out.empty())
    if (auto stored = store(season.value(), summary, source.file, asked); !stored)
      return stored.error();
  return rendered(season.value(), summary, source.file, asked.format);
}

} // namespace

Exit summarise(const Arguments& arguments) {
  po::options_description options;
  options.add_options()("file", po::value<std::vector<std::string>>(), "the seasons to summarise")(
      "out,o", po::value<std::string>()->default_value(""),
      "folder for the summary (and the summarised workbook with its pages)")(
      "format,f", po::value<std::string>()->default_value("text"),
      "text, csv or json")("by,b", po::value<std::string>(),
                           "headings of columns of the pools' table, with commas between, by whose contents "
                           "the figures are told apart");
  const auto parsed = parse(arguments, "summarise", options, "file");
  if (!parsed)
    return refuse("summarise", parsed.error().text);
  if (!parsed.value())
    return Exit::nothing_to_fix;
  const auto& values = *parsed.value();
  if (values.count("file") == 0)
    return refuse("summarise", "name a season: a workbook, a folder of CSV tables or a CSV file of visits.");
  Asked asked{values["format"].as<std::string>(), values["out"].as<std::string>(), std::nullopt};
  if (values.count("by") > 0)
    asked.group_by = values["by"].as<std::string>();
  if (asked.format != "text" && asked.format != "csv" && asked.format != "json")
    return refuse("summarise", fmt::format("the format is text, csv or json, not '{}'.", asked.format));
  if (auto made = make_folder(asked.out); !made)
    return refuse("summarise", made.error().text);

  const auto& files = values["file"].as<std::vector<std::string>>();
  const bool list = asked.format == "json" && files.size() > 1;
  Exit worst = Exit::nothing_to_fix;
  std::string_view between = list ? "[" : "";
  for (Source& source : read_sources(files)) {
    const auto text = summarised(std::move(source), asked);
    if (!text) {
      worst = refuse("summarise", text.error().text);
      continue;
    }
    fmt::print("{}{}", between, text.value());
    between = list ? "," : asked.format == "text" ? "\n" : "";
  }
  if (list)
    fmt::print("{}]\n", between == "[" ? "[" : "");
  return worst;
}

} // namespace wetspell::command
