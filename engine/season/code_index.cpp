#include "season/code_index.hpp"

namespace wetspell {

void CodeIndex::add_code(std::string_view code, std::int32_t index) {
  if (const auto word = plain_code(code, buffer_); !word.empty())
    codes_.emplace(word, index); // of two records with one code the first one has it
}

void CodeIndex::add_name(std::string_view name, std::int32_t index) {
  const auto word = plain_code(name, buffer_);
  if (word.empty())
    return;
  const auto [place, fresh] = names_.emplace(word, index);
  if (!fresh && place->second != index)
    place->second = several;
}

Ref CodeIndex::find(std::string_view text) {
  const auto word = plain_code(text, buffer_);
  if (word.empty())
    return {Ref::blank};
  if (const auto code = codes_.find(word); code != codes_.end())
    return {code->second};
  if (const auto name = names_.find(word); name != names_.end() && name->second != several)
    return {name->second};
  return {Ref::unknown};
}

Ref CodeIndex::find(const Cell& cell) {
  switch (cell.kind()) {
  case CellKind::empty:
    return {Ref::blank};
  case CellKind::text:
    return find(std::string_view(cell.text()));
  case CellKind::number:
  case CellKind::date:
    return find(std::string_view(to_text(cell)));
  case CellKind::error:
    break;
  }
  return {Ref::unknown};
}

} // namespace wetspell
