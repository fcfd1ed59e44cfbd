// The demo's tables while they are being made: rows of typed cells by field.
#pragma once

#include "season/field.hpp"
#include "season/settings.hpp"
#include "table/cell.hpp"

#include <cstddef>
#include <map>
#include <string>
#include <utility>
#include <vector>

namespace wetspell::demo {

using SheetRow = std::map<Field, Cell>;

/// A cell that was spoiled on purpose: where, how, and what stood there before.
struct Spoiled {
  TableKind table;
  std::size_t row; ///< in its table, from 0
  Field field;
  std::string pool;   ///< the pool it is really about
  std::string family; ///< the family of rules that should see it
  std::string how;
  std::string before;
  std::string after;
};

struct SeasonRows {
  std::vector<std::pair<Setting, Cell>> settings;
  std::map<TableKind, std::vector<SheetRow>> tables;
  std::vector<Spoiled> spoiled;
};

} // namespace wetspell::demo
