#pragma once
// A real office with the built extension, for tests: started at the first use, one for the whole program.

#include "driver/document.hpp"

#include <gtest/gtest.h>

namespace wetspell::host {

/// The program's office, en-US, with the extension. Throws Failure when it does not start.
driver::Office& office();

/// Options for an office of a test's own: another locale, or without the extension.
driver::OfficeOptions withExtension(const std::string& locale = "en-US");
driver::OfficeOptions withoutExtension(const std::string& locale = "en-US");

/// A fixture whose document is new and empty for each test.
class HostTest : public ::testing::Test {
protected:
  driver::Document document = driver::Document::create(office());

  /// What the cell shows after the formula was put in; functions in English, ; between arguments.
  std::string shown(const std::string& formula);
  double value(const std::string& formula);
  /// The office's error number, 0 for none: 502 bad argument, 519 #VALUE!, 523 no convergence,
  /// 525 #NAME?, 532 division by zero, 32767 #N/A, 503 #NUM!.
  int error(const std::string& formula);

  driver::CellState evaluate(const std::string& formula);
  /// The cell those formulas are put in, out of the way of what a test fills in.
  static constexpr const char* scratch = "Z1000";
};

/// Stores the document as a file with this ending (".ods", ".xlsx", ".fods") and opens that file.
driver::Document reopened(const driver::Document& document, const std::string& ending);
/// The same in another office.
driver::Document reopened(const driver::Document& document, const std::string& ending,
                          driver::Office& elsewhere);

} // namespace wetspell::host
