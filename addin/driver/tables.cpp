#include "driver/tables.hpp"

#include "driver/document.hpp"
#include "exchange/tables_json.hpp"

#include <nlohmann/json.hpp>

#include <new>

namespace wetspell::driver {

std::string tablesLine(Office& office, const std::filesystem::path& file, addin::Sheets which) {
  const auto text = [](const std::string& words) {
    return nlohmann::json(words).dump(-1, ' ', false, nlohmann::json::error_handler_t::replace);
  };
  const std::string head = "{\"file\":" + text(file.string());
  const auto problem = [&](const std::string& words) { return head + ",\"problem\":" + text(words) + "}"; };
  try {
    const Document document = Document::open(office, file, toRead);
    return head + ",\"tables\":" + json_from_tables(addin::tablesOf(document.model(), which)) + "}";
  } catch (const css::uno::Exception&) {
    return problem(office.failed(file.string()).what());
  } catch (const std::bad_alloc&) {
    return problem(file.string() + " needs more memory than there is");
  } catch (const std::exception& error) {
    return problem(error.what());
  }
}

} // namespace wetspell::driver
