#include "season/field_tables.hpp"

namespace wetspell {

namespace {

constexpr std::string_view run_help =
    "How many you counted on one walk over the course, halves allowed. Walk it as you walk at a pool; two "
    "runs or more show how steady the count is. Example: 19.5";

} // namespace

std::span<const FieldSpec> person_fields() {
  constexpr FieldMaker in{TableKind::people};
  static const FieldSpec table[] = {
      required(in.make({Field::person_code, "person", "Person code",
                        "Person|Code|Initials|Person ID|Volunteer|Volunteer ID|Observer|Observer code",
                        "Initials or a short code, the same in every table. Example: RW"},
                       FieldType::key, &Person::code)),
      in.text({Field::person_name, "name", "Name", "Person name|Full name|Volunteer name|Observer name",
               "The person's name, or whatever they agreed to have written here."},
              &Person::name),
      in.choice({Field::person_counts, "counts", "Counts in", "Counts|Counted in|Counting|Pace or step",
                 "Paces or steps. One pace is two steps: it is counted each time the same foot comes down."},
                counting_way_words(), &Person::counts),
      in.quantity({Field::person_course, "course", "Taped course",
                   "Course|Course length|Taped distance|Calibration distance|Distance",
                   "The taped distance that was walked to find the length of a pace. Example: 100 ft"},
                  Kind::length, &Person::course),
      in.quantity({Field::person_run_1, "run_1", "Run 1", "First run|Count 1|Paces 1|Walk 1", run_help},
                  Kind::count, &Person::run_1),
      in.quantity({Field::person_run_2, "run_2", "Run 2", "Second run|Count 2|Paces 2|Walk 2", run_help},
                  Kind::count, &Person::run_2),
      in.quantity({Field::person_run_3, "run_3", "Run 3", "Third run|Count 3|Paces 3|Walk 3", run_help},
                  Kind::count, &Person::run_3),
      in.quantity({Field::person_run_4, "run_4", "Run 4", "Fourth run|Count 4|Paces 4|Walk 4", run_help},
                  Kind::count, &Person::run_4),
      derived(in.quantity({Field::person_pace, "pace", "Pace worked out", "Pace|Pace length|Length of pace",
                           "Length of one pace (two steps): the course divided by the counts."},
                          Kind::length)),
      derived(in.quantity({Field::person_pace_uncertainty, "pace_uncertainty", "Pace give or take",
                           "Pace uncertainty|Uncertainty of pace",
                           "Standard uncertainty of the pace, from how the runs differ and from counting in "
                           "halves."},
                          Kind::length)),
      in.text({Field::person_notes, "notes", "Notes", "Note|Remarks|Comments|Comment",
               "Anything worth knowing: whom they go out with, which pools they know."}),
  };
  return table;
}

} // namespace wetspell
