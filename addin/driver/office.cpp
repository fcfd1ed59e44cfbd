#include "driver/office.hpp"

#include "base/text.hpp"
#include "driver/connection.hpp"
#include "driver/extension.hpp"
#include "driver/failure.hpp"
#include "driver/offline.hpp"
#include "driver/pipes.hpp"
#include "driver/process.hpp"
#include "driver/watchdog.hpp"

#include <com/sun/star/beans/MethodConcept.hpp>
#include <com/sun/star/beans/XIntrospectionAccess.hpp>
#include <com/sun/star/beans/theIntrospection.hpp>
#include <com/sun/star/container/XEnumeration.hpp>
#include <com/sun/star/frame/Desktop.hpp>
#include <com/sun/star/lang/XMultiComponentFactory.hpp>
#include <com/sun/star/reflection/InvocationTargetException.hpp>
#include <com/sun/star/reflection/XIdlMethod.hpp>
#include <com/sun/star/util/XCloseable.hpp>
#include <com/sun/star/util/XModifiable.hpp>
#include <fmt/format.h>

#include <cstdlib>
#include <mutex>
#include <thread>

namespace wetspell::driver {

using addin::fromOffice;
using addin::toOffice;
using css::uno::Any;
using css::uno::Reference;
using css::uno::UNO_QUERY;

namespace {

/// The office asks to be started again when it has put a fresh profile in order.
constexpr int exitForRestart = 81;

/// A start that is too slow is noticed between two attempts to connect; one attempt may hang.
constexpr std::chrono::seconds connectionSlack{30};

std::filesystem::path officeBinary() {
  // For an office elsewhere than where the extension was built.
  const char* named = std::getenv("WETSPELL_OFFICE_BINARY");
  return named != nullptr ? named : WETSPELL_OFFICE_PROGRAM;
}

std::vector<std::string> commandLine(const OfficeOptions& options, const Profile& profile,
                                     const std::string& pipe) {
  std::vector<std::string> line = {"-env:UserInstallation=" + fromOffice(urlOf(profile.path())),
                                   "--accept=pipe,name=" + pipe + ";urp;",
                                   "--norestore",
                                   "--nologo",
                                   "--nodefault",
                                   "--nofirststartwizard",
                                   "--nolockcheck"};
  if (!options.visible) {
    line.emplace_back("--headless");
  }
  return line;
}

/// A killed office cannot clear away its temporary files; so they go where the profile goes. The three names
/// are those that systems know the folder for temporary files by.
std::vector<std::string> temporaryFilesIn(const Profile& profile) {
  const std::string folder = (profile.path() / "temporary").string();
  return {"TMPDIR=" + folder, "TMP=" + folder, "TEMP=" + folder};
}

/// Closes without asking: an office does not end while a document has unsaved changes.
void closeDocuments(const Reference<css::frame::XDesktop2>& desktop) {
  const auto all = desktop->getComponents()->createEnumeration();
  while (all->hasMoreElements()) {
    const Any one = all->nextElement();
    const Reference<css::util::XModifiable> modifiable(one, UNO_QUERY);
    if (modifiable.is()) {
      modifiable->setModified(false);
    }
    const Reference<css::util::XCloseable> closeable(one, UNO_QUERY);
    if (closeable.is()) {
      closeable->close(true);
    }
  }
}

} // namespace

struct Office::Running {
  std::string pipe = uniqueName("wetspell");
  std::mutex guard; ///< of process, between the watchdog and us
  std::unique_ptr<Process> process;
  Reference<css::uno::XComponentContext> context;
  Reference<css::frame::XDesktop2> desktop;
  std::unique_ptr<Watchdog> watchdog;

  void launch(const std::vector<std::string>& line, const Profile& profile) {
    const std::lock_guard lock(guard);
    process = std::make_unique<Process>(officeBinary(), line, temporaryFilesIn(profile));
  }

  bool hasGrownOver(std::uint64_t limit) {
    const std::lock_guard lock(guard);
    return limit > 0 && process && process->memory() > limit;
  }

  void bite(Watchdog::Reason reason, const Profile& profile) {
    const std::lock_guard lock(guard);
    if (process) {
      process->kill();
      process->wait(std::chrono::seconds(10));
    }
    if (reason == Watchdog::Reason::Stopped) {
      // Somebody wants this program to end now; the stack of a call into the office cannot be unwound.
      removePipes(pipe, profile);
      std::error_code ignored;
      std::filesystem::remove_all(profile.path(), ignored);
      std::_Exit(130);
    }
  }
};

Office::Office(OfficeOptions options) : options_(std::move(options)), profile_(options_.locale) {
  try {
    start();
    if (!options_.extensions.empty()) {
      // Only now: what is added to a profile that was never started is thrown away by the first start.
      install();
      restart();
    }
  } catch (...) {
    stop();
    throw;
  }
}

Office::~Office() {
  stop();
}

void Office::start() {
  running_ = std::make_unique<Running>();
  Running& run = *running_;
  const std::vector<std::string> line = commandLine(options_, profile_, run.pipe);
  run.launch(line, profile_);
  run.watchdog = std::make_unique<Watchdog>(
      options_.startLimit + connectionSlack,
      [&run, &profile = profile_](auto reason) { run.bite(reason, profile); },
      [&run, limit = options_.memoryLimit] { return run.hasGrownOver(limit); });
  const auto end = std::chrono::steady_clock::now() + options_.startLimit;
  while (!run.context.is()) {
    if (const auto code = run.process->wait(std::chrono::milliseconds(200))) {
      if (*code != exitForRestart) {
        throw Failure(fmt::format("the office ended while it was starting, with exit code {}", *code));
      }
      run.launch(line, profile_);
    }
    if (std::chrono::steady_clock::now() > end) {
      throw Failure(fmt::format("the office did not start within {} s", options_.startLimit.count()));
    }
    run.context = connect(run.pipe);
  }
  run.watchdog->allow(options_.lifeLimit);
  try {
    run.desktop = css::frame::Desktop::create(run.context);
    if (!options_.online) {
      takeOffline(run.context);
    }
  } catch (const css::uno::Exception&) {
    throw Failure("the office started but cannot be used: " + wordsOfCurrent());
  }
}

void Office::stop() noexcept {
  if (!running_) {
    return;
  }
  bool orderly = false;
  try {
    if (running_->desktop.is()) {
      closeDocuments(running_->desktop);
      orderly = running_->desktop->terminate();
    }
  } catch (...) {
    // The office has gone, or will not go: what follows does not depend on which.
    orderly = false;
  }
  running_->desktop.clear();
  running_->context.clear();
  if (running_->process && !running_->process->wait(std::chrono::seconds(orderly ? 60 : 15))) {
    running_->process->kill();
    running_->process->wait(std::chrono::seconds(30));
  }
  if (!orderly) {
    removePipes(running_->pipe, profile_);
  }
  running_->watchdog.reset();
  running_.reset();
}

bool Office::isRunning() const {
  return !running_->watchdog->hasBitten() && !running_->process->wait(std::chrono::milliseconds(0));
}

void Office::allow(std::chrono::seconds limit) {
  running_->watchdog->allow(limit);
}

void Office::restart() {
  stop();
  start();
}

void Office::install() {
  for (const auto& extension : options_.extensions) {
    addExtension(context(), extension);
  }
}

const Reference<css::uno::XComponentContext>& Office::context() const {
  return running_->context;
}

const Reference<css::frame::XDesktop2>& Office::desktop() const {
  return running_->desktop;
}

Reference<css::uno::XInterface> Office::service(const std::string& name) const {
  try {
    Reference<css::uno::XInterface> made =
        context()->getServiceManager()->createInstanceWithContext(toOffice(name), context());
    if (made.is()) {
      return made;
    }
  } catch (const css::uno::Exception&) {
    throw failed("the office could not make the service " + name);
  }
  throw Failure(fmt::format("the office does not know the service {}; is the extension installed?", name));
}

Any Office::call(const Reference<css::uno::XInterface>& object, const std::string& method,
                 std::initializer_list<Any> arguments) const {
  try {
    const auto access = css::beans::theIntrospection::get(context())->inspect(Any(object));
    const auto found = access->getMethod(toOffice(method), css::beans::MethodConcept::ALL);
    css::uno::Sequence<Any> in(arguments.begin(), static_cast<sal_Int32>(arguments.size()));
    return found->invoke(Any(object), in);
  } catch (const css::reflection::InvocationTargetException& invoked) {
    // A service that says no in words of its own is repeated and not explained.
    const Any& no = invoked.TargetException;
    if (no.getValueType() == cppu::UnoType<css::uno::RuntimeException>::get())
      throw Failure(wordsOf(no));
    throw failed("the office refused " + method);
  } catch (const css::uno::Exception&) {
    throw failed("the office refused " + method);
  }
}

Failure Office::failed(const std::string& what) const {
  if (running_->watchdog->hasBitten() == Watchdog::Reason::Grown) {
    constexpr std::uint64_t megabyte = 1'000'000;
    return Failure(fmt::format("{}: the office was ended because it took more than {} MB of memory", what,
                               options_.memoryLimit / megabyte));
  }
  if (running_->watchdog->hasBitten()) {
    return Failure(fmt::format("{}: the office was ended because it took longer than {} s", what,
                               options_.lifeLimit.count()));
  }
  if (running_->process->wait(std::chrono::milliseconds(200))) {
    return Failure(what + ": the office fell over it");
  }
  return Failure(what + ": " + wordsOfCurrent());
}

} // namespace wetspell::driver
