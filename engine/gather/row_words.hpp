// What a cell says, however it was typed, in words that can be compared: "12 in", 12 and "1 ft" are one
// depth.
#pragma once

#include "season/column_reader.hpp"
#include "season/season.hpp"

#include <map>
#include <string>
#include <vector>

namespace wetspell {

class RowWords {
public:
  explicit RowWords(const Season& season);

  /// Empty for a blank. Codes and names that the season knows are its codes; texts that cannot be read are
  /// compared without case and outer blanks.
  std::string of(Field field, const Cell& cell);

  /// The fields by which rows of a table are matched; start times are compared apart.
  static std::span<const Field> keys(TableKind table);
  /// What the cells (in the catalogue's order) say of the keys.
  std::vector<std::string> key(TableKind table, const std::vector<Cell>& cells);

private:
  std::string reference(const FieldSpec& field, const Cell& cell);

  const Season& season_;
  Lookups lookups_;
  std::map<Field, ChoiceIndex> words_;
};

} // namespace wetspell
