// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/meetings/laptop.h"

#include "core/model/mass.h"

#include <QStandardPaths>
#include <QTest>

#include <algorithm>
#include <stdexcept>

namespace slopebook::test {

namespace fs = std::filesystem;
using namespace Qt::StringLiterals;

const QString Laptop::mainWindow = u"^mine .*Slopebook$"_s;

bool comes(const std::function<bool()>& what, int ms) {
    return QTest::qWaitFor(what, ms);
}

QString Laptop::missing() {
    for (const char* tool : {"Xvfb", "xdotool"})
        if (QStandardPaths::findExecutable(QLatin1String(tool)).isEmpty())
            return QLatin1String(tool);
    return {};
}

Laptop::Laptop(fs::path home) : m_home(std::move(home)) {
    fs::create_directories(m_home / ".postgresql");
    m_screen.start(u"Xvfb"_s, {u"-displayfd"_s, u"1"_s, u"-screen"_s, u"0"_s, u"1280x720x24"_s,
                               u"-ac"_s, u"-nolisten"_s, u"tcp"_s});
    QByteArray number;
    while (!number.endsWith('\n') && m_screen.waitForReadyRead(60'000))
        number += m_screen.readAllStandardOutput();
    if (!number.endsWith('\n'))
        throw std::runtime_error("Xvfb did not start");
    m_surroundings = QProcessEnvironment::systemEnvironment();
    for (const char* gone : {"PGPASSFILE", "PGPASSWORD", "PGSSLMODE", "WAYLAND_DISPLAY"})
        m_surroundings.remove(QLatin1String(gone));
    const auto set = [this](const char* name, const QString& value) {
        m_surroundings.insert(QLatin1String(name), value);
    };
    const QString mine = QString::fromStdString(m_home.string());
    set("DISPLAY", QLatin1Char(':') + QString::fromLatin1(number.trimmed()));
    set("QT_QPA_PLATFORM", u"xcb"_s);
    // No bus: looked for it is started, and what its library then holds at the end is lost.
    set("DBUS_SESSION_BUS_ADDRESS", u"disabled:"_s);
    for (const char* folder : {"HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME"})
        set(folder, mine);
    fs::create_directory(m_home / "run");
    fs::permissions(m_home / "run", fs::perms::owner_all);
    set("XDG_RUNTIME_DIR", mine + u"/run"_s);
}

Laptop::~Laptop() {
    for (QProcess* one : {&m_window, &m_screen}) {
        one->kill();
        one->waitForFinished();
    }
}

bool Laptop::open() {
    m_window.setProcessEnvironment(m_surroundings);
    m_window.setProcessChannelMode(QProcess::MergedChannels);
    m_window.start(QStringLiteral(SLOPEBOOK_PROGRAM), {QString::fromStdString(log().string())});
    return comes(
               [this] { return shows(mainWindow) || m_window.state() == QProcess::NotRunning; }) &&
           focus(mainWindow);
}

std::optional<int> Laptop::quit() {
    focus(mainWindow);
    keys({u"ctrl+q"_s});
    if (!m_window.waitForFinished(60'000) || m_window.exitStatus() != QProcess::NormalExit)
        return std::nullopt;
    return m_window.exitCode();
}

QString Laptop::trouble() {
    return m_window.state() == QProcess::Running ? QString()
                                                 : QString::fromUtf8(m_window.readAll());
}

Laptop::Ran Laptop::hands(const QStringList& arguments) {
    QProcess process;
    process.setProcessEnvironment(m_surroundings);
    process.setStandardErrorFile(QProcess::nullDevice());
    process.start(u"xdotool"_s, arguments);
    if (!process.waitForFinished(60'000))
        return {};
    return {process.exitCode(), QString::fromUtf8(process.readAllStandardOutput())};
}

bool Laptop::shows(const QString& title) {
    return hands({u"search"_s, u"--onlyvisible"_s, u"--name"_s, title}).exit == 0;
}

bool Laptop::focus(const QString& title) {
    return comes([&] {
        return hands({u"search"_s, u"--onlyvisible"_s, u"--name"_s, title, u"windowfocus"_s,
                      u"--sync"_s})
                   .exit == 0;
    });
}

void Laptop::keys(const QStringList& names) {
    hands(QStringList{u"key"_s} + names);
}

void Laptop::type(const QString& text) {
    hands({u"type"_s, u"--delay"_s, u"2"_s, text});
}

void Laptop::enter(const QString& line) {
    focus(mainWindow);
    keys({u"ctrl+l"_s});
    type(line);
    keys({u"Return"_s});
}

void Laptop::click(const QString& title, int x, int y) {
    const QString told = hands({u"search"_s, u"--onlyvisible"_s, u"--name"_s, title,
                                u"getwindowgeometry"_s, u"--shell"_s})
                             .out;
    const auto number = [&](const char* name) {
        const QString from = told.section(QLatin1String(name) + QLatin1Char('='), 1);
        return from.section(QLatin1Char('\n'), 0, 0).toInt();
    };
    const int across = number("\nX") + (x < 0 ? number("WIDTH") + x : x);
    const int down = number("\nY") + (y < 0 ? number("HEIGHT") + y : y);
    hands({u"mousemove"_s, QString::number(across), QString::number(down), u"click"_s, u"1"_s});
}

void Laptop::keepPicture(const QString& name) {
    const QString folder = qEnvironmentVariable("SLOPEBOOK_PICTURES");
    if (folder.isEmpty())
        return;
    QProcess process;
    process.setProcessEnvironment(m_surroundings);
    process.start(u"import"_s,
                  {u"-window"_s, u"root"_s, folder + QLatin1Char('/') + name + u".png"_s});
    process.waitForFinished();
}

std::size_t Laptop::setsOf(const std::string& athlete, double kg) const {
    return says([&](const log::Log& log) {
        std::size_t sets = 0;
        for (const auto& one : log.athletes())
            if (one.value.name == athlete)
                for (const auto& session : log.sessions(one.id))
                    for (const auto& set : log.session(session.id).sets)
                        sets += set.set.load == massFromKilograms(kg) ? 1 : 0;
        return sets;
    });
}

bool Laptop::has(const std::string& athlete) const {
    return says([&](const log::Log& log) {
        return std::ranges::any_of(log.athletes(),
                                   [&](const auto& one) { return one.value.name == athlete; });
    });
}

std::optional<meetings::Joined> Laptop::joined() const {
    return says([](const log::Log& log) { return meetings::joined(log); });
}

} // namespace slopebook::test
