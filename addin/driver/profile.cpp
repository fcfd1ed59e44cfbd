#include "driver/profile.hpp"

#include "driver/failure.hpp"

#include <fmt/format.h>

#include <fstream>

namespace wetspell::driver {

namespace {

std::string setting(const char* node, const char* name, const std::string& value) {
  return fmt::format("<item oor:path=\"/org.openoffice.{}\"><prop oor:name=\"{}\" oor:op=\"fuse\">"
                     "<value>{}</value></prop></item>\n",
                     node, name, value);
}

void requireLocale(const std::string& locale) {
  // It goes into a file of settings as it is.
  if (locale.empty() ||
      locale.find_first_not_of("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-") !=
          std::string::npos) {
    throw Failure(fmt::format("'{}' is not a locale; one looks like de-DE", locale));
  }
}

} // namespace

Profile::Profile(const std::string& locale) : folder_("wetspell-office-") {
  requireLocale(locale);
  const std::filesystem::path user = path() / "user";
  std::filesystem::create_directories(user);
  std::filesystem::create_directory(path() / "temporary");
  std::ofstream file(user / "registrymodifications.xcu", std::ios::binary);
  file << "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
          "<oor:items xmlns:oor=\"http://openoffice.org/2001/registry\" "
          "xmlns:xs=\"http://www.w3.org/2001/XMLSchema\" "
          "xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\">\n"
       << setting("Setup/L10N", "ooSetupSystemLocale", locale)
       << setting("Setup/L10N", "ooLocale", "en-US")
       // Nothing that a first start shows, and nothing that waits for an answer.
       << setting("Setup/Product", "ooSetupLastVersion", "99.9")
       << setting("Office.Common/Misc", "FirstRun", "false")
       << setting("Office.Common/Misc", "ShowTipOfTheDay", "false")
       << setting("Office.Common/Misc", "ShowDonation", "false")
       // No lock files beside other people's documents: a killed office leaves them, and the next one asks.
       << setting("Office.Common/Misc", "UseLocking", "false")
       // What a document draws from other files stays what it was when the document was stored.
       << setting("Office.Calc/Content/Update", "Link", "2")
       << setting("Office.Common/Security/Scripting", "BlockUntrustedRefererLinks", "true")
       << setting("Office.Recovery/AutoSave", "Enabled", "false")
       << setting("Office.Recovery/RecoveryInfo", "Enabled", "false") << "</oor:items>\n";
  file.close();
  if (!file) {
    throw Failure(fmt::format("the settings of the office could not be written to {}", user.string()));
  }
}

} // namespace wetspell::driver
