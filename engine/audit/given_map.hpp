// Headings as a person mapped them: read from a table, used for every file that has the same headings.
#pragma once

#include "audit/heading_words.hpp"
#include "base/result.hpp"
#include "table/table.hpp"

#include <optional>
#include <string>
#include <vector>

namespace wetspell {

/// What a person says that a heading means.
struct GivenMapping {
  std::string heading; ///< in the form of plain_word
  bool leave_alone = false;
  std::optional<Field> field;
  Part part = Part::none;
  std::optional<CountColumn> count;
  Unit unit = Unit::none;
};

class GivenMap {
public:
  void add(GivenMapping mapping);
  /// All of another one; what is here already counts first.
  void add(const GivenMap& other);
  /// What was given for this heading (case and signs aside); null when nothing was.
  [[nodiscard]] const GivenMapping* find(std::string_view heading) const;
  /// Which of the mappings, in the order in which they were added, counts in a table of this kind: the first
  /// whose field is one of that table, else the first.
  [[nodiscard]] std::optional<std::size_t> which(std::string_view heading, TableKind table) const;
  /// That mapping; what every table has (the pool, the day, the person, notes) is in each of them its own
  /// field, so that one word counts for all.
  [[nodiscard]] std::optional<GivenMapping> find(std::string_view heading, TableKind table) const;
  [[nodiscard]] const GivenMapping& at(std::size_t which) const { return all_.at(which); }
  [[nodiscard]] bool empty() const { return all_.empty(); }

private:
  std::vector<GivenMapping> all_;
};

/// Reads a table with at least the columns Heading and Field, Unit if it has one, in any order. A blank field
/// says nothing; "leave alone" keeps a column out. Refuses in words a field or unit that is not known.
Result<GivenMap> read_given_map(const Table& table);

/// The word for what a column holds, as the table of headings shows it: "Visits: Depth", "Year",
/// "Life: wood frog, egg masses".
std::string meaning_word(const std::optional<Field>& field, Part part,
                         const std::optional<CountColumn>& count);
/// All words that may stand under Field, for a drop-down.
std::vector<std::string> meaning_words();
inline constexpr std::string_view leave_alone_word = "leave alone";

} // namespace wetspell
