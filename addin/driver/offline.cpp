#include "driver/offline.hpp"

#include "base/text.hpp"

#include <com/sun/star/ucb/UniversalContentBroker.hpp>

namespace wetspell::driver {

namespace {

/// Whether addresses that begin so name a file, or something in the office itself.
bool staysHere(const std::string& scheme) {
  return scheme == "file" || scheme == "private" ||
         (scheme.starts_with("vnd.sun.star.") && !scheme.starts_with("vnd.sun.star.webdav"));
}

} // namespace

void takeOffline(const css::uno::Reference<css::uno::XComponentContext>& office) {
  const auto ways = css::ucb::UniversalContentBroker::create(office);
  for (const auto& way : ways->queryContentProviders())
    if (!staysHere(addin::fromOffice(way.Scheme)))
      ways->deregisterContentProvider(way.ContentProvider, way.Scheme);
}

} // namespace wetspell::driver
