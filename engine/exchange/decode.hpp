// Text files of any usual encoding as UTF-8.
#pragma once

#include <string>
#include <string_view>

namespace wetspell {

struct Decoded {
  std::string text;          ///< UTF-8 without a mark
  std::string_view encoding; ///< "UTF-8", "UTF-16", "Windows-1252"
};

/// UTF-16 by its mark, or by the zero bytes of plain letters; UTF-8 where the bytes are; otherwise
/// Windows-1252, which gives every byte a sign. Half characters become U+FFFD. Never refuses.
///
/// An own reader rather than the C library's iconv: what is needed is one table of 32 signs and the pairs of
/// UTF-16, the guess between them is ours in any case, and iconv stops at the first byte it does not know.
Decoded decode(std::string bytes);

/// Whether the bytes are well-formed UTF-8.
bool is_utf8(std::string_view text);

} // namespace wetspell
