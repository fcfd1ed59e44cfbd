#include "season/field_tables.hpp"

namespace wetspell {

std::span<const FieldSpec> life_fields() {
  constexpr FieldMaker in{TableKind::life};
  static const FieldSpec table[] = {
      required(in.make({Field::life_pool, "pool", "Pool",
                        "Pool code|Pool ID|Pool number|Pool no|Site|Site code|Site ID",
                        "The pool's code as in the table of pools. Example: B07"},
                       FieldType::pool_ref, &LifeCount::pool)),
      required(in.quantity({Field::life_date, "date", "Date", "Day|Date counted|Count date|Visit date",
                            "The day of the count, best with the month as a word. Example: 2026-04-18, or "
                            "18 Apr 2026"},
                           Kind::date, &LifeCount::date)),
      in.make({Field::life_person, "person", "First person",
               "Person|Counted by|Observer|Observer 1|First observer|Volunteer",
               "Code of the person who counted. Example: RW"},
              FieldType::person_ref, &LifeCount::person),
      in.make({Field::life_second_person, "second_person", "Second person",
               "Observer 2|Second observer|Second counter|With",
               "Code of a second person who counted for themselves. Blank when there was one."},
              FieldType::person_ref, &LifeCount::second_person),
      required(in.make({Field::life_species, "species", "Species", "Animal|Kind|Kind of animal|Taxon",
                        "The animal by its name in the table of species. Example: wood frog"},
                       FieldType::species_ref, &LifeCount::species)),
      in.choice({Field::life_seen_as, "seen_as", "Seen as", "Stage|Life stage|Form|Seen",
                 "Egg masses, larvae, juveniles, adults or signs: one row for each."},
                seen_as_words(), &LifeCount::seen_as),
      in.quantity({Field::life_by_first, "by_first", "Count of first",
                   "Count|Number|Number seen|How many|Count 1|First count|Counted by first|Total",
                   "How many the first person counted, in all. 0 when they looked and saw none. Example: 14"},
                  Kind::count, &LifeCount::by_first),
      in.quantity({Field::life_by_second, "by_second", "Count of second",
                   "Count 2|Second count|Counted by second",
                   "How many the second person counted, without looking at the first count."},
                  Kind::count, &LifeCount::by_second),
      in.quantity(
          {Field::life_by_both, "by_both", "Seen by both", "Both|Common|Count of both|In common",
           "How many of these both had counted, when the two counts were matched on the spot. Never "
           "more than the smaller count. Blank when they were not matched: then no number is estimated."},
          Kind::count, &LifeCount::by_both),
      in.text({Field::life_notes, "notes", "Notes", "Note|Remarks|Comments|Comment",
               "Where in the pool, how fresh, dead or sick animals, whom you told."}),
      checked(in.text({Field::life_source_file, "source_file", "Source file", "Came in file",
                       "The file from which the row was gathered. Blank for rows that were typed here."})),
      checked(in.text({Field::life_source_row, "source_row", "Source row", "Came in row",
                       "Where it stood in that file. Example: Life, row 7"})),
  };
  return table;
}

} // namespace wetspell
