#include "driver/pipes.hpp"

#include "base/text.hpp"

#include <osl/pipe.hxx>
#include <osl/security.hxx>
#include <rtl/digest.h>

#include <array>

namespace wetspell::driver {

namespace {

/// The office names its single-instance pipe after the MD5 of the profile's address in UTF-16, each byte as
/// a hexadecimal number without leading zero (read from the names of pipes; the driver's test holds it).
std::string singleInstancePipe(const rtl::OUString& profileUrl) {
  std::array<sal_uInt8, RTL_DIGEST_LENGTH_MD5> digest{};
  rtl_digest_MD5(profileUrl.getStr(), static_cast<sal_uInt32>(profileUrl.getLength()) * sizeof(sal_Unicode),
                 digest.data(), digest.size());
  std::string name = "SingleOfficeIPC_";
  for (const sal_uInt8 byte : digest) {
    name += addin::fromOffice(rtl::OUString::number(static_cast<sal_Int32>(byte), 16));
  }
  return name;
}

/// A pipe that nobody listens on any more is taken over by making it anew; closing it removes the file.
void takeAway(const std::string& name) {
  const osl::Security ourselves; // pipes are a user's own: the name of the user is part of theirs
  osl::Pipe pipe(addin::toOffice(name), osl_Pipe_CREATE, ourselves);
  pipe.close();
}

} // namespace

void removePipes(const std::string& ours, const Profile& profile) {
  takeAway(ours);
  takeAway(singleInstancePipe(urlOf(profile.path())));
}

} // namespace wetspell::driver
