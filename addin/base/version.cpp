// org.wetspell.Version: which Wetspell is installed, for macros and for whoever helps from afar.

#include "base/registry.hpp"
#include "base/text.hpp"

#include <com/sun/star/lang/XServiceInfo.hpp>
#include <cppuhelper/implbase2.hxx>
#include <cppuhelper/supportsservice.hxx>
#include <org/wetspell/XVersion.hpp>

namespace wetspell::addin {
namespace {

constexpr const char* implementationName = "org.wetspell.impl.Version";

class Version : public cppu::WeakImplHelper2<org::wetspell::XVersion, css::lang::XServiceInfo> {
public:
  rtl::OUString SAL_CALL text() override { return toOffice(WETSPELL_VERSION); }

  rtl::OUString SAL_CALL getImplementationName() override { return toOffice(implementationName); }
  sal_Bool SAL_CALL supportsService(const rtl::OUString& name) override {
    return cppu::supportsService(this, name);
  }
  css::uno::Sequence<rtl::OUString> SAL_CALL getSupportedServiceNames() override {
    return servicesOf(implementationName);
  }
};

css::uno::Reference<css::uno::XInterface>
    SAL_CALL create(const css::uno::Reference<css::uno::XComponentContext>&) {
  return static_cast<cppu::OWeakObject*>(new Version);
}

const Registration registration{{implementationName, {"org.wetspell.Version"}, Lifetime::OneForAll, &create}};

} // namespace
} // namespace wetspell::addin
