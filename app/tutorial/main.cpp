// SPDX-License-Identifier: GPL-3.0-or-later
// Makes the tutorial: follows it in the window, in each language, takes a picture after each step,
// and writes the page that stands in the package. Fails where a step cannot be followed.
//   slopebook_tutorial SAMPLE FOLDER
// Needs no display: QT_QPA_PLATFORM=offscreen.
#include "app/tutorial/follower.h"
#include "ui/window/application.h"
#include "ui/window/language.h"
#include "ui/window/mainwindow.h"
#include "ui/words/format.h"

#include <QBuffer>
#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <QTest>
#include <QTextStream>

#include <algorithm>
#include <map>
#include <stdexcept>
#include <vector>

using namespace slopebook;
using namespace slopebook::ui;
using namespace Qt::Literals::StringLiterals;

namespace {

const QSize pictureSize(1120, 640);

/// A week after the last session of the sample log.
Date today() {
    return Date{std::chrono::year{2026}, std::chrono::month{5}, std::chrono::day{11}};
}

void write(const QString& file, const QByteArray& bytes) {
    QFile out(file);
    if (!out.open(QIODevice::WriteOnly) || out.write(bytes) != bytes.size() || !out.flush())
        throw std::runtime_error((file + u": "_s + out.errorString()).toStdString());
}

/// Of the colours that it has most, 256: a third of the bytes, and no difference to see.
QImage withFewColours(const QImage& picture) {
    std::map<QRgb, int> count;
    for (int y = 0; y < picture.height(); ++y)
        for (int x = 0; x < picture.width(); ++x)
            ++count[picture.pixel(x, y)];
    std::vector<std::pair<int, QRgb>> most;
    for (const auto& [colour, times] : count)
        most.emplace_back(-times, colour);
    std::ranges::sort(most);
    QList<QRgb> table;
    for (std::size_t i = 0; i < std::min<std::size_t>(most.size(), 256); ++i)
        table << most[i].second;
    return picture.convertToFormat(QImage::Format_Indexed8, table,
                                   Qt::ThresholdDither | Qt::AvoidDither);
}

void takePicture(MainWindow& window, const QString& file) {
    QBuffer png;
    png.open(QIODevice::WriteOnly);
    withFewColours(window.grab().toImage().convertToFormat(QImage::Format_RGB32))
        .save(&png, "PNG", 0);
    write(file, png.data());
}

QString page(const MainWindow& window, const QString& language, const QDir& folder) {
    QString body;
    int at = 0;
    for (const TutorialStep& step : tutorialSteps(window.actions())) {
        body += u"<h2>%1. %2</h2>\n<p>%3</p>\n"_s.arg(++at).arg(step.title, step.html);
        if (folder.exists(step.picture + u".png"_s))
            body += u"<p><img src=\"%1.png\" alt=\"%2\"></p>\n"_s.arg(step.picture, step.title);
    }
    return u"<!DOCTYPE html>\n<html lang=\"%1\">\n<head><meta "
           u"charset=\"utf-8\"><title>Slopebook</title>\n"
           "<style>body { max-width: 70em; margin: 2em auto; padding: 0 1em; font-family: "
           "sans-serif; "
           "line-height: 1.5 } img { max-width: 100%; border: 1px solid #999 }</style></head>\n"
           "<body>\n<h1>Slopebook %2</h1>\n<p>%3</p>\n%4</body>\n</html>\n"_s.arg(
               language, QStringLiteral(SLOPEBOOK_VERSION), tutorialLead(), body);
}

/// Empty: followed to its end.
QString make(const QString& language, const QString& sample, const QDir& folder) {
    const QTemporaryDir own;
    Surroundings surroundings;
    surroundings.settings.language = language;
    surroundings.clock = today;
    surroundings.sampleLog = pathOf(sample);
    surroundings.dataFolder = pathOf(own.path());
    MainWindow window(surroundings);
    window.resize(pictureSize);
    window.show();
    window.activateWindow();
    if (!QTest::qWaitForWindowActive(&window))
        return u"the window did not open"_s;
    app::Follower follower(window);
    for (const TutorialStep& step : tutorialSteps(window.actions())) {
        if (const QString problem = follower.follow(step); !problem.isEmpty())
            return problem;
        if (!step.picture.isEmpty())
            takePicture(window, folder.filePath(step.picture + u".png"_s));
    }
    write(folder.filePath(u"index.html"_s), page(window, language, folder).toUtf8());
    return {};
}

} // namespace

int main(int argc, char** argv) {
    const auto application = makeApplication(argc, argv);
    const QStringList arguments = application->arguments();
    QTextStream complaint(stderr);
    if (arguments.size() != 3) {
        complaint << "usage: slopebook_tutorial SAMPLE FOLDER\n";
        return 2;
    }
    try {
        for (const Language& one : languages()) {
            const QDir folder(arguments[2] + u'/' + one.code);
            folder.mkpath(u"."_s);
            if (const QString problem = make(one.code, arguments[1], folder); !problem.isEmpty()) {
                complaint << "tutorial (" << one.code << "): " << problem << '\n';
                return 1;
            }
        }
    } catch (const std::exception& error) {
        complaint << error.what() << '\n';
        return 1;
    }
    return 0;
}
