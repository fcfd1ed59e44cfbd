#pragma once
// An office that cannot get to the net, whatever a document asks it to fetch.

#include "base/css.hpp"

#include <com/sun/star/uno/XComponentContext.hpp>

namespace wetspell::driver {

/// Takes from a running office every way to what does not lie on this machine; what a document links to stays
/// in the document. Its settings are not enough: it fetches linked pictures whatever they say.
void takeOffline(const css::uno::Reference<css::uno::XComponentContext>& office);

} // namespace wetspell::driver
