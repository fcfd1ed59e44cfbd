// What a handout is made from, and where things stand in it: the sheets refer to each other by this.
#pragma once

#include "gather/handout_words.hpp"
#include "handout.hpp"
#include "model.hpp"

#include <optional>

namespace wetspell::workbook {

struct HandoutPlan {
  const Season& season;
  std::size_t person;
  std::span<const Question> questions;
  std::vector<std::size_t> pools;
  std::vector<Field> visits, life; ///< columns to type into, behind the one with the feedback

  HandoutPlan(const Season& of, std::size_t whom, std::span<const Question> asked);

  [[nodiscard]] const Person& who() const { return season.people[person]; }
  /// The columns of the table (visits or life).
  [[nodiscard]] const std::vector<Field>& columns(TableKind table) const;
  /// Column of a field on its sheet, from 0; nothing when the handout does not have it.
  [[nodiscard]] std::optional<std::size_t> column(Field field) const;
};

namespace handout {

inline constexpr std::string_view read_first_name = handout_words::read_first, you_name = handout_words::you,
                                  words_name = "Words";

// Rows from 0, on all sheets with tables to type into.
inline constexpr std::size_t heading_row = 2, first_row = 3,
                             ready_rows = 25; // as many as a page of paper holds

/// "Depth (in)": headings are plain text here, so that every program shows them and gathering reads the unit.
std::string heading(const FieldSpec& field, const Settings& settings);

/// The words for a drop-down, as a condition takes them: "[$Words.$D$4:.$D$12]".
std::string offered(const HandoutPlan& plan, Field declared);
/// The words themselves.
std::vector<std::string> offered_words(const HandoutPlan& plan, Field declared);
/// The fields whose words stand on the sheet Words, in the order of their columns.
std::span<const Field> listed_fields();
inline constexpr std::size_t first_list_column = 3;

/// Where the pools stand on the sheet You, and the cells that formulas about paces look into.
inline constexpr std::size_t pool_heading_row = 7;
std::string pace_cell();
std::string counts_cell();

/// The cells of a row that are typed into, for a formula: all but the feedback and the person's, which stands
/// there by itself.
std::string typed_in_row(const HandoutPlan& plan, TableKind table, std::size_t row);

/// A limit, or a length between formulas, as a number that a formula can hold.
std::string number(double value);

Sheet read_first_sheet(const HandoutPlan& plan);
Sheet visits_sheet(const HandoutPlan& plan);
Sheet life_sheet(const HandoutPlan& plan);
Sheet questions_sheet(const HandoutPlan& plan);
Sheet you_sheet(const HandoutPlan& plan);
Sheet words_sheet(const HandoutPlan& plan);
std::vector<EntryCheck> entries(const HandoutPlan& plan);

/// What the sheet itself says of a row, at once: plain formulas in words.
std::string visit_feedback(const HandoutPlan& plan, std::size_t row);
std::string life_feedback(const HandoutPlan& plan, std::size_t row);

} // namespace handout

} // namespace wetspell::workbook
