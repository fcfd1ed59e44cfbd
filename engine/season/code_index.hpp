// Looks up records by the code, or else the name, that other tables write.
#pragma once

#include "season/records.hpp"
#include "season/words.hpp"
#include "table/cell.hpp"

#include <string_view>

namespace wetspell {

/// Codes compare without case and outer blanks; leading zeros count, so "P1" is not "P01". A number cell is
/// its digits: 12 is "12". A name serves where no code fits and only one record has it.
class CodeIndex {
public:
  void add_code(std::string_view code, std::int32_t index);
  void add_name(std::string_view name, std::int32_t index);
  [[nodiscard]] Ref find(const Cell& cell);
  [[nodiscard]] Ref find(std::string_view text);

private:
  static constexpr std::int32_t several = -3;
  TextMap codes_;
  TextMap names_;
  std::string buffer_;
};

} // namespace wetspell
