// What is left out of a workbook's text, and what is not.

#include "gather/cut_off.hpp"

#include <gtest/gtest.h>

namespace wetspell::addin {
namespace {

/// The text without what reaches outside; "as it was" when nothing does.
std::string open_document(std::string_view xml) {
  return cut_off_open_document(xml).value_or("as it was");
}
std::string sheet(std::string_view xml) {
  return cut_off_sheet(xml).value_or("as it was");
}

TEST(CutOff, LeavesFormulasThatReachNowhere) {
  for (const char* formula :
       {"of:=SUM([.A1:.A3])", "of:=[$Visits.A1]&amp;&quot;x&quot;", "of:=IF([.A1]&gt;2;1;0)"})
    EXPECT_EQ(open_document("<t:table-cell t:formula=\"" + std::string(formula) + "\" o:value=\"3\"/>"),
              "as it was")
        << formula;
  EXPECT_EQ(sheet("<c><f>SUM(A1:A3)</f><v>3</v></c>"), "as it was");
}

TEST(CutOff, LeavesTheStoredResultOfAFormulaThatReachesOutside) {
  for (const char* formula :
       {"of:=['file:///a/b.ods'#$Sheet1.A1]", "of:=[&apos;b.ods&apos;#$Sheet1.A1]", "of:=DDE(1;2;3)",
        "of:=COM.MICROSOFT.WEBSERVICE([.A1])", "of:=['\\\\server\\b.ods'#Sheet1.A1]",
        "of:=INDIRECT(&quot;HTTP://a/&quot;)", "of:=['&#102;ile'#Sheet1.A1]"})
    EXPECT_EQ(open_document("<t:table-cell t:formula=\"" + std::string(formula) + "\" o:value=\"3\"/>"),
              "<t:table-cell o:value=\"3\"/>")
        << formula;
  EXPECT_EQ(open_document("<c formula = 'of:=DDE(1)'\n value='3'>"), "<c\n value='3'>")
      << "other quotes, no prefix, blanks";
  for (const char* formula :
       {"[1]Sheet1!A1", "'file:///a/[b.xlsx]Sheet1'!A1", "soffice|b!A1", "_xlfn.WEBSERVICE(A1)"})
    EXPECT_EQ(sheet("<c><f t=\"x\">" + std::string(formula) + "</f><v>3</v></c>"), "<c><v>3</v></c>")
        << formula;
  EXPECT_EQ(sheet("<x:c><x:f>[1]S!A1</x:f><x:v>3</x:v></x:c>"), "<x:c><x:v>3</x:v></x:c>");
}

TEST(CutOff, LeavesPicturesOfTheWorkbookItself) {
  for (const char* address : {"Pictures/1.png", "./Object 1", "#Visits.A1"})
    EXPECT_EQ(open_document("<draw:image xlink:href=\"" + std::string(address) + "\"/>"), "as it was");
  for (const char* address :
       {"http://a/1.png", "file:///a", "//a/1.png", "/a/1.png", "../1.png", "&#104;ttp"})
    EXPECT_EQ(open_document("<draw:image xlink:href=\"" + std::string(address) + "\"/>"), "<draw:image/>")
        << address;
  EXPECT_FALSE(cut_off_relations("<Relationship Id=\"a\" Target=\"../media/1.png\"/>"));
  EXPECT_FALSE(cut_off_relations("<Relationship Id=\"a\" Target=\"/xl/media/1.png\"/>"));
  EXPECT_EQ(cut_off_relations("<Relationship Target=\"http://a/1.png\" Id=\"a\"/>"),
            "<Relationship Id=\"a\"/>");
}

TEST(CutOff, LeavesWhatSomebodyTyped) {
  const std::string typed =
      "<text:p>formula=\"file:///a\" href='http://a' &lt;f&gt;[1]S!A1&lt;/f&gt;</text:p>";
  EXPECT_EQ(open_document(typed), "as it was");
  EXPECT_EQ(sheet(typed), "as it was");
  EXPECT_EQ(open_document("<![CDATA[<a href=\"http://a\">]]><!-- <a href=\"http://a\"> --><a b=\"x>y\">"),
            "as it was");
  EXPECT_EQ(open_document(typed + "<a b='>' href='http://a'/>" + typed), typed + "<a b='>'/>" + typed);
}

TEST(CutOff, EndsWhereTheTextIsBrokenOff) {
  for (const char* text :
       {"", "<", "<a", "<a href", "<a href=", "<a href=\"http://a", "<!-- a", "<![CDATA[ a"})
    EXPECT_EQ(open_document(text), "as it was") << text;
  for (const char* text : {"<f", "<f>", "<f>[1]", "<f>[1]</f"})
    EXPECT_EQ(sheet(text), "as it was") << text;
}

} // namespace
} // namespace wetspell::addin
