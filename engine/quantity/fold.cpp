#include "quantity/fold.hpp"

#include "quantity/scan.hpp"

#include <boost/locale/utf.hpp>

#include <algorithm>
#include <cstdint>
#include <iterator>

namespace wetspell {

namespace {

enum class Wide : std::uint8_t { drop, space, character, fraction };

/// What becomes of a character beyond ASCII.
struct WideRow {
  char32_t code;
  Wide how;
  std::string_view plain;
};

constexpr WideRow wide_rows[] = {
    {0x00A0, Wide::character, "\x02"}, // no-break space
    {0x00AD, Wide::drop, ""},          // soft hyphen
    {0x00B0, Wide::character, "\x01"}, // degree sign
    {0x00B1, Wide::character, "\x05"}, // plus-minus sign
    {0x00B2, Wide::character, "^2"},   // superscript two
    {0x00B3, Wide::character, "^3"},   // superscript three
    {0x00B4, Wide::character, "'"},    // acute accent, typed for a prime
    {0x00BA, Wide::character, "\x01"}, // masculine ordinal, typed for a degree sign
    {0x00BC, Wide::fraction,
     "1\x10"
     "4"}, //
    {0x00BD, Wide::fraction,
     "1\x10"
     "2"}, //
    {0x00BE, Wide::fraction,
     "3\x10"
     "4"},                             //
    {0x00D7, Wide::character, "\x0f"}, // multiplication sign
    {0x02B9, Wide::character, "'"},    // modifier prime
    {0x02BA, Wide::character, "\""},   // modifier double prime
    {0x02DA, Wide::character, "\x01"}, // ring above, typed for a degree sign
    {0x2000, Wide::space, ""},         // en quad
    {0x2001, Wide::space, ""},         // em quad
    {0x2002, Wide::space, ""},         // en space
    {0x2003, Wide::space, ""},         // em space
    {0x2004, Wide::space, ""},         // three-per-em space
    {0x2005, Wide::space, ""},         // four-per-em space
    {0x2006, Wide::space, ""},         // six-per-em space
    {0x2007, Wide::character, "\x02"}, // figure space
    {0x2008, Wide::space, ""},         // punctuation space
    {0x2009, Wide::character, "\x02"}, // thin space
    {0x200A, Wide::space, ""},         // hair space
    {0x200B, Wide::drop, ""},          // zero width space
    {0x200E, Wide::drop, ""},          // left-to-right mark
    {0x200F, Wide::drop, ""},          // right-to-left mark
    {0x2010, Wide::character, "-"},    // hyphen
    {0x2011, Wide::character, "-"},    // no-break hyphen
    {0x2012, Wide::character, "-"},    // figure dash
    {0x2013, Wide::character, "-"},    // en dash
    {0x2014, Wide::character, "-"},    // em dash
    {0x2015, Wide::character, "-"},    // horizontal bar
    {0x2018, Wide::character, "'"},    // single quotes
    {0x2019, Wide::character, "'"},    //
    {0x201C, Wide::character, "\""},   // double quotes
    {0x201D, Wide::character, "\""},   //
    {0x2026, Wide::character, "..."},  // ellipsis
    {0x202F, Wide::character, "\x02"}, // narrow no-break space
    {0x2032, Wide::character, "'"},    // prime
    {0x2033, Wide::character, "\""},   // double prime
    {0x2044, Wide::character, "\x10"}, // fraction slash
    {0x2060, Wide::drop, ""},          // word joiner
    {0x2103, Wide::character,
     "\x01"
     "c"}, // degree Celsius
    {0x2109, Wide::character,
     "\x01"
     "f"},                          // degree Fahrenheit
    {0x212A, Wide::character, "k"}, // kelvin sign
    {0x2150, Wide::fraction,
     "1\x10"
     "7"}, //
    {0x2151, Wide::fraction,
     "1\x10"
     "9"}, //
    {0x2153, Wide::fraction,
     "1\x10"
     "3"}, //
    {0x2154, Wide::fraction,
     "2\x10"
     "3"}, //
    {0x2155, Wide::fraction,
     "1\x10"
     "5"}, //
    {0x2156, Wide::fraction,
     "2\x10"
     "5"}, //
    {0x2157, Wide::fraction,
     "3\x10"
     "5"}, //
    {0x2158, Wide::fraction,
     "4\x10"
     "5"}, //
    {0x2159, Wide::fraction,
     "1\x10"
     "6"}, //
    {0x215A, Wide::fraction,
     "5\x10"
     "6"}, //
    {0x215B, Wide::fraction,
     "1\x10"
     "8"}, //
    {0x215C, Wide::fraction,
     "3\x10"
     "8"}, //
    {0x215D, Wide::fraction,
     "5\x10"
     "8"}, //
    {0x215E, Wide::fraction,
     "7\x10"
     "8"},                             //
    {0x2212, Wide::character, "-"},    // minus sign
    {0x2215, Wide::character, "/"},    // division slash
    {0x2236, Wide::character, ":"},    // ratio
    {0x223C, Wide::character, "~"},    // tilde operator
    {0x2245, Wide::character, "~"},    // approximately equal to
    {0x2248, Wide::character, "~"},    // almost equal to
    {0x2264, Wide::character, "\x06"}, // less-than or equal to
    {0x2265, Wide::character, "\x0e"}, // greater-than or equal to
    {0x2611, Wide::character, "\x03"}, // ballot box with check
    {0x2612, Wide::character, "\x04"}, // ballot box with x
    {0x2705, Wide::character, "\x03"}, // heavy check mark, coloured
    {0x2713, Wide::character, "\x03"}, // check mark
    {0x2714, Wide::character, "\x03"}, // heavy check mark
    {0x2717, Wide::character, "\x04"}, // ballot x
    {0x2718, Wide::character, "\x04"}, // heavy ballot x
    {0x274C, Wide::character, "\x04"}, // cross mark
    {0x2A7D, Wide::character, "\x06"}, // less-than or slanted equal to
    {0x2A7E, Wide::character, "\x0e"}, // greater-than or slanted equal to
    {0x3000, Wide::space, ""},         // ideographic space
    {0xFE0E, Wide::drop, ""},          // text style selector
    {0xFE0F, Wide::drop, ""},          // picture style selector
    {0xFE63, Wide::character, "-"},    // small hyphen
    {0xFEFF, Wide::drop, ""},          // byte order mark
    {0xFF05, Wide::character, "%"},    // full-width per cent
    {0xFF0D, Wide::character, "-"},    // full-width hyphen
    {0xFF5E, Wide::character, "~"},    // full-width tilde
};

consteval bool sorted() {
  for (std::size_t i = 1; i < std::size(wide_rows); ++i)
    if (wide_rows[i - 1].code >= wide_rows[i].code)
      return false;
  return true;
}
static_assert(sorted(), "searched by halving");

bool is_space(char c) {
  return c == ' ' || c == '\t' || c == '\n' || c == '\r';
}

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && is_space(text.front()))
    text.remove_prefix(1);
  while (!text.empty() && is_space(text.back()))
    text.remove_suffix(1);
  return text;
}

} // namespace

/// A space that does not break parts thousands between digits and is a plain space everywhere else.
void Folded::put(char c) {
  char* last = length_ > 0 ? &buffer_[length_ - 1] : nullptr;
  if (c == sign::group && (last == nullptr || !is_digit(*last)))
    return put_space();
  if (last != nullptr && *last == sign::group && !is_digit(c))
    *last = ' ';
  if (c != ' ' || (last != nullptr && *last != ' '))
    buffer_[length_++] = c;
}

void Folded::put_space() {
  if (length_ > 0)
    put(' ');
}

void Folded::put_fraction(std::string_view fraction) {
  if (length_ > 0 && is_digit(buffer_[length_ - 1]))
    put(' ');
  for (const char c : fraction)
    put(c);
}

/// Folds the one character beyond ASCII at the start of `rest`; gives back its length in bytes.
std::size_t Folded::put_wide(std::string_view rest) {
  namespace utf = boost::locale::utf;
  const char* at = rest.data();
  const utf::code_point code = utf::utf_traits<char>::decode(at, rest.data() + rest.size());
  if (code == utf::illegal || code == utf::incomplete) {
    trouble_ = Reason::not_utf8;
    return rest.size();
  }
  const auto length = static_cast<std::size_t>(at - rest.data());
  const auto* row = std::lower_bound(std::begin(wide_rows), std::end(wide_rows), static_cast<char32_t>(code),
                                     [](const WideRow& r, char32_t c) { return r.code < c; });
  if (row == std::end(wide_rows) || row->code != code) {
    trouble_ = code < 0xA0 ? Reason::control_character : Reason::unknown_character;
    return length;
  }
  if (row->how == Wide::space)
    put_space();
  else if (row->how == Wide::fraction)
    put_fraction(row->plain);
  else
    for (const char c : row->plain)
      put(c);
  return length;
}

Folded::Folded(std::string_view text) {
  text = trimmed(text);
  if (text.size() > longest) {
    trouble_ = Reason::too_long;
    text = {};
  }
  for (std::size_t i = 0; i < text.size() && trouble_ == Reason::none;) {
    const char c = text[i];
    if (static_cast<unsigned char>(c) >= 0x80) {
      i += put_wide(text.substr(i));
      continue;
    }
    ++i;
    if (c >= 'A' && c <= 'Z')
      put(static_cast<char>(c - 'A' + 'a'));
    else if (is_space(c))
      put_space();
    else if (static_cast<unsigned char>(c) < 0x20 || c == 0x7F)
      trouble_ = Reason::control_character;
    else if (c != '.' || length_ == 0 || !is_letter(buffer_[length_ - 1])) // "in." is "in"
      put(c);
  }
  while (length_ > 0 && (buffer_[length_ - 1] == ' ' || buffer_[length_ - 1] == sign::group))
    --length_;
  buffer_[length_] = '\0';
}

} // namespace wetspell
