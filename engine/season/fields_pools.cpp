#include "season/field_tables.hpp"

namespace wetspell {

std::span<const FieldSpec> pool_fields() {
  constexpr FieldMaker in{TableKind::pools};
  static const FieldSpec table[] = {
      required(in.make({Field::pool_code, "pool", "Pool code",
                        "Pool|Code|Pool ID|Pool number|Pool no|Site|Site code|Site ID",
                        "A short code of your own, the same in every table. Example: B07"},
                       FieldType::key, &Pool::code)),
      in.text({Field::pool_name, "name", "Pool name", "Name|Name of pool|Site name",
               "What people call the pool. Example: Split Rock"},
              &Pool::name),
      in.text({Field::pool_locality, "locality", "Locality", "Place|Town|Where|Parcel|Preserve|Area name",
               "Town, forest or parcel in which it lies; as roughly as you wish to share it."}),
      in.text({Field::pool_latitude, "latitude", "Latitude", "Lat|Latitude N|Y",
               "Degrees north with a decimal point, from a map or a receiver. Example: 44.5123"}),
      in.text({Field::pool_longitude, "longitude", "Longitude", "Lon|Long|Lng|Longitude E|X",
               "Degrees east with a decimal point; west is negative. Example: -71.2034"}),
      in.quantity({Field::pool_forest, "forest", "Forest around",
                   "Forest|Forest cover|Woods around|Percent forest|Canopy",
                   "How much of the ground within a stone's throw of the edge is forest, in per cent. "
                   "Example: 80"},
                  Kind::percent),
      in.text({Field::pool_owner, "owner", "Owner", "Land owner|Owned by",
               "Who owns the land, as the programme needs to know it. May stay blank."}),
      in.choice({Field::pool_permission, "permission", "Permission",
                 "Permission given|Access|Access permission|Permit|Owner agrees",
                 "Whether the owner has agreed to visits: yes or no."},
                yes_no_words()),
      in.quantity({Field::pool_longest, "longest", "Longest ever",
                   "Greatest length|Max length|Maximum length|Length at fullest|Full length|Basin length",
                   "Length of the pool when it was fullest, along its longest line. Example: 85 ft, or 26 m"},
                  Kind::length, &Pool::longest),
      in.quantity({Field::pool_widest, "widest", "Widest ever",
                   "Greatest width|Max width|Maximum width|Width at fullest|Full width|Basin width",
                   "Width of the pool when it was fullest, across the longest line. Example: 40 ft"},
                  Kind::length, &Pool::widest),
      in.quantity({Field::pool_deepest, "deepest", "Deepest ever",
                   "Greatest depth|Deepest seen|Depth at fullest|Full depth|Basin depth",
                   "The greatest depth ever read here. Example: 42 in, or 3' 6\""},
                  Kind::depth, &Pool::deepest),
      in.choice({Field::pool_isolated, "isolated", "Usually isolated",
                 "Normally isolated|Isolated as a rule|Isolated pool",
                 "Yes when, in an ordinary spring, nothing joins the pool to other water."},
                yes_no_words(), &Pool::isolated),
      in.text({Field::pool_notes, "notes", "Notes", "Note|Remarks|Comments|Comment|Pool notes",
               "Anything the next person should know: the path, a landmark, a hazard."}),
  };
  return table;
}

} // namespace wetspell
