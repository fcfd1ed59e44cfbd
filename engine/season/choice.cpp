#include "season/choice.hpp"

#include "season/words.hpp"

#include <array>

namespace wetspell {

namespace {

// The words are the project's own; other spellings are what people type in their place.
constexpr std::array water{
    ChoiceWord{"standing water", "standing|water|wet|yes|y|has water|holds water|water present|flooded|1"},
    ChoiceWord{"no standing water", "dry|no water|none|no|n|empty|damp|moist|mud|muddy|0"},
    ChoiceWord{"frozen over", "frozen|ice|iced over|ice covered|under ice|solid ice"},
};
constexpr std::array rain{
    ChoiceWord{"no rain", "none|no|dry|0"},
    ChoiceWord{"some rain", "some|light|light rain|a little|little|showers|drizzle|yes"},
    ChoiceWord{"much rain", "much|heavy|heavy rain|a lot|lots|downpour|storm"},
};
constexpr std::array depth_tool{
    ChoiceWord{"stick", "measuring stick|yardstick|meter stick|metre stick|rule|ruler|rod|pole|staff"},
    ChoiceWord{"weighted line", "line|cord|string|rope|tape|weighted tape|lead line"},
    ChoiceWord{"by eye", "eye|estimate|estimated|guess|guessed|judged"},
};
constexpr std::array size_tool{
    ChoiceWord{"tape", "taped|tape measure|measuring tape|measured|rangefinder|laser"},
    ChoiceWord{"paces", "paced|pacing|pace|steps|step|walked"},
    ChoiceWord{"by eye", "eye|estimate|estimated|guess|guessed|judged"},
};
constexpr std::array yes_no{
    ChoiceWord{"yes", "y|true|t|1|x|✓|✔"},
    ChoiceWord{"no", "n|false|f|0|none"},
};
constexpr std::array channel{
    ChoiceWord{"none", "no|n|no channel|absent|0"},
    ChoiceWord{"dry channel", "dry|not flowing|no flow|still|standing"},
    ChoiceWord{"flowing", "flow|flowing water|running|running water|wet|yes|y|trickle|trickling"},
};
constexpr std::array joined{
    ChoiceWord{"nothing", "none|no|n|not joined|isolated|alone|no other water"},
    ChoiceWord{"a stream", "stream|brook|creek|river|run|seep"},
    ChoiceWord{"a pond or lake", "pond|lake|a pond|a lake|reservoir|another pool|pool"},
    ChoiceWord{"a wetland", "wetland|swamp|marsh|bog|fen|wet meadow"},
    ChoiceWord{"a ditch or culvert", "ditch|culvert|a ditch|a culvert|drain|pipe|canal"},
};
constexpr std::array edge_seen{
    ChoiceWord{"all of it", "all|whole|the whole edge|whole edge|entire|100%"},
    ChoiceWord{"most of it", "most|more than half|nearly all|75%"},
    ChoiceWord{"about half", "half|50%"},
    ChoiceWord{"less than half", "less|little|a little|part|some|under half|25%"},
};
constexpr std::array counting_way{
    ChoiceWord{"paces", "pace|double steps|double step|two steps|strides"},
    ChoiceWord{"steps", "step|single steps|single step|every step"},
};
constexpr std::array seen_as{
    ChoiceWord{"egg masses",
               "egg mass|eggs|egg|masses|mass|em|egg clusters|egg cluster|clutches|clutch|spawn"},
    ChoiceWord{"larvae", "larva|tadpoles|tadpole|tads|tad|hatchlings"},
    ChoiceWord{"juveniles", "juvenile|young|froglets|froglet|metamorphs|metamorph|efts|eft"},
    ChoiceWord{"adults", "adult|grown|breeding adults"},
    ChoiceWord{"signs", "sign|shells|shell|calls|calling|heard|cases|tracks|spermatophores|spermatophore"},
};
constexpr std::array unit_system{
    ChoiceWord{"US customary", "us|customary|imperial|english|inches and feet|american"},
    ChoiceWord{"metric", "si|metres|meters|centimetres|centimeters"},
};
constexpr std::array answer{
    ChoiceWord{"right as it is", "right|correct|ok|okay|fine|true|is right|leave|keep"},
    ChoiceWord{"corrected", "changed|fixed|done"},
    ChoiceWord{"will ask", "ask|asked|asking|open|to ask"},
};

constexpr ChoiceList water_list{"water", water};
constexpr ChoiceList rain_list{"rain", rain};
constexpr ChoiceList depth_tool_list{"depth tool", depth_tool};
constexpr ChoiceList size_tool_list{"size tool", size_tool};
constexpr ChoiceList yes_no_list{"yes or no", yes_no};
constexpr ChoiceList channel_list{"channel", channel};
constexpr ChoiceList joined_list{"joined to", joined};
constexpr ChoiceList edge_seen_list{"edge seen", edge_seen};
constexpr ChoiceList counting_way_list{"way of counting", counting_way};
constexpr ChoiceList seen_as_list{"seen as", seen_as};
constexpr ChoiceList unit_system_list{"unit system", unit_system};
constexpr ChoiceList answer_list{"answer", answer};

} // namespace

const ChoiceList& water_words() {
  return water_list;
}
const ChoiceList& rain_words() {
  return rain_list;
}
const ChoiceList& depth_tool_words() {
  return depth_tool_list;
}
const ChoiceList& size_tool_words() {
  return size_tool_list;
}
const ChoiceList& yes_no_words() {
  return yes_no_list;
}
const ChoiceList& channel_words() {
  return channel_list;
}
const ChoiceList& joined_words() {
  return joined_list;
}
const ChoiceList& edge_seen_words() {
  return edge_seen_list;
}
const ChoiceList& counting_way_words() {
  return counting_way_list;
}
const ChoiceList& seen_as_words() {
  return seen_as_list;
}
const ChoiceList& unit_system_words() {
  return unit_system_list;
}
const ChoiceList& answer_words() {
  return answer_list;
}

Choice choice_from(std::string_view text, const ChoiceList& list) {
  return ChoiceIndex(list).find(text);
}

} // namespace wetspell
