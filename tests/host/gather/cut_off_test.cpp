// What is left out of a workbook's parts, and what is not.

#include "gather/cut_off.hpp"
#include "gather/cut_off_records.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace wetspell::addin {
namespace {

using ::testing::HasSubstr;

/// What stays of a text, taken in pieces of so many bytes; why it is refused.
std::string kept(std::string_view xml, std::size_t at_once = std::string_view::npos) {
  CutOffMarkup markup;
  std::string text;
  for (std::string_view rest = xml; !rest.empty(); rest.remove_prefix(std::min(at_once, rest.size()))) {
    const auto piece = markup.next(rest.substr(0, at_once));
    if (!piece)
      return "refused: " + piece.error().text;
    text += piece.value();
  }
  text += markup.rest();
  EXPECT_EQ(markup.cut(), text != xml);
  return text;
}

/// The same; "as it was" when nothing is left out.
std::string part(std::string_view xml) {
  const std::string text = kept(xml);
  return text == xml ? "as it was" : text;
}

TEST(CutOff, LeavesFormulasThatReachNowhere) {
  for (const char* formula :
       {"of:=SUM([.A1:.A3])", "of:=[$Visits.A1]&amp;&quot;x&quot;", "of:=IF([.A1]&gt;2;1;0)"})
    EXPECT_EQ(part("<t:table-cell t:formula=\"" + std::string(formula) + "\" o:value=\"3\"/>"), "as it was")
        << formula;
  EXPECT_EQ(part("<c><f>SUM(A1:A3)</f><v>3</v></c>"), "as it was");
}

TEST(CutOff, LeavesTheStoredResultOfAFormulaThatReachesOutside) {
  for (const char* formula :
       {"of:=['file:///a/b.ods'#$Sheet1.A1]", "of:=[&apos;b.ods&apos;#$Sheet1.A1]", "of:=DDE(1;2;3)",
        "of:=COM.MICROSOFT.WEBSERVICE([.A1])", "of:=['\\\\server\\b.ods'#Sheet1.A1]",
        "of:=INDIRECT(&quot;HTTP://a/&quot;)", "of:=['&#102;ile'#Sheet1.A1]"})
    EXPECT_EQ(part("<t:table-cell t:formula=\"" + std::string(formula) + "\" o:value=\"3\"/>"),
              "<t:table-cell o:value=\"3\"/>")
        << formula;
  EXPECT_EQ(part("<c formula = 'of:=DDE(1)'\n value='3'>"), "<c\n value='3'>")
      << "other quotes, no prefix, blanks";
  for (const char* formula :
       {"[1]Sheet1!A1", "'file:///a/[b.xlsx]Sheet1'!A1", "soffice|b!A1", "_xlfn.WEBSERVICE(A1)"})
    EXPECT_EQ(part("<c><f t=\"x\">" + std::string(formula) + "</f><v>3</v></c>"), "<c><v>3</v></c>")
        << formula;
  EXPECT_EQ(part("<x:c><x:f>[1]S!A1</x:f><x:v>3</x:v></x:c>"), "<x:c><x:v>3</x:v></x:c>");
}

TEST(CutOff, LeavesElementsThatAreNoFormulas) {
  EXPECT_EQ(part("<f><g>[1]S!A1</g></f>"), "as it was");
  EXPECT_EQ(part("<f/><v>[1]</v><formula>[1]</formula>"), "as it was");
  EXPECT_EQ(part("<c><f><![CDATA[S!A1]]></f><v>3</v></c>"), "<c><v>3</v></c>") << "as no program writes it";
}

TEST(CutOff, LeavesPicturesOfTheWorkbookItself) {
  for (const char* address : {"Pictures/1.png", "./Object 1", "#Visits.A1"})
    EXPECT_EQ(part("<draw:image xlink:href=\"" + std::string(address) + "\"/>"), "as it was");
  for (const char* address :
       {"http://a/1.png", "file:///a", "//a/1.png", "/a/1.png", "../1.png", "&#104;ttp"})
    EXPECT_EQ(part("<draw:image xlink:href=\"" + std::string(address) + "\"/>"), "<draw:image/>") << address;
  EXPECT_EQ(part("<Relationship Id=\"a\" Target=\"../media/1.png\"/>"), "as it was");
  EXPECT_EQ(part("<Relationship Id=\"a\" Target=\"/xl/media/1.png\"/>"), "as it was");
  EXPECT_EQ(part("<Relationship Target=\"http://a/1.png\" Id=\"a\"/>"), "<Relationship Id=\"a\"/>");
}

TEST(CutOff, LeavesWhatSomebodyTyped) {
  const std::string typed =
      "<text:p>formula=\"file:///a\" href='http://a' &lt;f&gt;[1]S!A1&lt;/f&gt;</text:p>";
  EXPECT_EQ(part(typed), "as it was");
  EXPECT_EQ(part(typed), "as it was");
  EXPECT_EQ(part("<![CDATA[<a href=\"http://a\">]]><!-- <a href=\"http://a\"> --><a b=\"x>y\">"),
            "as it was");
  EXPECT_EQ(part(typed + "<a b='>' href='http://a'/>" + typed), typed + "<a b='>'/>" + typed);
}

TEST(CutOff, EndsWhereTheTextIsBrokenOff) {
  for (const char* text :
       {"", "<", "<a", "<a href", "<a href=", "<a href=\"http://a", "<!-- a", "<![CDATA[ a"})
    EXPECT_EQ(part(text), "as it was") << text;
  for (const char* text : {"<f", "<f>", "<f>[1]", "<f>[1]</f"})
    EXPECT_EQ(part(text), "as it was") << text;
}

TEST(CutOff, TakesTextInPiecesOfAnySize) {
  const std::string text = "\xEF\xBB\xBF<?xml version=\"1.0\" encoding=\"UTF-8\"?><!DOCTYPE a \"b.dtd\"><a:b "
                           "c=\"d>e\" x:href=\"http://a\"><!-- <a href=\"http://b\"> --><f>[1]S!A1</f>"
                           "<![CDATA[<a href='http://a'>]]><?p <a href='http://c'>?>typed</a:b>";
  const std::string whole = kept(text);
  EXPECT_EQ(whole.size() + std::string_view(" x:href=\"http://a\"<f>[1]S!A1</f>").size(), text.size());
  for (std::size_t at_once = 1; at_once < text.size(); ++at_once)
    EXPECT_EQ(kept(text, at_once), whole) << at_once;
}

TEST(CutOff, TellsTheOutermostElement) {
  CutOffMarkup markup;
  ASSERT_TRUE(markup.next("<?xml version=\"1.0\"?><!-- <a/> --><office:document x=\"1\"><b/>"));
  EXPECT_EQ(markup.root(), "document");
}

/// An office understands these, and would find marks where none are seen here.
TEST(CutOff, RefusesWhatMayBeReadOtherwise) {
  using namespace std::string_view_literals;
  for (const std::string_view text : {"\xFF\xFE<\0a\0>\0"sv, "\xFE\xFF\0<\0a"sv, "<\0?\0x\0m\0"sv, "\0<\0?"sv,
                                      "\0\0\0<\0\0\0a"sv, "\x4C\x6F\xA7\x94"sv}) {
    EXPECT_TRUE(is_markup(text));
    EXPECT_THAT(kept(text), HasSubstr("not written in UTF-8"));
  }
  EXPECT_THAT(kept("<?xml version=\"1.0\" encoding='UTF-7'?><a/>"), HasSubstr("is written in UTF-7"));
  EXPECT_THAT(kept("<!DOCTYPE a [<!ATTLIST a href CDATA \"http://a\">]><a/>"),
              HasSubstr("declarations of its own"));
  EXPECT_THAT(kept("<a b=\"" + std::string(std::size_t{17} << 20U, 'x')), HasSubstr("more than 16 MB"));
  for (const char* usual :
       {"<?xml version=\"1.0\" encoding=\"utf-8\"?><a/>", "<?xml encoding='Windows-1252'?>",
        "<!DOCTYPE a PUBLIC \"-//A//B\" \"a.dtd\"><a/>"})
    EXPECT_EQ(part(usual), "as it was") << usual;
}

TEST(CutOff, TellsMarkupFromPictures) {
  for (const char* markup : {"<a/>", "\xEF\xBB\xBF<?xml?>", " \r\n<a/>"})
    EXPECT_TRUE(is_markup(markup)) << markup;
  for (const char* other : {"", "\x89PNG\r\n", "\xFF\xD8\xFF", "BM<a>", "PK"})
    EXPECT_FALSE(is_markup(other)) << other;
}

std::string record(unsigned number, const std::string& content) {
  const auto two = [](std::size_t value) {
    return std::string{static_cast<char>(value & 0xFFU), static_cast<char>(value >> 8U)};
  };
  return two(number) + two(content.size()) + content;
}

TEST(CutOffRecords, TakesTheDrawingsAndLeavesTheRest) {
  const std::string before = record(0x809, "begin"), after = record(0x203, "cell") + record(0x0A, "");
  for (const unsigned drawing : {0x5DU, 0xEBU, 0xECU}) {
    std::string records = before + record(drawing, "a picture") + after;
    EXPECT_TRUE(cut_off_drawings(records));
    EXPECT_EQ(records, before + record(0x0FFF, "a picture") + after);
    EXPECT_FALSE(cut_off_drawings(records));
  }
  std::string cells = before + record(0x204, record(0xEC, "what somebody typed")) + after;
  const std::string typed = cells;
  EXPECT_FALSE(cut_off_drawings(cells));
  EXPECT_EQ(cells, typed);
}

TEST(CutOffRecords, FindsSheetsInsideOfOtherRecords) {
  const std::string sheet = record(0x809, "begin") + record(0xEC, "a picture");
  const std::string begins = record(0x809, "begin");
  const std::string place{static_cast<char>(begins.size() + 4 + 6 + 4), 0, 0, 0};
  std::string records = begins + record(0x85, place + "na") + record(0x1234, sheet);
  EXPECT_TRUE(cut_off_drawings(records));
  EXPECT_THAT(records, HasSubstr(record(0x0FFF, "a picture")));
}

TEST(CutOffRecords, EndsWhereTheyAreBrokenOff) {
  for (const std::string& broken : {std::string(), std::string("\xEC"), record(0x85, "\xFF\xFF\xFF\xFF"),
                                    std::string("\x09\x08\xFF\xFF", 4), std::string("\x85\0\x08\0\x01", 5)}) {
    std::string records = broken;
    EXPECT_FALSE(cut_off_drawings(records));
    EXPECT_EQ(records, broken);
  }
}

} // namespace
} // namespace wetspell::addin
