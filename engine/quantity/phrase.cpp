#include "quantity/phrase.hpp"

#include "quantity/reason.hpp"
#include "quantity/vocabulary.hpp"

namespace wetspell {

namespace {

enum class Said : std::uint8_t {
  not_measured,
  not_known,
  too_deep,
  frozen,
  dry,
  zero,
  empty,
  quarter,
  third,
  half,
  two_thirds,
  three_quarters,
  full,
  yes,
  no,
  cross,
};

constexpr WordMeaning<Said> said_list[] = {
    {"n/a", Said::not_measured},
    {"na", Said::not_measured},
    {"n a", Said::not_measured},
    {"n/m", Said::not_measured},
    {"nm", Said::not_measured},
    {"n/r", Said::not_measured},
    {"nr", Said::not_measured},
    {"n/d", Said::not_measured},
    {"nd", Said::not_measured},
    {"nil reading", Said::not_measured},
    {"null", Said::not_measured},
    {"-", Said::not_measured},
    {"--", Said::not_measured},
    {"---", Said::not_measured},
    {"- -", Said::not_measured},
    {"(none)", Said::not_measured},
    {"(blank)", Said::not_measured},
    {"not measured", Said::not_measured},
    {"not taken", Said::not_measured},
    {"not read", Said::not_measured},
    {"not recorded", Said::not_measured},
    {"not done", Said::not_measured},
    {"not noted", Said::not_measured},
    {"not checked", Said::not_measured},
    {"not counted", Said::not_measured},
    {"not surveyed", Said::not_measured},
    {"not visited", Said::not_measured},
    {"not available", Said::not_measured},
    {"not applicable", Said::not_measured},
    {"unmeasured", Said::not_measured},
    {"did not measure", Said::not_measured},
    {"didn't measure", Said::not_measured},
    {"could not measure", Said::not_measured},
    {"couldn't measure", Said::not_measured},
    {"unable to measure", Said::not_measured},
    {"no data", Said::not_measured},
    {"no reading", Said::not_measured},
    {"no readings", Said::not_measured},
    {"no measurement", Said::not_measured},
    {"no measurements", Said::not_measured},
    {"no thermometer", Said::not_measured},
    {"no tape", Said::not_measured},
    {"no stick", Said::not_measured},
    {"no access", Said::not_measured},
    {"no visit", Said::not_measured},
    {"none taken", Said::not_measured},
    {"missing", Said::not_measured},
    {"missed", Said::not_measured},
    {"skipped", Said::not_measured},
    {"forgot", Said::not_measured},
    {"forgotten", Said::not_measured},
    {"forgot to measure", Said::not_measured},
    {"forgot thermometer", Said::not_measured},
    {"forgot the thermometer", Said::not_measured},
    {"broken", Said::not_measured},
    {"broke", Said::not_measured},
    {"thermometer broken", Said::not_measured},
    {"thermometer broke", Said::not_measured},
    {"broken thermometer", Said::not_measured},
    {"lost", Said::not_measured},
    {"lost thermometer", Said::not_measured},
    {"tbd", Said::not_measured},
    {"?", Said::not_known},
    {"??", Said::not_known},
    {"???", Said::not_known},
    {"n/k", Said::not_known},
    {"nk", Said::not_known},
    {"dk", Said::not_known},
    {"unk", Said::not_known},
    {"unknown", Said::not_known},
    {"not known", Said::not_known},
    {"not sure", Said::not_known},
    {"unsure", Said::not_known},
    {"uncertain", Said::not_known},
    {"unclear", Said::not_known},
    {"don't know", Said::not_known},
    {"dont know", Said::not_known},
    {"do not know", Said::not_known},
    {"no idea", Said::not_known},
    {"can't tell", Said::not_known},
    {"cant tell", Said::not_known},
    {"can not tell", Said::not_known},
    {"cannot tell", Said::not_known},
    {"could not tell", Said::not_known},
    {"couldn't tell", Said::not_known},
    {"can't say", Said::not_known},
    {"cannot say", Said::not_known},
    {"can't see", Said::not_known},
    {"could not see", Said::not_known},
    {"couldn't see", Said::not_known},
    {"undetermined", Said::not_known},
    {"not determined", Said::not_known},
    {"too deep", Said::too_deep},
    {"too deep to measure", Said::too_deep},
    {"too deep to wade", Said::too_deep},
    {"too deep for stick", Said::too_deep},
    {"too deep for the stick", Said::too_deep},
    {"frozen", Said::frozen},
    {"frozen over", Said::frozen},
    {"frozen solid", Said::frozen},
    {"iced over", Said::frozen},
    {"ice", Said::frozen},
    {"under ice", Said::frozen},
    {"dry", Said::dry},
    {"bone dry", Said::dry},
    {"all dry", Said::dry},
    {"completely dry", Said::dry},
    {"totally dry", Said::dry},
    {"dry pool", Said::dry},
    {"pool dry", Said::dry},
    {"pool is dry", Said::dry},
    {"pool was dry", Said::dry},
    {"dried", Said::dry},
    {"dried up", Said::dry},
    {"dried out", Said::dry},
    {"no water", Said::dry},
    {"no standing water", Said::dry},
    {"none", Said::zero},
    {"nil", Said::zero},
    {"zero", Said::zero},
    {"none seen", Said::zero},
    {"none found", Said::zero},
    {"empty", Said::empty},
    {"quarter", Said::quarter},
    {"a quarter", Said::quarter},
    {"one quarter", Said::quarter},
    {"quarter full", Said::quarter},
    {"a quarter full", Said::quarter},
    {"one quarter full", Said::quarter},
    {"one-quarter full", Said::quarter},
    {"third", Said::third},
    {"a third", Said::third},
    {"one third", Said::third},
    {"a third full", Said::third},
    {"one third full", Said::third},
    {"half", Said::half},
    {"one half", Said::half},
    {"half full", Said::half},
    {"half-full", Said::half},
    {"half empty", Said::half},
    {"two thirds", Said::two_thirds},
    {"two-thirds", Said::two_thirds},
    {"two thirds full", Said::two_thirds},
    {"two-thirds full", Said::two_thirds},
    {"three quarters", Said::three_quarters},
    {"three-quarters", Said::three_quarters},
    {"three quarter", Said::three_quarters},
    {"three quarters full", Said::three_quarters},
    {"three-quarters full", Said::three_quarters},
    {"full", Said::full},
    {"completely full", Said::full},
    {"brimful", Said::full},
    {"full to the brim", Said::full},
    {"yes", Said::yes},
    {"y", Said::yes},
    {"yeah", Said::yes},
    {"yep", Said::yes},
    {"true", Said::yes},
    {"t", Said::yes},
    {"1", Said::yes},
    {"ticked", Said::yes},
    {"\x03", Said::yes},
    {"no", Said::no},
    {"n", Said::no},
    {"nope", Said::no},
    {"false", Said::no},
    {"f", Said::no},
    {"0", Said::no},
    {"x", Said::cross},
    {"\x04", Said::cross},
};
constexpr auto said_words = vocabulary(said_list);

Quantity missing(Reason reason) {
  Quantity q;
  q.status = Status::missing;
  q.reason = reason;
  return q;
}

Quantity number(double written, Unit unit, double si) {
  Quantity q;
  q.status = Status::value;
  q.written = written;
  q.unit = unit;
  q.si = q.si_high = si;
  return q;
}

std::optional<Quantity> dry(Kind kind, Unit assume) {
  switch (kind) {
  case Kind::depth:
  case Kind::volume:
  case Kind::percent:
    return number(0, assume, 0);
  case Kind::temperature:
  case Kind::length:
  case Kind::area:
    return missing(Reason::dry_nothing_to_measure);
  default:
    return std::nullopt;
  }
}

std::optional<Quantity> part_full(Kind kind, double numerator, double denominator) {
  if (kind != Kind::percent)
    return std::nullopt;
  return number(100 * numerator / denominator, Unit::percent, numerator / denominator);
}

std::optional<Quantity> truth(Kind kind, bool yes) {
  if (kind != Kind::truth)
    return std::nullopt;
  return number(yes ? 1 : 0, Unit::none, yes ? 1 : 0);
}

} // namespace

std::optional<Quantity> read_phrase(std::string_view folded, Kind kind, Unit assume) {
  const auto said = said_words.find(folded);
  if (!said)
    return std::nullopt;
  switch (*said) {
  case Said::not_measured:
    return missing(Reason::not_measured);
  case Said::not_known:
    return missing(Reason::not_known);
  case Said::too_deep:
    return kind == Kind::truth || kind == Kind::date ? std::nullopt
                                                     : std::optional(missing(Reason::too_deep));
  case Said::frozen:
    return kind == Kind::truth || kind == Kind::date ? std::nullopt : std::optional(missing(Reason::frozen));
  case Said::dry:
    return dry(kind, assume);
  case Said::zero:
    if (kind == Kind::count)
      return number(0, Unit::none, 0);
    return kind == Kind::depth || kind == Kind::percent ? dry(kind, assume) : std::nullopt;
  case Said::empty:
    return kind == Kind::percent || kind == Kind::depth ? dry(kind, assume) : std::nullopt;
  case Said::quarter:
    return part_full(kind, 1, 4);
  case Said::third:
    return part_full(kind, 1, 3);
  case Said::half:
    return part_full(kind, 1, 2);
  case Said::two_thirds:
    return part_full(kind, 2, 3);
  case Said::three_quarters:
    return part_full(kind, 3, 4);
  case Said::full:
    return part_full(kind, 1, 1);
  case Said::yes:
    return truth(kind, true);
  case Said::no:
    return truth(kind, false);
  case Said::cross:
    if (kind != Kind::truth)
      return std::nullopt;
    Quantity q;
    q.status = Status::bad;
    q.reason = Reason::cross_unclear;
    return q;
  }
  return std::nullopt;
}

} // namespace wetspell
