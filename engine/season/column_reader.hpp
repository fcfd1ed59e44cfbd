// Reads the cells of one column into the field of a record.
#pragma once

#include "quantity/read.hpp"
#include "season/code_index.hpp"
#include "season/season.hpp"
#include "table/lately.hpp"

#include <memory>
#include <vector>

namespace wetspell {

/// The look-ups that the columns of all tables share.
struct Lookups {
  CodeIndex pools, people, species;
  ChoiceIndex depth_classes, fill_classes;
};

/// Those of a season that has been read.
Lookups lookups_of(const Season& season);

/// A column of a located table that a record keeps, made ready for many cells.
class ColumnReader {
public:
  ColumnReader(const Season& season, const FieldSpec& spec, std::size_t column, Lookups& lookups);

  [[nodiscard]] std::size_t column() const { return column_; }

  template <class Record> void read_into(Record& record, const Cell& cell);

private:
  [[nodiscard]] Quantity reading(const Cell& cell);
  [[nodiscard]] Choice choice(const Cell& cell);
  [[nodiscard]] Choice look_up(const Cell& cell) const;
  [[nodiscard]] Ref reference(const Cell& cell);

  const FieldSpec* spec_;
  std::size_t column_;
  ReadOptions options_;
  Lately<Quantity> readings_;
  Lately<Choice> choices_;
  Lately<Ref> references_;
  ChoiceIndex own_words_; ///< of a closed list
  ChoiceIndex* words_;    ///< the list's or a class table's
  CodeIndex* codes_;      ///< for references
};

/// Readers for every typed column of a table that records keep.
std::vector<std::unique_ptr<ColumnReader>> column_readers(const Season& season, TableKind kind,
                                                          Lookups& lookups);

/// The words by which people name the classes of a table: its labels, and those without "over", "to", unit.
ChoiceIndex class_words(const ClassTable& table);

template <class Record> void ColumnReader::read_into(Record& record, const Cell& cell) {
  if (const auto* quantity = std::get_if<Quantity Record::*>(&spec_->member))
    record.** quantity = reading(cell);
  else if (const auto* word = std::get_if<Choice Record::*>(&spec_->member))
    record.** word = choice(cell);
  else if constexpr (std::is_same_v<Record, Visit> || std::is_same_v<Record, LifeCount>) {
    if (const auto* ref = std::get_if<Ref Record::*>(&spec_->member))
      record.** ref = reference(cell);
  } else {
    if (const auto* text = std::get_if<std::string Record::*>(&spec_->member))
      record.** text = to_text(cell);
  }
}

} // namespace wetspell
