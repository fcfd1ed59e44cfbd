#include "driver/tables.hpp"

#include "driver/document.hpp"
#include "exchange/tables_json.hpp"
#include "sheet/read_sheets.hpp"

#include <nlohmann/json.hpp>

namespace wetspell::driver {

std::string tablesLine(Office& office, const std::filesystem::path& file) {
  const auto text = [](const std::string& words) {
    return nlohmann::json(words).dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
  };
  const std::string head = "{\"file\":" + text(file.string());
  try {
    OpenOptions options;
    options.readOnly = true;
    const Document document = Document::open(office, file, options);
    return head + ",\"tables\":" + json_from_tables(addin::tablesOf(document.model())) + "}";
  } catch (const Failure& failure) {
    return head + ",\"problem\":" + text(failure.what()) + "}";
  }
}

} // namespace wetspell::driver
