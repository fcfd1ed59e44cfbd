#include "outside/trusting_office.hpp"

#include "base/text.hpp"
#include "driver/failure.hpp"
#include "harness/host.hpp"
#include "harness/kept_office.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/configuration/theDefaultProvider.hpp>
#include <com/sun/star/util/XChangesBatch.hpp>

#include <cstdlib>

namespace wetspell::host {

namespace {

using addin::toOffice;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

/// What an office is told in Tools, Options by somebody who trusts everything.
void trustEverything(const driver::Office& office) {
  const auto change = [&](const char* node, const char* name, const Any& value) {
    css::uno::Sequence<Any> where(1);
    where.getArray()[0] <<=
        css::beans::PropertyValue("nodepath", 0, Any(toOffice(node)), css::beans::PropertyState_DIRECT_VALUE);
    const auto settings =
        css::configuration::theDefaultProvider::get(office.context())
            ->createInstanceWithArguments("com.sun.star.configuration.ConfigurationUpdateAccess", where);
    Reference<css::beans::XPropertySet>(settings, UNO_QUERY_THROW)->setPropertyValue(toOffice(name), value);
    Reference<css::util::XChangesBatch>(settings, UNO_QUERY_THROW)->commitChanges();
  };
  const char* scripting = "/org.openoffice.Office.Common/Security/Scripting";
  const rtl::OUString anywhere("file:///");
  change("/org.openoffice.Office.Calc/Content/Update", "Link", Any(sal_Int32(0))); // always
  change(scripting, "BlockUntrustedRefererLinks", Any(false));
  change(scripting, "MacroSecurityLevel", Any(sal_Int32(0)));
  change(scripting, "SecureURL", Any(css::uno::Sequence<rtl::OUString>(&anywhere, 1)));
}

KeptOffice& kept = keepOffice([] {
  driver::OfficeOptions options = withExtension();
  options.online = true;
  auto office = std::make_unique<driver::Office>(options);
  trustEverything(*office);
  return office;
});

void runScript(const std::string& script, std::initializer_list<std::string> words) {
  std::string line = std::string(WETSPELL_PYTHON) + " '" WETSPELL_TESTS_DIR "/data/gather/" + script + "'";
  for (const std::string& word : words)
    line += " '" + word + "'";
  if (std::system(line.c_str()) != 0)
    throw driver::Failure(script + " wrote nothing");
}

} // namespace

driver::Office& trustingOffice() {
  return kept.office();
}

void writeOutside(const std::filesystem::path& file, const std::filesystem::path& secret,
                  const std::string& generator, const std::string& web) {
  runScript("write_outside.py", {file.string(), secret.string(), generator, web});
}

void disguise(const std::filesystem::path& from, const std::filesystem::path& to, const std::string& how) {
  runScript("disguise.py", {from.string(), to.string(), how});
}

} // namespace wetspell::host
