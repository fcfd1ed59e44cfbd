#pragma once
// A stream of records, as workbooks of the old kind (.xls) are kept, without its drawings: among them may be
// pictures that lie elsewhere. Its cells stay.

#include <string>

namespace wetspell::addin {

/// Makes records that nobody reads of those that draw; whether there were any.
bool cut_off_drawings(std::string& records);

} // namespace wetspell::addin
