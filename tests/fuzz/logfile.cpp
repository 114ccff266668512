// SPDX-License-Identifier: GPL-3.0-or-later
// Any bytes as a log: opened, salvaged, checked; never written to by looking. An input that does
// not begin as a file of SQLite's is taken for changes to a small log: three bytes of place, one of
// content.
#include "core/log/log.h"
#include "core/model/errors.h"
#include "tests/fuzz/workfile.h"
#include "tests/support/bytes.h"

using namespace slopebook;

namespace {
std::string smallLog(const std::filesystem::path& file) {
    {
        log::Log log = log::Log::create(file);
        log.together([&] {
            const AthleteId who = log.add(Athlete{.name = "Lane 3", .note = "left-handed"});
            const LiftId lift = log.add(Lift{.name = "Bench pull"});
            const Date first = std::chrono::year{2026} / 3 / 1;
            for (int i = 0; i < 6; ++i) {
                const SessionId session = log.add(
                    SessionHead{.athlete = who,
                                .date = Date{std::chrono::sys_days{first} + std::chrono::days{i}}});
                for (int set = 0; set < 4; ++set)
                    log.add(session, lift,
                            Set{.load = Mass{40'000 + 10'000 * set},
                                .reps = {{.velocity = 1.2 - 0.2 * set}, {.velocity = 1.0}}});
            }
        });
    }
    return test::readBytes(file);
}

std::string changed(std::string bytes, std::span<const char> changes) {
    for (std::size_t i = 0; i + 4 <= changes.size() && i < 4 * 64; i += 4) {
        const auto at = [&](std::size_t k) { return static_cast<unsigned char>(changes[i + k]); };
        bytes[(std::size_t{at(0)} << 16 | std::size_t{at(1)} << 8 | at(2)) % bytes.size()] =
            changes[i + 3];
    }
    return bytes;
}

void look(const std::filesystem::path& file, log::Access access) {
    try {
        const log::Log log = log::Log::open(file, access);
        for (const auto& athlete : log.athletes()) {
            for (const auto& session : log.sessions(athlete.id))
                static_cast<void>(log.session(session.id));
            static_cast<void>(log.batteries(athlete.id));
        }
        static_cast<void>(log.lifts());
        static_cast<void>(log.equipment());
        static_cast<void>(log.testKinds());
        static_cast<void>(log.liftSessions({}));
        static_cast<void>(log.check());
    } catch (const LogError& error) {
        if (std::string(error.what()).empty())
            fuzz::broken("refused without a word");
    }
}
} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    static const fuzz::WorkFile file("input.slopebook");
    static const std::string whole = smallLog(file.beside("small.slopebook"));
    const auto input = fuzz::bytesOf(data, size);
    const bool asIs = std::string_view(input.data(), input.size()).starts_with("SQLite format 3");
    const std::string bytes =
        asIs ? std::string(input.begin(), input.end()) : changed(whole, input);
    file.write(bytes);
    for (const auto access : {log::Access::Salvage, log::Access::ReadWrite}) {
        look(file.path(), access);
        if (test::readBytes(file.path()) != bytes)
            fuzz::broken("looking wrote to the file");
    }
    return 0;
}
