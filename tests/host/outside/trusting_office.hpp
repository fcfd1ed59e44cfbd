#pragma once
// The office of somebody who trusts everything, and workbooks that would use it.

#include "driver/office.hpp"

#include <filesystem>
#include <string>

namespace wetspell::host {

/// An office with the extension that may fetch from the net, and follows every link it finds.
driver::Office& trustingOffice();

/// Writes a workbook of visits (.ods, .xlsx) whose depths are formulas that reach outside, with a linked
/// picture. `secret`: a workbook to refer to, without its ending; `web`: an address.
void writeOutside(const std::filesystem::path& file, const std::filesystem::path& secret,
                  const std::string& generator, const std::string& web);

/// Writes such a workbook with the picture somewhere else (tests/data/gather/disguise.py).
void disguise(const std::filesystem::path& from, const std::filesystem::path& to, const std::string& how);

} // namespace wetspell::host
