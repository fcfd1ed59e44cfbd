#pragma once
// A workbook to be read only, with nothing in it that reaches outside: an office would fetch linked pictures
// as soon as it opens it, and show an error for a formula whose other file it does not open.

#include "base/css.hpp"
#include "base/result.hpp"
#include "gather/workbook_bytes.hpp"

#include <com/sun/star/io/XInputStream.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>

#include <filesystem>

namespace wetspell::addin {

/// What to open in place of a file.
struct CutOff {
  css::uno::Reference<css::io::XInputStream> stream; ///< none: the file itself, which reaches nowhere
  rtl::OUString filter; ///< the office's name for its format; empty: the office finds out
};

/// Looks at what a file holds, whatever its name: archives (.ods, .xlsx and their like), flat workbooks, old
/// workbooks (.xls). Text is to be opened itself. Refuses what cannot be looked through (kept under a
/// password, damaged, in a strange encoding) or unpacks to more than `most` bytes.
Result<CutOff> without_outside(const css::uno::Reference<css::uno::XComponentContext>& context,
                               const std::filesystem::path& file, std::uintmax_t most = most_bytes_unpacked);

} // namespace wetspell::addin
