#include "exchange/gather_report.hpp"

#include "measure/refuse.hpp"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace wetspell {

namespace {

using nlohmann::json;

std::string counted(std::size_t count, std::string_view one, std::string_view several) {
  return fmt::format("{} {}", count, count == 1 ? one : several);
}

json told(const Gathering& gathering) {
  const GatherPlan& plan = gathering.plan;
  json files = json::array();
  for (const GatheredFile& file : plan.files) {
    json one{{"file", file.file}};
    if (!file.problem.empty())
      one["problem"] = file.problem;
    else
      one.update({{"rows", file.rows},
                  {"added", file.added},
                  {"from_here", file.from_here},
                  {"there", file.there},
                  {"to_choose", file.to_choose},
                  {"answers", file.answers},
                  {"remarks", file.remarks}});
    files.push_back(std::move(one));
  }
  return {{"folder", gathering.folder},
          {"changed", gathering.changed},
          {"added", {{"visits", plan.visits.size()}, {"life", plan.life.size()}}},
          {"carried", plan.carried.size()},
          {"to_choose", plan.open_lines()},
          {"not_read", plan.not_read()},
          {"answered", gathering.answered},
          {"files", std::move(files)},
          {"remarks", gathering.remarks}};
}

/// The first sentences.
std::string verdict(const json& told) {
  const auto number = [](const json& value) { return value.get<std::size_t>(); };
  std::string text =
      fmt::format("{} read; {} and {} added.",
                  counted(told.at("files").size() - number(told.at("not_read")), "file was", "files were"),
                  counted(number(told.at("added").at("visits")), "visit", "visits"),
                  counted(number(told.at("added").at("life")), "count of life", "counts of life"));
  if (number(told.at("answered")) > 0)
    text +=
        fmt::format(" {} an answer.", counted(number(told.at("answered")), "finding has", "findings have"));
  if (number(told.at("carried")) > 0)
    text += fmt::format(" {} carried in.", counted(number(told.at("carried")), "choice was", "choices were"));
  if (number(told.at("to_choose")) > 0)
    text += fmt::format(" {} to choose between on the sheet 'To choose'.",
                        counted(number(told.at("to_choose")), "cell is", "cells are"));
  if (number(told.at("not_read")) > 0)
    text += fmt::format(" {} not be read; the sheet 'Gathered' says why.",
                        counted(number(told.at("not_read")), "file could", "files could"));
  if (!told.at("changed").get<bool>())
    text += " Nothing was changed.";
  return text;
}

} // namespace

std::string gathering_json(const Gathering& gathering) {
  return told(gathering).dump(2, ' ', false, json::error_handler_t::replace) + "\n";
}

std::string gathering_verdict(const Gathering& gathering) {
  return verdict(told(gathering));
}

Result<std::string> gathering_text(std::string_view text) {
  const json told = json::parse(text, nullptr, false);
  try {
    std::string all = verdict(told) + "\n";
    for (const json& file : told.at("files")) {
      const std::string name = file.at("file").get<std::string>();
      if (file.contains("problem")) {
        all += fmt::format("  {}: not read: {}\n", name, file.at("problem").get<std::string>());
        continue;
      }
      all += fmt::format("  {}: {}: {} added, {} there already, {} to choose; {}.\n", name,
                         counted(file.at("rows").get<std::size_t>(), "row", "rows"),
                         file.at("added").get<std::size_t>(),
                         file.at("rows").get<std::size_t>() - file.at("added").get<std::size_t>(),
                         file.at("to_choose").get<std::size_t>(),
                         counted(file.at("answers").get<std::size_t>(), "answer", "answers"));
      for (const json& remark : file.at("remarks"))
        all += fmt::format("    {}\n", remark.get<std::string>());
    }
    for (const json& remark : told.at("remarks"))
      all += fmt::format("  {}\n", remark.get<std::string>());
    return all;
  } catch (const json::exception&) { // the library's way of saying that something is not there
    return bad_argument("This is no report of a gathering.");
  }
}

} // namespace wetspell
