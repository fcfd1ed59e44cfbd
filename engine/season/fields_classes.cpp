#include "season/field_tables.hpp"

namespace wetspell {

std::span<const FieldSpec> class_fields() {
  constexpr FieldMaker depth{TableKind::depth_classes};
  constexpr FieldMaker fill{TableKind::fill_classes};
  constexpr FieldMaker spell{TableKind::spell_classes};
  constexpr FieldMaker kinds{TableKind::species};
  constexpr FieldMaker limits{TableKind::limits};
  static const FieldSpec table[] = {
      required(depth.text({Field::depth_class_label, "class", "Depth class", "Class of depth",
                           "The words of the class, as the visits use them. Example: over 12 to 24 in"})),
      depth.quantity({Field::depth_class_over, "over", "Over", "More than|Deeper than",
                      "The class holds depths over this one. Blank: no lower limit."},
                     Kind::depth),
      depth.quantity({Field::depth_class_up_to, "up_to", "Up to", "To and with|Not over",
                      "The class holds depths up to this one and this one too. Blank: no upper limit."},
                     Kind::depth),
      required(fill.text({Field::fill_class_label, "class", "Fill class", "Class of fill",
                          "The words of the class, as the visits use them. Example: 50 to 74 %"})),
      fill.quantity({Field::fill_class_from, "from", "From", "Beginning at",
                     "The class begins at this per cent. Blank: no lower limit."},
                    Kind::percent),
      fill.quantity({Field::fill_class_to, "to", "To", "Ending at",
                     "The last whole per cent of the class; it runs on to where the next begins."},
                    Kind::percent),
      required(spell.text({Field::spell_class_label, "class", "Wet spell class", "Class of wet spell",
                           "The words of the class, as the summary uses them. Example: medium"})),
      spell.quantity({Field::spell_class_over, "over", "Days over", "More days than|Longer than",
                      "The class holds wet spells of more days than this. Blank: no lower limit."},
                     Kind::count),
      spell.quantity({Field::spell_class_up_to, "up_to", "Days up to", "Up to days|Not longer than",
                      "The class holds wet spells up to so many days, and that many too. Blank: no upper "
                      "limit."},
                     Kind::count),
      required(kinds.make({Field::species_name, "species", "Species", "Animal|Kind of animal|Taxon",
                           "The animal's name, as the table of life uses it. Example: wood frog"},
                          FieldType::key)),
      kinds.choice({Field::species_seen_as, "seen_as", "Seen as", "Stage|Life stage|Form",
                    "The form that the row is about. Blank: any form."},
                   seen_as_words()),
      kinds.quantity({Field::species_first_day, "first_day", "From day", "First day|Earliest",
                      "First day of the year on which it is to be expected. Example: March 1"},
                     Kind::date),
      kinds.quantity({Field::species_last_day, "last_day", "To day", "Last day|Latest",
                      "Last day of the year on which it is to be expected. Example: June 15"},
                     Kind::date),
      kinds.quantity({Field::species_most, "most", "At most", "Most|Largest count",
                      "A count above this is doubtful in one pool. Blank: no limit."},
                     Kind::count),
      required(limits.text({Field::limit_name, "limit", "Limit", "Limit name",
                            "The name of the limit. The words of this column must stay as they are."})),
      limits.text({Field::limit_value, "value", "Value", "Set to",
                   "The limit, a number in the unit beside it. Blank: the usual value."}),
      limits.text({Field::limit_unit, "unit", "Unit", "In unit",
                   "The unit of the value. Another unit of the same kind may be written: cm for in."}),
      checked(limits.text(
          {Field::limit_meaning, "meaning", "What it says", "Meaning", "What the rules do with the limit."})),
      checked(limits.text({Field::limit_source, "source", "Where it comes from", "Source|Grounds",
                           "The published source, or that it is common practice or judgement, and why."})),
  };
  return table;
}

} // namespace wetspell
