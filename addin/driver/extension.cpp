#include "driver/extension.hpp"

#include "driver/failure.hpp"
#include "driver/files.hpp"

#include <com/sun/star/deployment/DependencyException.hpp>
#include <com/sun/star/deployment/ExtensionManager.hpp>
#include <com/sun/star/deployment/PlatformException.hpp>
#include <com/sun/star/task/XInteractionAbort.hpp>
#include <com/sun/star/task/XInteractionApprove.hpp>
#include <com/sun/star/ucb/XCommandEnvironment.hpp>
#include <cppuhelper/implbase2.hxx>
#include <fmt/format.h>

namespace wetspell::driver {

using css::uno::Reference;
using css::uno::UNO_QUERY;

namespace {

class Answers : public cppu::WeakImplHelper2<css::ucb::XCommandEnvironment, css::task::XInteractionHandler> {
public:
  Reference<css::task::XInteractionHandler> SAL_CALL getInteractionHandler() override { return this; }
  Reference<css::ucb::XProgressHandler> SAL_CALL getProgressHandler() override { return {}; }

  void SAL_CALL handle(const Reference<css::task::XInteractionRequest>& request) override {
    const css::uno::Any what = request->getRequest();
    css::deployment::DependencyException needs;
    css::deployment::PlatformException platform;
    const bool unfit = (what >>= needs) || (what >>= platform);
    for (const auto& continuation : request->getContinuations()) {
      const Reference<css::task::XInteractionApprove> approve(continuation, UNO_QUERY);
      const Reference<css::task::XInteractionAbort> abort(continuation, UNO_QUERY);
      if (!unfit && approve.is()) {
        approve->select();
        return;
      }
      if (unfit && abort.is()) {
        abort->select();
        return;
      }
    }
  }
};

} // namespace

void addExtension(const Reference<css::uno::XComponentContext>& office,
                  const std::filesystem::path& extension) {
  if (!std::filesystem::exists(extension)) {
    throw Failure(fmt::format("there is no extension {}", extension.string()));
  }
  try {
    const Reference<css::ucb::XCommandEnvironment> answers = new Answers;
    const auto added = css::deployment::ExtensionManager::get(office)->addExtension(urlOf(extension), {},
                                                                                    "user", nullptr, answers);
    if (!added.is()) {
      throw Failure(fmt::format("the extension {} is not for this office", extension.string()));
    }
  } catch (const css::uno::Exception&) {
    throw Failure(
        fmt::format("the extension {} was not installed: {}", extension.string(), wordsOfCurrent()));
  }
}

} // namespace wetspell::driver
