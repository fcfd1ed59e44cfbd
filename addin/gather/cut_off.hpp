#pragma once
// The text of a workbook's part (XML, of either format) with everything left out that reaches outside:
// formulas that refer to other files or to the net (the results that were stored with them stay), pictures,
// objects and links that lie elsewhere.

#include "base/result.hpp"

#include <string>
#include <string_view>

namespace wetspell::addin {

/// Whether a part that begins so is XML, in whatever encoding.
bool is_markup(std::string_view beginning);

/// Takes a part in pieces, as it is unpacked; the first is long enough to tell its encoding, the others may
/// be of any size.
class CutOffMarkup {
public:
  /// What may stay of the text, as far as the pieces until now settle it. Refuses a text that an office could
  /// read otherwise than it is looked through here: in an encoding of other signs, or with declarations of
  /// its own.
  Result<std::string> next(std::string_view piece);
  /// What is left over at the end, of a text that is broken off.
  std::string rest() { return std::move(held_); }

  /// Whether anything was left out.
  [[nodiscard]] bool cut() const { return cut_; }
  /// The outermost element's name, without a prefix.
  [[nodiscard]] const std::string& root() const { return root_; }

private:
  std::string held_; ///< from the first mark on that is not whole yet
  std::string root_;
  bool begun_ = false;
  bool cut_ = false;
};

} // namespace wetspell::addin
