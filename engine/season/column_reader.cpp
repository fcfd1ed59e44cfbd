#include "season/column_reader.hpp"

#include "season/locate.hpp"

namespace wetspell {

ColumnReader::ColumnReader(const Season& season, const FieldSpec& spec, std::size_t column, Lookups& lookups)
    : spec_(&spec), column_(column), options_{spec.kind, season.unit(spec.field), season.settings.date_order},
      words_(nullptr), codes_(nullptr) {
  switch (spec.type) {
  case FieldType::choice:
    own_words_ = ChoiceIndex(*spec.choices);
    words_ = &own_words_;
    break;
  case FieldType::depth_class:
    words_ = &lookups.depth_classes;
    break;
  case FieldType::fill_class:
    words_ = &lookups.fill_classes;
    break;
  case FieldType::pool_ref:
    codes_ = &lookups.pools;
    break;
  case FieldType::person_ref:
    codes_ = &lookups.people;
    break;
  case FieldType::species_ref:
    codes_ = &lookups.species;
    break;
  case FieldType::quantity:
  case FieldType::text:
  case FieldType::key:
    break;
  }
}

Quantity ColumnReader::reading(const Cell& cell) {
  if (cell.kind() == CellKind::number)
    return read(cell, options_); // as fast as looking it up
  return readings_.of(cell, [&](const Cell& fresh) { return read(fresh, options_); });
}

Choice ColumnReader::choice(const Cell& cell) {
  return choices_.of(cell, [&](const Cell& fresh) { return look_up(fresh); });
}

Choice ColumnReader::look_up(const Cell& cell) const {
  switch (cell.kind()) {
  case CellKind::empty:
    return {};
  case CellKind::text:
    return words_->find(cell.text());
  case CellKind::number:
  case CellKind::date:
    return words_->find(to_text(cell));
  case CellKind::error:
    break;
  }
  return {Choice::unreadable};
}

Ref ColumnReader::reference(const Cell& cell) {
  return references_.of(cell, [&](const Cell& fresh) { return codes_->find(fresh); });
}

std::vector<std::unique_ptr<ColumnReader>> column_readers(const Season& season, TableKind kind,
                                                          Lookups& lookups) {
  std::vector<std::unique_ptr<ColumnReader>> readers;
  const Located& at = season.where(kind);
  for (const FieldSpec& s : fields(kind)) {
    const std::int32_t column = at.columns[position(s.field)];
    if (column >= 0 && !std::holds_alternative<std::monostate>(s.member))
      readers.push_back(std::make_unique<ColumnReader>(season, s, static_cast<std::size_t>(column), lookups));
  }
  return readers;
}

ChoiceIndex class_words(const ClassTable& table) {
  ChoiceIndex words;
  std::string buffer;
  const auto each = [&](auto use) {
    for (std::size_t i = 0; i < table.rows.size(); ++i)
      use(table.rows[i], static_cast<std::int16_t>(i));
  };
  each([&](const ClassRow& row, std::int16_t index) { words.add(row.label, index); });
  words.add(table.not_known, Choice::not_known);
  each([&](const ClassRow& row, std::int16_t index) {
    if (row.low == 0 && row.high == 0)
      for (const char* dry : {"dry", "no water", "none", "no standing water"})
        words.add(dry, index);
    std::string word(plain_word(row.label, buffer));
    const auto unit = plain_word(symbol(table.unit), buffer);
    if (!unit.empty() && word.ends_with(unit)) {
      word.resize(word.size() - unit.size());
      words.add(word, index);
    }
    const std::size_t to = word.find("to");
    if (to == std::string::npos)
      return;
    for (std::string shorter : {word, word.starts_with("over") ? word.substr(4) : word}) {
      words.add(shorter, index);
      shorter.erase(shorter.find("to"), 2); // "12-24" loses its hyphen
      words.add(shorter, index);
      words.add(shorter + std::string(unit), index);
    }
  });
  return words;
}

} // namespace wetspell
