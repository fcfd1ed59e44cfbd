#include "harness/host.hpp"

#include "driver/files.hpp"
#include "harness/kept_office.hpp"

namespace wetspell::host {

namespace {

/// Below the limit ctest sets for the whole program, so that a hanging office is named in the output.
constexpr std::chrono::seconds officeLimit{540};

KeptOffice& kept = keepOffice([] { return std::make_unique<driver::Office>(withExtension()); });

} // namespace

driver::Office& office() {
  return kept.office();
}

driver::OfficeOptions withExtension(const std::string& locale) {
  driver::OfficeOptions options = withoutExtension(locale);
  options.extensions = {WETSPELL_OXT};
  return options;
}

driver::OfficeOptions withoutExtension(const std::string& locale) {
  driver::OfficeOptions options;
  options.locale = locale;
  options.lifeLimit = officeLimit;
  return options;
}

driver::CellState HostTest::evaluate(const std::string& formula) {
  document.setFormula(scratch, formula);
  return document.read(scratch);
}

std::string HostTest::shown(const std::string& formula) {
  return evaluate(formula).text;
}

double HostTest::value(const std::string& formula) {
  return evaluate(formula).value;
}

int HostTest::error(const std::string& formula) {
  return evaluate(formula).error;
}

driver::Document reopened(const driver::Document& document, const std::string& ending) {
  return reopened(document, ending, document.office());
}

driver::Document reopened(const driver::Document& document, const std::string& ending,
                          driver::Office& elsewhere) {
  const driver::TemporaryFolder folder("wetspell-test-");
  const auto file = folder.path() / ("stored" + ending);
  document.store(file);
  return driver::Document::open(elsewhere, file);
}

} // namespace wetspell::host
