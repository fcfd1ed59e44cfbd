#include "exchange/decode.hpp"

#include <algorithm>
#include <array>
#include <cstddef>
#include <cstdint>
#include <cstring>

namespace wetspell {

namespace {

constexpr char32_t replacement = 0xFFFD;

// What Windows-1252 has in 0x80 to 0x9F, as the Unicode consortium's mapping cp1252 lists it (from memory);
// the five places it leaves free become the replacement character.
constexpr std::array<char32_t, 32> windows{
    0x20AC,      replacement, 0x201A, 0x0192, 0x201E, 0x2026,      0x2020, 0x2021,
    0x02C6,      0x2030,      0x0160, 0x2039, 0x0152, replacement, 0x017D, replacement,
    replacement, 0x2018,      0x2019, 0x201C, 0x201D, 0x2022,      0x2013, 0x2014,
    0x02DC,      0x2122,      0x0161, 0x203A, 0x0153, replacement, 0x017E, 0x0178};

void put(std::string& out, char32_t c) {
  if (c < 0x80) {
    out += static_cast<char>(c);
  } else if (c < 0x800) {
    out += static_cast<char>(0xC0 | (c >> 6));
    out += static_cast<char>(0x80 | (c & 0x3F));
  } else if (c < 0x10000) {
    out += static_cast<char>(0xE0 | (c >> 12));
    out += static_cast<char>(0x80 | (c >> 6 & 0x3F));
    out += static_cast<char>(0x80 | (c & 0x3F));
  } else {
    out += static_cast<char>(0xF0 | (c >> 18));
    out += static_cast<char>(0x80 | (c >> 12 & 0x3F));
    out += static_cast<char>(0x80 | (c >> 6 & 0x3F));
    out += static_cast<char>(0x80 | (c & 0x3F));
  }
}

std::string from_windows(std::string_view bytes) {
  std::string out;
  out.reserve(bytes.size() + bytes.size() / 8);
  for (const char byte : bytes) {
    const auto value = static_cast<unsigned char>(byte);
    put(out, value >= 0x80 && value < 0xA0 ? windows[value - 0x80U] : value);
  }
  return out;
}

std::string from_utf16(std::string_view bytes, bool big_end_first) {
  std::string out;
  out.reserve(bytes.size() / 2 + bytes.size() / 8);
  const auto unit = [&](std::size_t at) {
    const auto first = static_cast<unsigned char>(bytes[at]);
    const auto second = static_cast<unsigned char>(bytes[at + 1]);
    return static_cast<char32_t>(big_end_first ? first << 8 | second : second << 8 | first);
  };
  std::size_t at = 0;
  while (at + 1 < bytes.size()) {
    char32_t c = unit(at);
    at += 2;
    if (c >= 0xD800 && c < 0xDC00 && at + 1 < bytes.size()) {
      const char32_t low = unit(at);
      if (low >= 0xDC00 && low < 0xE000) {
        c = 0x10000 + ((c - 0xD800) << 10) + (low - 0xDC00);
        at += 2;
      }
    }
    put(out, c >= 0xD800 && c < 0xE000 ? replacement : c);
  }
  if (at < bytes.size())
    put(out, replacement);
  return out;
}

/// In UTF-16 every other byte of plain letters is zero: on which side says which end comes first.
struct Zeros {
  std::size_t even = 0, odd = 0, looked = 0;
};
Zeros zeros(std::string_view bytes) {
  Zeros found;
  const std::size_t end = std::min<std::size_t>(bytes.size(), 4096) / 2 * 2;
  for (std::size_t i = 0; i < end; ++i)
    if (bytes[i] == '\0')
      ++(i % 2 == 0 ? found.even : found.odd);
  found.looked = end / 2;
  return found;
}

/// How many bytes from the beginning are ASCII, eight at a look: most files are nothing else.
std::size_t plain_beginning(std::string_view text) {
  constexpr std::uint64_t beyond = 0x8080808080808080;
  std::size_t at = 0;
  for (std::uint64_t eight = 0; at + sizeof eight <= text.size(); at += sizeof eight) {
    std::memcpy(&eight, text.data() + at, sizeof eight);
    if ((eight & beyond) != 0)
      break;
  }
  return at;
}

} // namespace

bool is_utf8(std::string_view text) {
  for (std::size_t i = plain_beginning(text); i < text.size();) {
    const auto lead = static_cast<unsigned char>(text[i]);
    const std::size_t length = lead < 0x80         ? 1
                               : lead >> 5 == 0x6  ? 2
                               : lead >> 4 == 0xE  ? 3
                               : lead >> 3 == 0x1E ? 4
                                                   : 0;
    if (length == 0 || i + length > text.size())
      return false;
    for (std::size_t k = 1; k < length; ++k)
      if (static_cast<unsigned char>(text[i + k]) >> 6 != 0x2)
        return false;
    i += length;
  }
  return true;
}

Decoded decode(std::string bytes) {
  const std::string_view all = bytes;
  if (all.starts_with("\xEF\xBB\xBF")) {
    if (is_utf8(all)) {
      bytes.erase(0, 3);
      return {std::move(bytes), "UTF-8"};
    }
    return {from_windows(all.substr(3)), "Windows-1252"};
  }
  if (all.starts_with("\xFF\xFE"))
    return {from_utf16(all.substr(2), false), "UTF-16"};
  if (all.starts_with("\xFE\xFF"))
    return {from_utf16(all.substr(2), true), "UTF-16"};
  const Zeros found = zeros(all);
  if (found.looked > 0 && std::max(found.even, found.odd) * 2 > found.looked &&
      std::min(found.even, found.odd) * 10 < found.looked)
    return {from_utf16(all, found.even > found.odd), "UTF-16"};
  if (is_utf8(all))
    return {std::move(bytes), "UTF-8"};
  return {from_windows(all), "Windows-1252"};
}

} // namespace wetspell
