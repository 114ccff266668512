// SPDX-License-Identifier: GPL-3.0-or-later
// Runs the built program as a user does.
#pragma once

#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QString>
#include <QStringList>

#include <memory>

namespace slopebook::tests {

struct Ran {
    int exit = -1;
    QByteArray out, err;
    QJsonObject json() const { return QJsonDocument::fromJson(out).object(); }
};

/// Standard input is empty; the environment is that of the test. exit is -1 where it crashed.
inline Ran runProgram(const QStringList& arguments) {
    QProcess program;
    program.start(QStringLiteral(SLOPEBOOK_PROGRAM), arguments);
    program.closeWriteChannel();
    if (!program.waitForFinished(120'000) || program.exitStatus() != QProcess::NormalExit)
        return {-1, program.readAllStandardOutput(), program.readAllStandardError()};
    return {program.exitCode(), program.readAllStandardOutput(), program.readAllStandardError()};
}

/// The same without waiting for its end.
inline std::unique_ptr<QProcess> startProgram(const QStringList& arguments) {
    auto program = std::make_unique<QProcess>();
    program->start(QStringLiteral(SLOPEBOOK_PROGRAM), arguments);
    program->closeWriteChannel();
    if (!program->waitForStarted())
        qFatal("cannot start");
    return program;
}

} // namespace slopebook::tests
