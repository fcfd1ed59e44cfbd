#include "base/registry.hpp"

#include "base/text.hpp"

#include <algorithm>

namespace wetspell::addin {

namespace {

// A function's static: registrations run while the library is loaded, before any order among files is set.
std::vector<Implementation>& table() {
  static std::vector<Implementation> all;
  return all;
}

} // namespace

Registration::Registration(Implementation implementation) {
  table().push_back(std::move(implementation));
}

std::vector<Implementation> implementations() {
  std::vector<Implementation> all = table();
  std::sort(all.begin(), all.end(), [](const auto& a, const auto& b) { return a.name < b.name; });
  return all;
}

css::uno::Sequence<rtl::OUString> servicesOf(std::string_view implementationName) {
  for (const Implementation& one : table()) {
    if (one.name != implementationName) {
      continue;
    }
    css::uno::Sequence<rtl::OUString> names(static_cast<sal_Int32>(one.services.size()));
    std::transform(one.services.begin(), one.services.end(), names.getArray(),
                   [](const std::string& service) { return toOffice(service); });
    return names;
  }
  return {};
}

} // namespace wetspell::addin
