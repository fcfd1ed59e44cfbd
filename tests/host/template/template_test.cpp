// The template in an office: fresh, and with and without the extension.

#include "template/workbook_file.hpp"

#include "driver/files.hpp"

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/ucb/XSimpleFileAccess.hpp>

#include <gmock/gmock.h>

namespace wetspell::host {
namespace {

using ::testing::HasSubstr;
using ::testing::StartsWith;

TEST(Template, ShowsNoErrorWhenItIsFresh) {
  const auto document = opened(office());
  EXPECT_EQ(errorsIn(document), "");
  EXPECT_EQ(document.sheetNames(), (std::vector<std::string>{"Start", "Pools", "People", "Visits", "Life",
                                                             "Findings", "Classes", "Species", "Limits"}));
}

TEST(Template, SeesErrorsWhereThereAreSome) { // so that the test above can fail
  const auto document = opened(office());
  document.setFormula("Limits.H40", "=NOSUCHFUNCTION(1)");
  document.setFormula("Pools.A20", "=1/0");
  EXPECT_EQ(errorsIn(document), "Pools.A20 shows #DIV/0!\nLimits.H40 shows #NAME?\n");
}

TEST(Template, LooksEmptyInRowsThatNobodyFilled) {
  const auto document = opened(office());
  for (const FieldSpec& field : fields(TableKind::visits))
    EXPECT_EQ(document.read(at(field.field, 0)).text, "") << field.heading;
  EXPECT_EQ(document.read("Visits.A4").text, "");
}

TEST(Template, SaysThatTheExtensionIsThere) {
  const auto document = opened(office());
  EXPECT_EQ(document.read(extensionBanner).text,
            "Ready: Wetspell " WETSPELL_VERSION " works in this workbook.");
}

TEST(Template, SaysThatTheExtensionIsOlder) {
  const auto document = opened(office());
  document.setText(versionHere(), "0.9.12");
  EXPECT_THAT(document.read(extensionBanner).text, StartsWith("Wetspell 0.9.12 is older than this workbook"));
  EXPECT_THAT(document.read(extensionBanner).text, HasSubstr("Update the extension"));
  document.setText(versionHere(), "10.0.0"); // newer as a number, not as a text
  EXPECT_THAT(document.read(extensionBanner).text, StartsWith("Ready: Wetspell 10.0.0"));
}

TEST(Template, SaysThatTheExtensionIsMissing) {
  // Stored by an office that has the extension, so that the files hold results of it.
  const auto document = opened(office());
  ASSERT_THAT(document.read(extensionBanner).text, StartsWith("Ready"));
  driver::Office without(withoutExtension());
  for (const char* ending : {".ods", ".fods", ".xlsx"}) {
    const auto elsewhere = reopened(document, ending, without);
    EXPECT_THAT(elsewhere.read(extensionBanner).text, StartsWith("The Wetspell extension is missing"))
        << ending;
    EXPECT_THAT(elsewhere.read(extensionBanner).text, HasSubstr("Install the extension")) << ending;
    // ... and is right again where the extension is.
    EXPECT_THAT(reopened(elsewhere, ending, office()).read(extensionBanner).text, StartsWith("Ready"))
        << ending;
  }
}

TEST(Template, FollowsTheUnitSystem) {
  const auto document = opened(office());
  const auto heading = [&](Field field) {
    const std::string cell = at(field, 0);
    return document.read(cell.substr(0, cell.size() - 1) + "3").text;
  };
  EXPECT_EQ(heading(Field::visit_temperature_1), "Temperature 1 (°F)");
  EXPECT_EQ(heading(Field::visit_depth), "Depth (in)");
  EXPECT_EQ(heading(Field::visit_length), "Length (ft)");
  EXPECT_EQ(heading(Field::visit_area), "Area (sq ft)");
  document.setText(valueOf(Setting::unit_system), "metric");
  EXPECT_EQ(heading(Field::visit_temperature_1), "Temperature 1 (°C)");
  EXPECT_EQ(heading(Field::visit_depth), "Depth (cm)");
  EXPECT_EQ(heading(Field::visit_length), "Length (m)");
  EXPECT_EQ(heading(Field::visit_area), "Area (m²)");
  document.setText(valueOf(Setting::length_unit), "yd");
  EXPECT_EQ(heading(Field::visit_length), "Length (yd)");
}

TEST(Template, HoldsNoMacro) {
  const auto document = opened(office());
  const css::uno::Reference<css::beans::XPropertySet> properties(document.model(), css::uno::UNO_QUERY);
  const css::uno::Reference<css::container::XNameAccess> libraries(
      properties->getPropertyValue("BasicLibraries"), css::uno::UNO_QUERY);
  ASSERT_TRUE(libraries.is());
  for (const auto& name : libraries->getElementNames()) {
    const css::uno::Reference<css::container::XNameAccess> modules(libraries->getByName(name),
                                                                   css::uno::UNO_QUERY);
    EXPECT_EQ(modules->getElementNames().getLength(), 0);
  }
}

TEST(Template, IsAmongTheOfficesTemplates) {
  const css::uno::Reference<css::beans::XPropertySet> paths(
      office().service("com.sun.star.util.PathSettings"), css::uno::UNO_QUERY);
  const css::uno::Reference<css::ucb::XSimpleFileAccess> files(
      office().service("com.sun.star.ucb.SimpleFileAccess"), css::uno::UNO_QUERY);
  css::uno::Sequence<rtl::OUString> folders;
  ASSERT_TRUE(paths->getPropertyValue("Template_internal") >>= folders);
  std::size_t found = 0;
  for (const rtl::OUString& folder : folders)
    found += files->exists(folder + "/Wetspell/season.ots");
  EXPECT_EQ(found, 1u);
}

} // namespace
} // namespace wetspell::host
