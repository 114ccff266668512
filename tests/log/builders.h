// SPDX-License-Identifier: GPL-3.0-or-later
// Values and small logs that the log's tests are made of.
#pragma once

#include "core/log/log.h"
#include "core/model/errors.h"

#include <QDir>
#include <QTemporaryDir>
#include <QTest>

namespace slopebook::test {

constexpr Date day(int year, unsigned month, unsigned of) {
    return {std::chrono::year{year}, std::chrono::month{month}, std::chrono::day{of}};
}

inline Set ladderSet(double kg, std::vector<double> speeds) {
    Set set{.load = massFromKilograms(kg)};
    for (const double speed : speeds)
        set.reps.push_back({.velocity = speed});
    return set;
}

/// A folder that goes away with the test, and a file in it that does not exist yet.
class Folder {
public:
    std::filesystem::path path(const char* name = "season.slopebook") const {
        return std::filesystem::path(m_dir.path().toStdString()) / name;
    }

private:
    // In memory where there is such a folder: thousands of synced writes are not what most tests
    // are about.
    QTemporaryDir m_dir{std::filesystem::exists("/dev/shm")
                            ? QStringLiteral("/dev/shm/slopebook-test-XXXXXX")
                            : QDir::tempPath() + QStringLiteral("/slopebook-test-XXXXXX")};
};

/// Gives the first block of a log a story, which no older layout has room for.
inline Block tellStory(log::Log& log) {
    auto [id, block] = log.blocks().at(0);
    block.trained = "fast, under what the flood left";
    block.aWeek = SessionsAWeek{.fewest = 2, .most = 2.5};
    log.change(id, block);
    return block;
}

/// What a small log holds, with the keys that it gave.
struct Season {
    AthleteId lane3{};
    AthleteId stroke{};
    LiftId pull{};
    LiftId throwing{};
    DeviceId encoder{};
    BlockId flood{};
    SessionId autumn{};
    SessionId repeat{};
    SessionId winter{};
};

/// Two athletes, two lifts, three sessions (one a repeat test), everything optional used somewhere.
inline Season fillSeason(log::Log& log) {
    Season s;
    log.together([&] {
        s.lane3 = log.add(Athlete{.name = "Lane 3", .note = "left-handed; café"});
        s.stroke = log.add(Athlete{.name = "Stroke seat"});
        s.pull = log.add(Lift{.name = "Bench pull",
                              .kind = VelocityKind::Mean,
                              .mvt = Mvt{.value = 0.51,
                                         .sd = 0.04,
                                         .origin = Mvt::Origin::Published,
                                         .source = "a table"},
                              .smallestVelocity = 0.05,
                              .smallestOneRm = 2.5,
                              .note = "pads under the bench"});
        s.throwing = log.add(Lift{.name = "Bench throw",
                                  .kind = VelocityKind::Peak,
                                  .rule = PointRule::Mean,
                                  .ballistic = true});
        s.encoder = log.add(Device{.name = "Boathouse encoder", .note = "new cable"});
        s.flood = log.add(Block{.name = "Flood winter",
                                .first = day(2026, 1, 5),
                                .last = day(2026, 2, 27),
                                .ceiling = Mass{60'000},
                                .note = "heavy plates lost"});
        s.autumn = log.add(SessionHead{.athlete = s.lane3,
                                       .date = day(2025, 11, 3),
                                       .bodyMass = Mass{81'500},
                                       .note = "fresh"});
        s.repeat = log.add(
            SessionHead{.athlete = s.lane3, .date = day(2025, 11, 5), .repeatOf = s.autumn});
        s.winter = log.add(SessionHead{.athlete = s.stroke, .date = day(2026, 2, 27)});
        for (const SessionId session : {s.autumn, s.repeat, s.winter}) {
            log.add(session, s.pull, ladderSet(40, {1.10, 1.12, 1.09}));
            log.add(session, s.pull, ladderSet(60, {0.86, 0.88}));
            Set excluded = ladderSet(70, {0.6});
            excluded.excluded = "missed the groove";
            log.add(session, s.pull, excluded);
            Set heaviest = ladderSet(82.5, {0.52});
            heaviest.trueMaximum = true;
            heaviest.note = "held";
            log.add(session, s.pull, heaviest);
            Set thrown = ladderSet(20, {2.4, 2.6, 1.0});
            thrown.reps[2].excluded = "slipped";
            log.add(session, s.throwing, thrown);
        }
        for (const LiftId lift : {s.pull, s.throwing})
            log.setConditions(s.autumn, lift, {.device = s.encoder, .place = "boathouse"});
        log.setCheckLoads(s.lane3, s.pull, {Mass{60'000}, Mass{40'000}});
    });
    return s;
}

/// A session in which all those lifts are measured with one device.
inline SessionId addMeasured(log::Log& log, const SessionHead& head, const Conditions& under,
                             const std::vector<LiftId>& lifts) {
    SessionId session{};
    log.together([&] {
        session = log.add(head);
        for (const LiftId lift : lifts)
            log.setConditions(session, lift, under);
    });
    return session;
}

/// The kind of LogError that work throws; nothing when it throws none.
template <class Work>
std::optional<LogError::Kind> errorOf(const Work& work) {
    try {
        work();
    } catch (const LogError& error) {
        return error.kind();
    }
    return std::nullopt;
}

/// Whether work throws BadInput.
template <class Work>
bool refuses(const Work& work) {
    try {
        work();
    } catch (const BadInput&) {
        return true;
    }
    return false;
}

inline QStringList texts(const std::vector<Words>& all) {
    QStringList list;
    for (const Words& one : all)
        list << QString::fromStdString(english(one));
    return list;
}

} // namespace slopebook::test

/// An empty list of findings, or the findings in the failure's message.
#define VERIFY_SOUND(log)                                                                          \
    do {                                                                                           \
        const auto findings_ = (log).check();                                                      \
        QVERIFY2(findings_.empty(),                                                                \
                 qPrintable(slopebook::test::texts(findings_).join(QLatin1Char('\n'))));           \
    } while (false)
