// A typed text brought to one plain spelling before it is read.
#pragma once

#include "quantity/reason.hpp"

#include <array>
#include <cstddef>
#include <string_view>

namespace wetspell {

/// Signs that have no plain character of their own keep a code each.
namespace sign {
inline constexpr char degree = '\x01';
inline constexpr char group = '\x02'; ///< a space that does not break, as between groups of three digits
inline constexpr char tick = '\x03';
inline constexpr char cross = '\x04';
inline constexpr char plus_minus = '\x05';
inline constexpr char at_most = '\x06';
inline constexpr char at_least = '\x0e';
inline constexpr char times = '\x0f';
inline constexpr char fraction = '\x10'; ///< the slash of a fraction written as one sign, or U+2044
} // namespace sign

/// Folded text in a buffer of its own: small letters, one kind of quote, dash and space, no space at the ends
/// and never two together, fractions as 1/2, no full stop after a letter. Always ends in a zero byte.
class Folded {
public:
  static constexpr std::size_t longest = 120; ///< bytes of text, without spaces at the ends

  explicit Folded(std::string_view text);

  /// Reason{} when the text could be folded: otherwise too long, not UTF-8, a control or an unknown
  /// character.
  [[nodiscard]] Reason trouble() const { return trouble_; }
  [[nodiscard]] std::string_view text() const { return {buffer_.data(), length_}; }

private:
  void put(char c);
  void put_space();
  void put_fraction(std::string_view fraction);
  std::size_t put_wide(std::string_view rest);

  std::array<char, 3 * longest + 8> buffer_;
  std::size_t length_ = 0;
  Reason trouble_{};
};

} // namespace wetspell
