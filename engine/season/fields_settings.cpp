#include "season/field_tables.hpp"

namespace wetspell {

std::span<const FieldSpec> setting_fields() {
  constexpr FieldMaker in{TableKind::settings};
  static const FieldSpec table[] = {
      required(in.text({Field::setting_label, "setting", "Setting", "Settings|Season setting",
                        "What is set. The words of this column must stay as they are."})),
      in.text({Field::setting_value, "value", "Value", "Set to|Chosen",
               "What it is set to. A blank means the usual value."}),
      checked(in.text({Field::setting_help, "help", "What it does", "Help|Meaning|What it means",
                       "What the setting changes."})),
  };
  return table;
}

} // namespace wetspell
