#include "audit/audit_in_office.hpp"

#include "base/text.hpp"
#include "command/program.hpp"
#include "driver/files.hpp"
#include "engine/season/sheets.hpp"
#include "sheet/sheets.hpp"

#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/frame/XStorable.hpp>

namespace wetspell::host {

using addin::toOffice;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using nlohmann::json;

driver::Document workbook_of(const std::vector<Table>& sheets, driver::Office& in,
                             const driver::OpenOptions& options) {
  driver::Document document = driver::Document::create(in, options);
  const Reference<css::container::XNamed> first(document.sheet(document.sheetNames().front()),
                                                UNO_QUERY_THROW);
  for (std::size_t i = 0; i < sheets.size(); ++i) {
    if (i == 0)
      first->setName(toOffice(sheets[i].sheet()));
    else
      document.model()->getSheets()->insertNewByName(toOffice(sheets[i].sheet()), static_cast<sal_Int16>(i));
    for (std::size_t row = 0; row < sheets[i].rows(); ++row)
      for (std::size_t column = 0; column < sheets[i].columns(); ++column)
        if (!sheets[i].at(row, column).empty())
          addin::write(document.model(), sheets[i].place(row, column), sheets[i].at(row, column));
  }
  return document;
}

void store(const driver::Document& document, const std::filesystem::path& file) {
  if (file.extension() != ".xls") {
    document.store(file);
    return;
  }
  const css::beans::PropertyValue filter("FilterName", 0, Any(rtl::OUString("MS Excel 97")),
                                         css::beans::PropertyState_DIRECT_VALUE);
  Reference<css::frame::XStorable>(document.model(), UNO_QUERY_THROW)
      ->storeToURL(driver::urlOf(file), {&filter, 1});
}

std::vector<Table> small_old_sheet() {
  return {testing::sheet("Old", "Pools of the north woods, spring 2019\n"
                                "\n"
                                "Site | Dt | Max depth, cm | Water temp | pH | Notes\n"
                                "B07 | 2019-04-01 | 30 | 6.5 | 6.1 |\n"
                                "B08 | 2019-04-16 | 41 | 7 | 6.2 | path flooded\n"
                                "B09 | 2019-04-17 | stick lost | 8 | 6 |\n"
                                "Total | | 71 | | |")};
}

json gist(const json& audit) {
  json all = json::array();
  for (const json& table : audit.is_array() ? audit : json::array({audit})) {
    json said{{"rows", table["rows"]},
              {"headings", json::array()},
              {"found", json::array()},
              {"unread", json::array()}};
    for (const json& heading : table["headings"])
      said["headings"].push_back({heading["column"], heading["heading"], heading["field"], heading["unit"]});
    for (const json& finding : table["findings"])
      said["found"].push_back({finding["rule"], finding["row"], finding["column"]});
    for (const json& unread : table["unread"])
      said["unread"].push_back({unread["row"], unread["column"]});
    all.push_back(std::move(said));
  }
  return all;
}

json audited(const std::filesystem::path& file, const std::vector<std::string>& more) {
  std::vector<std::string> words{"audit", file.string(), "--format", "json"};
  words.insert(words.end(), more.begin(), more.end());
  const test::Said said = test::run(words);
  EXPECT_LE(said.exit, 1) << said.err;
  return json::parse(said.out, nullptr, false);
}

std::size_t row_with(const driver::Document& document, const std::string& sheet, const std::string& column,
                     const std::string& words) {
  constexpr std::size_t looked = 400;
  for (std::size_t row = 1; row <= looked; ++row)
    if (document.read(sheet + "." + column + std::to_string(row)).text == words)
      return row;
  ADD_FAILURE() << "no cell of column " << column << " on " << sheet << " shows " << words;
  return 1;
}

} // namespace wetspell::host
