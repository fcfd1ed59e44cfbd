#include "audit/vocabulary.hpp"

#include "check/nearest.hpp"

#include <array>
#include <string>
#include <unordered_map>
#include <vector>

namespace wetspell {

namespace {

struct Entry {
  Word meaning;
  std::string_view words; ///< parted by blanks
};

// Common practice, no source: how people shorten and vary the words of their headings.
constexpr std::array entries{
    Entry{Word::filler, "of the at a an in on by to was were is from for s per this our that out off"},
    Entry{Word::pool, "pool pond site station vp basin puddle"},
    Entry{Word::code, "code codes id ids ident identifier key no num nr number nbr label"},
    Entry{Word::name, "name names nm called"},
    Entry{Word::date, "date dates dt dated when datum"},
    Entry{Word::visit, "visit visits visited survey surveyed surveys surv field trip sampling sampled "
                       "observation observed check checked monitoring inspection inspected inspec insp"},
    Entry{Word::time, "time times clock hour hr hrs"},
    Entry{Word::start, "start started begin began begun arrive arrived arrival"},
    Entry{Word::end, "stop stopped end ended finish finished depart departed departure leave left"},
    Entry{Word::person, "person people observer observers obs who initials volunteer volunteers vol surveyor "
                        "surveyors recorder recorded monitor reader visitor team crew"},
    Entry{Word::first, "1 1st first one i near"},
    Entry{Word::second, "2 2nd second two ii middle mid centre center other companion helper with partner"},
    Entry{Word::third, "3 3rd third three iii far"},
    Entry{Word::fourth, "4 4th fourth four iv"},
    Entry{Word::water, "water wtr h2o wat standing surface"},
    Entry{Word::present, "present presence wet dry state status condition"},
    Entry{Word::rain, "rain rainfall precip precipitation showers"},
    Entry{Word::temperature, "temperature temperatures temp temps tmp tempr t thermo wtemp wtmp"},
    Entry{Word::mean, "mean average avg av ave"},
    Entry{Word::probe, "probe thermometer sensor"},
    Entry{Word::depth, "depth depths dep dpth deep dth"},
    Entry{Word::most, "max maximum most deepest greatest longest widest largest point pt"},
    Entry{Word::measured, "measured measure measurement read"},
    Entry{Word::classed, "class classes range category cat judged estimate estimated est band bin"},
    Entry{Word::tool, "tool method how meth instrument means using device"},
    Entry{Word::full, "full fullness fill filled filling capacity"},
    Entry{Word::percent, "percent pct percentage perc"},
    Entry{Word::length, "length len lgth lng long"},
    Entry{Word::width, "width wid wdth wide breadth"},
    Entry{Word::size, "size dimension dimensions dims"},
    Entry{Word::pace, "pace paces paced pacer pacing"},
    Entry{Word::isolated, "isolated isolation alone isol"},
    Entry{Word::inlet, "inlet inlets inflow inflows incoming"},
    Entry{Word::outlet, "outlet outlets outflow outflows outgoing"},
    Entry{Word::joined, "joined joins connected connection connections connects"},
    Entry{Word::edge, "edge shore bank margin"},
    Entry{Word::seen, "seen visible walked viewed view"},
    Entry{Word::photos, "photo photos picture pictures pics pic image images foto fotos"},
    Entry{Word::notes, "note notes remark remarks comment comments memo rem cmt"},
    Entry{Word::locality, "locality location place town where parcel preserve tract property"},
    Entry{Word::latitude, "latitude lat northing"},
    Entry{Word::longitude, "longitude lon lng easting"},
    Entry{Word::forest, "forest canopy woods wooded trees"},
    Entry{Word::owner, "owner landowner owned"},
    Entry{Word::permission, "permission permit access"},
    Entry{Word::usually, "usually normally ever always record"},
    Entry{Word::species, "species animal animals taxon spp sp organism creature"},
    Entry{Word::stage, "stage form phase"},
    Entry{Word::count, "count counts counted cnt quantity qty abundance total n tally"},
    Entry{Word::both, "both common shared"},
    Entry{Word::day, "day dd"},
    Entry{Word::month, "month mon mm"},
    Entry{Word::year, "year yr yyyy"},
    Entry{Word::parameter, "parameter variable param characteristic item what attribute"},
    Entry{Word::value, "value values result results val amount figure reading readings"},
    Entry{Word::unit, "unit units uom"},
    Entry{Word::area, "area perimeter shoreline"},
    Entry{Word::course, "course tape taped calibration"},
    Entry{Word::run, "run walk"},
    Entry{Word::egg, "egg eggs mass masses"},
};

using W = Word;
const Pattern patterns[] = {
    // visits
    {Field::visit_pool, 0.9, {W::pool}, {W::code, W::visit}},
    {Field::visit_pool, 0.75, {W::pool, W::name}, {}},
    {Field::visit_date, 0.92, {W::date}, {W::visit}},
    {Field::visit_date, 0.66, {W::day}, {W::visit}},
    {Field::visit_date, 0.62, {W::visit}, {}},
    {Field::visit_start, 0.9, {W::start, W::time}, {W::visit}},
    {Field::visit_start, 0.85, {W::start}, {}},
    {Field::visit_start, 0.72, {W::time}, {W::visit}},
    {Field::visit_end, 0.9, {W::end, W::time}, {W::visit}},
    {Field::visit_end, 0.8, {W::end}, {}},
    {Field::visit_person, 0.88, {W::person}, {W::code, W::first, W::name, W::visit}},
    {Field::visit_second_person, 0.88, {W::person, W::second}, {W::code, W::name}},
    {Field::visit_water, 0.85, {W::water, W::present}, {W::pool}},
    {Field::visit_water, 0.72, {W::water}, {W::pool}},
    {Field::visit_water, 0.65, {W::present}, {W::pool}},
    {Field::visit_rain, 0.8, {W::rain}, {W::day}},
    {Field::visit_temperature_1, 0.9, {W::temperature, W::first}, {W::water, W::value}},
    {Field::visit_temperature_2, 0.9, {W::temperature, W::second}, {W::water, W::value}},
    {Field::visit_temperature_3, 0.9, {W::temperature, W::third}, {W::water, W::value}},
    {Field::visit_temperature_mean, 0.85, {W::temperature, W::mean}, {W::water}},
    {Field::visit_temperature_mean, 0.85, {W::temperature}, {W::water, W::pool, W::measured}},
    {Field::visit_probe_depth, 0.85, {W::probe, W::depth}, {}},
    {Field::visit_depth, 0.88, {W::depth}, {W::water, W::pool, W::most, W::measured}},
    {Field::visit_depth, 0.75, {W::most}, {}},
    {Field::visit_depth_class, 0.87, {W::depth, W::classed}, {W::water}},
    {Field::visit_depth_tool, 0.87, {W::depth, W::tool}, {W::measured}},
    {Field::visit_fill, 0.87, {W::full}, {W::percent, W::pool, W::tool}},
    {Field::visit_fill_class, 0.87, {W::full, W::classed}, {W::pool}},
    {Field::visit_length, 0.88, {W::length}, {W::pool, W::water, W::most, W::measured}},
    {Field::visit_width, 0.88, {W::width}, {W::pool, W::water, W::most, W::measured}},
    {Field::visit_size_tool, 0.85, {W::size, W::tool}, {W::measured, W::pool}},
    {Field::visit_paced_by, 0.85, {W::pace, W::person}, {}},
    {Field::visit_isolated, 0.86, {W::isolated}, {W::pool}},
    {Field::visit_inlet, 0.87, {W::inlet}, {W::present}},
    {Field::visit_outlet, 0.87, {W::outlet}, {W::present}},
    {Field::visit_joined, 0.8, {W::joined}, {W::water}},
    {Field::visit_edge_seen, 0.85, {W::edge, W::seen}, {}},
    {Field::visit_photos, 0.87, {W::photos}, {W::code, W::name}},
    {Field::visit_notes, 0.9, {W::notes}, {W::visit}},
    // life
    {Field::life_pool, 0.9, {W::pool}, {W::code, W::visit}},
    {Field::life_pool, 0.75, {W::pool, W::name}, {}},
    {Field::life_date, 0.92, {W::date}, {W::visit, W::count}},
    {Field::life_date, 0.66, {W::day}, {W::visit, W::count}},
    {Field::life_date, 0.62, {W::visit}, {}},
    {Field::life_person, 0.88, {W::person}, {W::code, W::first, W::name, W::count}},
    {Field::life_second_person, 0.88, {W::person, W::second}, {W::code, W::name}},
    {Field::life_species, 0.9, {W::species}, {W::name}},
    {Field::life_seen_as, 0.87, {W::stage}, {W::species}},
    {Field::life_seen_as, 0.8, {W::seen}, {}},
    {Field::life_by_first, 0.87, {W::count}, {W::first, W::seen, W::egg, W::code}},
    {Field::life_by_first, 0.7, {W::code, W::seen}, {}},
    {Field::life_by_second, 0.87, {W::count, W::second}, {}},
    {Field::life_by_both, 0.85, {W::both}, {W::count, W::seen}},
    {Field::life_notes, 0.9, {W::notes}, {}},
    // pools
    {Field::pool_code, 0.9, {W::pool}, {W::code}},
    {Field::pool_code, 0.8, {W::code}, {}},
    {Field::pool_name, 0.9, {W::pool, W::name}, {}},
    {Field::pool_name, 0.85, {W::name}, {}},
    {Field::pool_locality, 0.8, {W::locality}, {}},
    {Field::pool_latitude, 0.9, {W::latitude}, {}},
    {Field::pool_longitude, 0.9, {W::longitude}, {}},
    {Field::pool_forest, 0.75, {W::forest}, {W::percent}},
    {Field::pool_owner, 0.88, {W::owner}, {W::name}},
    {Field::pool_permission, 0.87, {W::permission}, {W::owner}},
    {Field::pool_longest, 0.86, {W::length, W::most}, {W::pool, W::usually}},
    {Field::pool_widest, 0.86, {W::width, W::most}, {W::pool, W::usually}},
    {Field::pool_deepest, 0.86, {W::depth, W::most}, {W::pool, W::usually}},
    {Field::pool_isolated, 0.86, {W::isolated}, {W::pool, W::usually}},
    {Field::pool_notes, 0.9, {W::notes}, {W::pool}},
    // people
    {Field::person_code, 0.85, {W::person}, {W::code}},
    {Field::person_code, 0.8, {W::code}, {}},
    {Field::person_name, 0.87, {W::name}, {W::person}},
    {Field::person_counts, 0.75, {W::pace, W::tool}, {}},
    {Field::person_course, 0.85, {W::course}, {W::length}},
    {Field::person_run_1, 0.87, {W::run, W::first}, {W::pace}},
    {Field::person_run_2, 0.87, {W::run, W::second}, {W::pace}},
    {Field::person_run_3, 0.87, {W::run, W::third}, {W::pace}},
    {Field::person_run_4, 0.87, {W::run, W::fourth}, {W::pace}},
    {Field::person_notes, 0.9, {W::notes}, {}},
};

using Dictionary = std::unordered_map<std::string_view, Word>;

const Dictionary& dictionary() {
  static const Dictionary words = [] {
    Dictionary all;
    for (const Entry& entry : entries)
      for (std::string_view rest = entry.words; !rest.empty();) {
        const std::size_t blank = rest.find(' ');
        all.emplace(rest.substr(0, blank), entry.meaning);
        rest.remove_prefix(blank == std::string_view::npos ? rest.size() : blank + 1);
      }
    return all;
  }();
  return words;
}

} // namespace

std::optional<Word> heading_word(std::string_view word) {
  const auto found = dictionary().find(word);
  return found == dictionary().end() ? std::nullopt : std::optional(found->second);
}

std::optional<Word> heading_word_near(std::string_view word, std::size_t slips) {
  // Among shorter words everything is near everything, and hands rarely slip at the first letter: "cond" is
  // no pond, "atemp" is not that of the water.
  constexpr std::size_t shortest = 4;
  if (word.size() < shortest * slips)
    return std::nullopt;
  std::optional<Word> near;
  bool several = false;
  for (const auto& [known, meaning] : dictionary()) {
    const bool plural = word.size() == known.size() + 1 && word.starts_with(known) && word.back() == 's';
    if (known.size() >= shortest && known.front() == word.front() && !plural &&
        slips_between(word, known, slips) <= slips) {
      several = several || (near && *near != meaning);
      near = meaning;
    }
  }
  return several ? std::nullopt : near;
}

std::span<const Pattern> heading_patterns() {
  return patterns;
}

} // namespace wetspell
