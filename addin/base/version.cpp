// org.wetspell.Version: which Wetspell is installed, for macros and for whoever helps from afar.

#include "base/service_info.hpp"
#include "base/text.hpp"

#include <com/sun/star/lang/XServiceInfo.hpp>
#include <cppuhelper/implbase2.hxx>
#include <org/wetspell/XVersion.hpp>

namespace wetspell::addin {
namespace {

constexpr char implementationName[] = "org.wetspell.impl.Version";

class Version
    : public WithServiceInfo<implementationName,
                             cppu::WeakImplHelper2<org::wetspell::XVersion, css::lang::XServiceInfo>> {
public:
  rtl::OUString SAL_CALL text() override { return toOffice(WETSPELL_VERSION); }
};

css::uno::Reference<css::uno::XInterface>
    SAL_CALL create(const css::uno::Reference<css::uno::XComponentContext>&) {
  return static_cast<cppu::OWeakObject*>(new Version);
}

const Registration registration{{implementationName, {"org.wetspell.Version"}, Lifetime::OneForAll, &create}};

} // namespace
} // namespace wetspell::addin
