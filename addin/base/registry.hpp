#pragma once
// What the extension's library offers to the office, declared beside the class that implements it:
//
//   namespace { const Registration registration{{"org.wetspell.impl.Version", {"org.wetspell.Version"},
//                                                Lifetime::OneForAll, &create}}; }
//
// The factory the office calls and the .components file both come from these declarations.

#include "base/css.hpp"

#include <com/sun/star/uno/XComponentContext.hpp>
#include <com/sun/star/uno/XInterface.hpp>

#include <string>
#include <vector>

namespace wetspell::addin {

enum class Lifetime {
  OnePerCall, ///< every createInstance makes a new object
  OneForAll   ///< the first object serves everybody until the office ends
};

struct Implementation {
  using Create = css::uno::Reference<css::uno::XInterface>(SAL_CALL*)(
      const css::uno::Reference<css::uno::XComponentContext>&);

  std::string name;                  ///< of the implementation; it stands in no document
  std::vector<std::string> services; ///< names people and documents use; never changed after a release
  Lifetime lifetime;
  Create create;
};

/// All registrations of the library, sorted by name.
std::vector<Implementation> implementations();

class Registration {
public:
  explicit Registration(Implementation implementation);
};

/// The services a class is registered for, for its XServiceInfo.
css::uno::Sequence<rtl::OUString> servicesOf(std::string_view implementationName);

} // namespace wetspell::addin
