#include "season/field_tables.hpp"

namespace wetspell {

std::span<const FieldSpec> finding_fields() {
  constexpr FieldMaker in{TableKind::findings};
  static const FieldSpec table[] = {
      checked(in.text({Field::finding_level, "level", "To do", "Level",
                       "fix: cannot be right. ask: doubtful, ask the person. note: worth knowing."})),
      checked(in.text({Field::finding_rule, "rule", "Rule", "", "The rule that found it."})),
      checked(in.text(
          {Field::finding_where, "where", "Where", "Cell", "Sheet, column and row of the cell to look at."})),
      checked(in.text({Field::finding_pool, "pool", "Pool", "", "The pool of the row."})),
      checked(in.text({Field::finding_date, "date", "Date", "", "The date of the row."})),
      checked(in.text({Field::finding_person, "person", "Person", "", "The person to ask about it."})),
      checked(in.text({Field::finding_value, "value", "What stands there", "", "The cell as it was typed."})),
      checked(in.text({Field::finding_message, "message", "What is doubtful", "",
                       "What was read and what makes it doubtful."})),
      checked(in.text({Field::finding_advice, "advice", "What to do", "", "What would settle it."})),
      checked(in.text({Field::finding_replacement, "replacement", "Could be", "Proposed",
                       "What may have been meant. It is written only when you ask for it."})),
      in.choice({Field::finding_answer, "answer", "Your answer", "Answer",
                 "'right as it is' closes the finding for as long as the values behind it stay the same."},
                answer_words()),
      in.text({Field::finding_note, "note", "Your note", "Answer note", "Who was asked and what they said."}),
      checked(in.text({Field::finding_key, "key", "Mark", "Key",
                       "By this mark Wetspell knows the finding again. Leave it as it is."})),
  };
  return table;
}

} // namespace wetspell
