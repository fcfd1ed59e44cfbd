// The office's way to our commands: whatever menu, toolbar, key or macro asks for an address of our protocol.

#include "base/service_info.hpp"
#include "base/text.hpp"
#include "commands/commands.hpp"
#include "commands/talk.hpp"

#include <com/sun/star/frame/XDispatch.hpp>
#include <com/sun/star/frame/XDispatchProvider.hpp>
#include <com/sun/star/lang/XInitialization.hpp>
#include <com/sun/star/lang/XServiceInfo.hpp>
#include <cppuhelper/implbase4.hxx>

#include <exception>

namespace wetspell::addin {
namespace {

using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;

constexpr char implementationName[] = "org.wetspell.impl.Commands";

std::string nameIn(const css::util::URL& url) {
  const std::string address = fromOffice(url.Complete);
  return address.substr(0, commandProtocol.size()) == commandProtocol ? address.substr(commandProtocol.size())
                                                                      : std::string();
}

class Commands
    : public WithServiceInfo<implementationName,
                             cppu::WeakImplHelper4<css::frame::XDispatchProvider, css::frame::XDispatch,
                                                   css::lang::XInitialization, css::lang::XServiceInfo>> {
public:
  explicit Commands(const Reference<css::uno::XComponentContext>& context) { window_.context = context; }

  void SAL_CALL initialize(const Sequence<Any>& arguments) override {
    if (arguments.hasElements())
      arguments[0] >>= window_.frame;
  }

  Reference<css::frame::XDispatch> SAL_CALL queryDispatch(const css::util::URL& url, const rtl::OUString&,
                                                          sal_Int32) override {
    if (commandNamed(nameIn(url)) == nullptr)
      return {};
    return this;
  }
  Sequence<Reference<css::frame::XDispatch>>
      SAL_CALL queryDispatches(const Sequence<css::frame::DispatchDescriptor>& wanted) override {
    Sequence<Reference<css::frame::XDispatch>> answers(wanted.getLength());
    for (sal_Int32 i = 0; i < wanted.getLength(); ++i)
      answers.getArray()[i] = queryDispatch(wanted[i].FeatureURL, wanted[i].FrameName, wanted[i].SearchFlags);
    return answers;
  }

  /// With a visible window problems are told there; without one they go to the caller.
  void SAL_CALL dispatch(const css::util::URL& url, const Sequence<css::beans::PropertyValue>&) override {
    const Command* command = commandNamed(nameIn(url));
    if (command == nullptr)
      return;
    std::string problem;
    try {
      const std::string words = command->run(window_);
      if (!words.empty())
        tell(window_.context, window_.frame, words);
      return;
    } catch (const css::uno::Exception& error) {
      problem = fromOffice(error.Message);
    } catch (const std::exception& error) {
      problem = error.what();
    }
    if (!isVisible(window_.frame))
      throw css::uno::RuntimeException(toOffice(problem));
    tell(window_.context, window_.frame, problem, true);
  }
  void SAL_CALL addStatusListener(const Reference<css::frame::XStatusListener>&,
                                  const css::util::URL&) override {}
  void SAL_CALL removeStatusListener(const Reference<css::frame::XStatusListener>&,
                                     const css::util::URL&) override {}

private:
  Window window_;
};

Reference<css::uno::XInterface> SAL_CALL create(const Reference<css::uno::XComponentContext>& context) {
  return static_cast<cppu::OWeakObject*>(new Commands(context));
}

const Registration registration{
    {implementationName, {"com.sun.star.frame.ProtocolHandler"}, Lifetime::OnePerCall, &create}};

} // namespace
} // namespace wetspell::addin
