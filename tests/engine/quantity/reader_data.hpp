// The lines of tests/data/quantity/*.tsv.
#pragma once

#include <string>
#include <vector>

namespace wetspell::testing {

struct ReaderLine {
  int line = 0;
  std::string kind, assume, text, status, si, si_high, count, unit, reason;
};

/// Every line of a file in tests/data/quantity, comments and the heading left out, \xNN turned into bytes.
std::vector<ReaderLine> reader_lines(const std::string& file);

} // namespace wetspell::testing
