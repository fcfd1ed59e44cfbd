// Words from closed lists, in the ways people type them.
#include "season/choice.hpp"
#include "season/words.hpp"

#include <gtest/gtest.h>

#include <array>
#include <set>

namespace wetspell {
namespace {

const std::array all_lists{&water_words(),        &rain_words(),    &depth_tool_words(),  &size_tool_words(),
                           &yes_no_words(),       &channel_words(), &joined_words(),      &edge_seen_words(),
                           &counting_way_words(), &seen_as_words(), &unit_system_words(), &answer_words()};

TEST(Choices, LabelsAndOtherSpellingsReadAsTheirWord) {
  for (const ChoiceList* list : all_lists)
    for (std::size_t i = 0; i < list->words.size(); ++i) {
      EXPECT_EQ(choice_from(list->words[i].label, *list).index, static_cast<std::int16_t>(i));
      for_each_part(list->words[i].also, [&](std::string_view word) {
        EXPECT_EQ(choice_from(word, *list).index, static_cast<std::int16_t>(i)) << list->name << " " << word;
      });
    }
}

TEST(Choices, NoSpellingMeansTwoThings) {
  for (const ChoiceList* list : all_lists) {
    std::set<std::string> seen;
    std::string buffer;
    for (const ChoiceWord& word : list->words) {
      const auto add = [&](std::string_view text) {
        EXPECT_TRUE(seen.insert(std::string(plain_word(text, buffer))).second) << list->name << " " << text;
      };
      add(word.label);
      for_each_part(word.also, add);
    }
  }
}

TEST(Choices, CaseBlanksAndHyphensAside) {
  EXPECT_TRUE(choice_from("  No-Standing\u00a0WATER. ", water_words()).is(Water::none));
  EXPECT_TRUE(choice_from("Egg-masses", seen_as_words()).is(SeenAs::egg_masses));
  EXPECT_TRUE(choice_from("TRUE", yes_no_words()).is(YesNo::yes));
}

TEST(Choices, NotKnownIsAnAnswerInEveryList) {
  for (const ChoiceList* list : all_lists)
    for (const char* text : {"not known", "Not Known", "cannot tell", "can't tell", "can\u2019t tell", "?",
                             "??", "n/a", "N/A", "unknown", "-", "\u2014"})
      EXPECT_EQ(choice_from(text, *list).index, Choice::not_known) << list->name << " " << text;
}

TEST(Choices, BlankAndUnreadableAreToldApart) {
  EXPECT_EQ(choice_from("", water_words()).index, Choice::blank);
  EXPECT_EQ(choice_from(" \t", water_words()).index, Choice::blank);
  EXPECT_EQ(choice_from("maybe", water_words()).index, Choice::unreadable);
  EXPECT_EQ(choice_from("...", water_words()).index, Choice::unreadable);
}

TEST(Words, CodesKeepTheirSignsAndZeros) {
  std::string buffer;
  EXPECT_EQ(plain_code("  P-01 ", buffer), "p-01");
  EXPECT_EQ(plain_code("Wood \u00a0 Frog", buffer), "wood frog");
  EXPECT_EQ(plain_code("\u00a0", buffer), "");
}

} // namespace
} // namespace wetspell
