// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/log/strays.h"

#include <cerrno>
#include <charconv>
#include <csignal>
#include <ctime>
#include <optional>
#include <string_view>
#include <sys/stat.h>
#include <unistd.h>

namespace slopebook::log {

namespace {
namespace fs = std::filesystem;

constexpr std::string_view underWayMark = ".part";
constexpr std::string_view journalMark = "-journal";
constexpr std::size_t longestName = 255;   // of all file systems at hand
constexpr std::size_t roomForNumbers = 50; // mark, process, number, journal
constexpr std::time_t oldEnough = 60;      // s: longer than a file is between two writes

struct NameUnderWay {
    std::string name;
    pid_t process = 0;
};

/// Takes a number from the front.
std::optional<long> takeNumber(std::string_view& text) {
    long number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc{} || number < 0)
        return std::nullopt;
    text.remove_prefix(static_cast<std::size_t>(end - text.data()));
    return number;
}

std::optional<NameUnderWay> parseUnderWay(std::string_view name) {
    const auto mark = name.rfind(underWayMark);
    if (!name.starts_with('.') || mark == std::string_view::npos || mark < 2)
        return std::nullopt;
    std::string_view rest = name.substr(mark + underWayMark.size());
    const auto process = takeNumber(rest);
    if (!process || *process < 1 || !rest.starts_with('-'))
        return std::nullopt;
    rest.remove_prefix(1);
    if (!takeNumber(rest) || !(rest.empty() || rest == journalMark))
        return std::nullopt;
    return NameUnderWay{std::string(name.substr(1, mark - 1)), static_cast<pid_t>(*process)};
}

bool isLeft(const struct stat& is) {
    return is.st_uid == ::geteuid() && std::time(nullptr) - is.st_mtime > oldEnough;
}

// What stands in it is removed one by one, so that a folder with anything else in it stays.
void removeFolder(const fs::path& folder) {
    std::error_code error;
    for (fs::directory_iterator it(folder, error), end; !error && it != end; it.increment(error)) {
        const auto kind = it->path().extension();
        struct stat is {};
        if (::lstat(it->path().c_str(), &is) != 0 || !S_ISREG(is.st_mode) || !isLeft(is) ||
            (kind != ".csv" && kind != ".xlsx" && !parseUnderWay(it->path().filename().native())))
            return;
    }
    for (fs::directory_iterator it(folder, error), end; !error && it != end; it.increment(error))
        ::unlink(it->path().c_str());
    ::rmdir(folder.c_str());
}
} // namespace

SignalsWait::SignalsWait() noexcept : m_before{} {
    sigset_t stopping;
    sigemptyset(&stopping);
    for (const int signal : {SIGINT, SIGTERM, SIGHUP})
        sigaddset(&stopping, signal);
    ::pthread_sigmask(SIG_BLOCK, &stopping, &m_before);
}

SignalsWait::~SignalsWait() {
    ::pthread_sigmask(SIG_SETMASK, &m_before, nullptr);
}

fs::path nameUnderWay(const fs::path& target, int number) {
    std::string name = target.filename().string();
    if (name.size() > longestName - roomForNumbers) {
        name.resize(longestName - roomForNumbers);
        while (name.size() > 1 && (static_cast<unsigned char>(name.back()) & 0xC0) == 0x80)
            name.pop_back(); // no half letter
    }
    return target.parent_path() / ("." + name + std::string(underWayMark) +
                                   std::to_string(::getpid()) + "-" + std::to_string(number));
}

std::string nameOfUnderWay(const std::string& name) {
    const auto underWay = parseUnderWay(name);
    return underWay ? underWay->name : name;
}

void sweepStrays(const fs::path& folder) noexcept {
    try {
        std::error_code error;
        for (fs::directory_iterator it(folder, error), end; !error && it != end;
             it.increment(error)) {
            const auto underWay = parseUnderWay(it->path().filename().native());
            struct stat is {};
            if (!underWay || ::lstat(it->path().c_str(), &is) != 0 || !isLeft(is) ||
                ::kill(underWay->process, 0) == 0 || errno != ESRCH)
                continue;
            if (S_ISREG(is.st_mode))
                ::unlink(it->path().c_str());
            else if (S_ISDIR(is.st_mode))
                removeFolder(it->path());
        }
    } catch (...) { // NOLINT(bugprone-empty-catch): what is left is no harm
    }
}

} // namespace slopebook::log
