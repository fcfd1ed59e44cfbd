#include "gathering/came_back.hpp"

#include <com/sun/star/container/XNamed.hpp>

#include <sstream>

namespace wetspell::host {

using driver::Document;

void CameBack::send(const std::string& file, const Lines& cells, const std::string& sheet) const {
  const Document sent = Document::create(office());
  for (std::size_t row = 0; row < cells.size(); ++row)
    for (std::size_t column = 0; column < cells[row].size(); ++column) {
      const std::string at = column_letters(column) + std::to_string(row + 1);
      if (const std::string& text = cells[row][column]; text.starts_with('\''))
        sent.setText(at, text.substr(1));
      else
        sent.type(at, text);
    }
  css::uno::Reference<css::container::XNamed>(sent.sheet(sent.sheetNames().front()),
                                              css::uno::UNO_QUERY_THROW)
      ->setName(rtl::OUString::createFromAscii(sheet.c_str()));
  sent.store(folder.path() / file);
}

nlohmann::json CameBack::gather(const Desk& with) const {
  return nlohmann::json::parse(text(with.call("gather", {any(folder.path().string())})));
}

nlohmann::json CameBack::gather() const {
  return gather(desk);
}

std::vector<std::string> CameBack::shown(const std::string& sheet) const {
  std::vector<std::string> lines;
  std::istringstream all(document.dumpSheet(sheet));
  for (std::string line; std::getline(all, line);) {
    for (char& c : line)
      c = c == '\t' ? '|' : c;
    lines.push_back(line);
  }
  return lines;
}

} // namespace wetspell::host
