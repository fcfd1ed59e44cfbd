#include "gather/gathering.hpp"

#include <algorithm>

namespace wetspell {

namespace {

Cell remarks_on(const GatheredFile& file) {
  if (!file.problem.empty())
    return Cell::of_text("Not read: " + file.problem);
  std::string all;
  for (const std::string& remark : file.remarks)
    all += (all.empty() ? "" : " ") + remark;
  return Cell::of_text(std::move(all));
}

} // namespace

Table gathered_table(const Table& before, const Gathering& gathering) {
  const auto& files = gathering.plan.files;
  std::vector<std::size_t> kept;
  if (before.columns() == gathered_headings.size())
    for (std::size_t row = 1; row < before.rows(); ++row) {
      const std::string name = to_text(before.at(row, 0));
      if (std::none_of(files.begin(), files.end(),
                       [&](const GatheredFile& file) { return file.file == name; }))
        kept.push_back(row);
    }
  Table table(Place{}, 1 + kept.size() + files.size(), gathered_headings.size());
  for (std::size_t column = 0; column < gathered_headings.size(); ++column) {
    table.at(0, column) = Cell::of_text(std::string(gathered_headings[column]));
    for (std::size_t i = 0; i < kept.size(); ++i)
      table.at(1 + i, column) = before.at(kept[i], column);
  }
  std::size_t row = 1 + kept.size();
  for (const GatheredFile& file : files) {
    table.at(row, 0) = Cell::of_text(file.file);
    std::size_t column = 1;
    for (const std::size_t count : {file.rows, file.from_here, file.there, file.to_choose, file.answers})
      table.at(row, column++) = file.problem.empty() ? Cell::of_number(static_cast<double>(count)) : Cell{};
    table.at(row++, column) = remarks_on(file);
  }
  return table;
}

} // namespace wetspell
