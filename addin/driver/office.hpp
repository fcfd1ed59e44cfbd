#pragma once
// One office process with a profile of its own, started, talked to and ended from outside.

#include "base/css.hpp"
#include "driver/failure.hpp"
#include "driver/profile.hpp"

#include <com/sun/star/frame/XDesktop2.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>

#include <chrono>
#include <cstdint>
#include <filesystem>
#include <initializer_list>
#include <memory>
#include <string>
#include <vector>

namespace wetspell::driver {

struct OfficeOptions {
  std::vector<std::filesystem::path> extensions; ///< .oxt files to install; none: an office without us
  std::string locale = "en-US";                  ///< decides decimal sign and date order
  bool visible = false;                          ///< on a screen (DISPLAY), for pictures of windows
  bool online = false; ///< may fetch from the net what documents link to, as the office of a person may
  std::chrono::seconds startLimit{120}; ///< for each start, on a machine that has other work
  std::chrono::seconds lifeLimit{1800}; ///< after a start; then it is killed, the running call fails
  std::uint64_t memoryLimit = 0;        ///< bytes; above, it is killed, the running call fails; 0: none
};

/// A running office. All calls throw Failure with the reason in words. Not to be copied or moved; the
/// destructor closes documents without saving, ends the process (kills it if need be), removes the profile.
class Office {
public:
  explicit Office(OfficeOptions options = {});
  ~Office();
  Office(const Office&) = delete;
  Office& operator=(const Office&) = delete;

  /// The office's own context: its service manager makes objects inside the office.
  const css::uno::Reference<css::uno::XComponentContext>& context() const;
  const css::uno::Reference<css::frame::XDesktop2>& desktop() const;

  /// A new object of a service, by name.
  css::uno::Reference<css::uno::XInterface> service(const std::string& name) const;

  /// Calls a method by name, through the office's reflection, so that types the extension brings with it
  /// need not be known on this side.
  css::uno::Any call(const css::uno::Reference<css::uno::XInterface>& object, const std::string& method,
                     std::initializer_list<css::uno::Any> arguments = {}) const;

  /// To be thrown in a catch block, when a call into the office threw: what was tried, and why it failed.
  Failure failed(const std::string& what) const;

  /// Ends the process and starts it again on the same profile.
  void restart();

  /// Whether it still runs: it may have been killed, or have fallen over a file.
  bool isRunning() const;
  /// Its time counts anew, from now.
  void allow(std::chrono::seconds limit);

private:
  struct Running;

  void start();
  void stop() noexcept;
  void install();

  OfficeOptions options_;
  Profile profile_;
  std::unique_ptr<Running> running_;
};

} // namespace wetspell::driver
