// The parts of the field catalogue, a table to a file, and short ways to write an entry.
#pragma once

#include "season/field.hpp"

namespace wetspell {

std::span<const FieldSpec> setting_fields();
std::span<const FieldSpec> pool_fields();
std::span<const FieldSpec> person_fields();
std::span<const FieldSpec> visit_fields();
std::span<const FieldSpec> life_fields();
std::span<const FieldSpec> finding_fields();
std::span<const FieldSpec>
class_fields(); ///< depth classes, fill classes, wet spell classes, species, limits

/// What every entry says: field, name, heading, other headings, help.
struct FieldWords {
  Field field;
  std::string_view name;
  std::string_view heading;
  std::string_view also;
  std::string_view help;
};

/// Makes the entries of one table; typed unless `derived` or `checked` is put around.
struct FieldMaker {
  TableKind table;

  [[nodiscard]] FieldSpec make(const FieldWords& w, FieldType type, Member member = {}) const {
    return {w.field, table,       w.name,  w.heading, w.also, Role::typed,
            type,    Kind::count, nullptr, false,     w.help, member};
  }
  [[nodiscard]] FieldSpec text(const FieldWords& w, Member member = {}) const {
    return make(w, FieldType::text, member);
  }
  [[nodiscard]] FieldSpec quantity(const FieldWords& w, Kind kind, Member member = {}) const {
    FieldSpec s = make(w, FieldType::quantity, member);
    s.kind = kind;
    return s;
  }
  [[nodiscard]] FieldSpec choice(const FieldWords& w, const ChoiceList& choices, Member member = {}) const {
    FieldSpec s = make(w, FieldType::choice, member);
    s.choices = &choices;
    return s;
  }
};

inline FieldSpec required(FieldSpec s) {
  s.required = true;
  return s;
}
inline FieldSpec derived(FieldSpec s) {
  s.role = Role::derived;
  return s;
}
inline FieldSpec checked(FieldSpec s) {
  s.role = Role::check;
  return s;
}

} // namespace wetspell
