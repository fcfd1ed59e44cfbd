// What seasons say: figures of every pool and of the programme, and trends when several seasons are given.
#include "check/findings_table.hpp"
#include "command/command.hpp"
#include "command/files.hpp"
#include "command/options.hpp"
#include "command/sources.hpp"
#include "exchange/summary_report.hpp"
#include "exchange/trend_report.hpp"
#include "quantity/print.hpp"
#include "table/day.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <memory>
#include <optional>
#include <span>
#include <vector>

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

/// A season and what it says, kept for the trends over several.
struct Summarised {
  std::unique_ptr<Season> season;
  SeasonSummary summary;
  std::string text;
};

Result<Summarised> summarised(Source source, const Asked& asked) {
  if (!source.tables)
    return source.tables.error();
  auto read = read_season(std::move(source.tables).value(), serial_of_today());
  if (!read)
    return Problem{read.error().kind, fmt::format("{}: {}", source.file, read.error().text)};
  Summarised all;
  all.season = std::make_unique<Season>(std::move(read).value());
  const auto answers = answers_in(*all.season);
  CheckOptions check_options;
  check_options.answers = answers;
  const CheckReport report = wetspell::check(*all.season, check_options);
  SummaryOptions options;
  options.group_by = asked.group_by.value_or(all.season->settings.group_by);
  all.summary = summarise(*all.season, report, options);
  if (!asked.out.empty())
    if (auto stored = store(*all.season, all.summary, source.file, asked); !stored)
      return stored.error();
  if (asked.format == "csv")
    for (const std::string& remark : all.summary.remarks)
      fmt::print(stderr, "{}: {}\n", source.file, remark);
  all.text = rendered(*all.season, all.summary, source.file, asked.format);
  return all;
}

/// The year in the settings, or that of the visit in the middle.
std::optional<int> year_of(const Season& season) {
  if (season.settings.season_year)
    return season.settings.season_year;
  std::vector<double> days;
  for (const Visit& visit : season.visits)
    if (visit.date.has_value())
      days.push_back(visit.date.si);
  if (days.empty())
    return std::nullopt;
  const auto middle = days.begin() + static_cast<std::ptrdiff_t>(days.size() / 2);
  std::nth_element(days.begin(), middle, days.end());
  return std::stoi(print_date(*middle)); // a date begins with its year
}

/// What the seasons say together, in the units of the newest; empty with fewer than two.
Result<std::string> over_the_years(std::span<const Summarised> seasons, const Asked& asked) {
  std::vector<SeasonOfYear> years;
  for (const Summarised& each : seasons)
    if (const auto year = year_of(*each.season))
      years.push_back({*year, each.season.get(), &each.summary});
  if (years.size() < 2)
    return std::string();
  const auto newest = std::max_element(
      years.begin(), years.end(), [](const auto& one, const auto& other) { return one.year < other.year; });
  const Settings& settings = newest->season->settings;
  const auto all = trends(years);
  const std::array<std::pair<std::string_view, std::string>, 3> forms{
      {{"text", trends_text(all, years.size(), settings)},
       {"csv", trends_csv(all, settings)},
       {"json", trends_json(all, settings)}}};
  std::string asked_for;
  for (const auto& [kind, text] : forms) {
    if (kind == asked.format)
      asked_for = text;
    if (asked.out.empty())
      continue;
    const std::string_view ending = kind == "text" ? "txt" : kind;
    if (auto written = write_file(asked.out / fmt::format("trends.{}", ending), text); !written)
      return written.error();
  }
  return asked_for;
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
  const auto say = [&](const std::string& text) {
    fmt::print("{}{}", between, text);
    between = list ? "," : asked.format == "text" ? "\n" : "";
  };
  std::vector<Summarised> seasons;
  for (Source& source : read_sources(files)) {
    auto season = summarised(std::move(source), asked);
    if (!season) {
      worst = refuse("summarise", season.error().text);
      continue;
    }
    say(season.value().text);
    seasons.push_back(std::move(season).value());
  }
  if (const auto together = over_the_years(seasons, asked); !together)
    worst = refuse("summarise", together.error().text);
  else if (!together.value().empty())
    say(together.value());
  if (list)
    fmt::print("{}]\n", between == "[" ? "[" : "");
  return worst;
}

} // namespace wetspell::command
