// SPDX-License-Identifier: GPL-3.0-or-later
// Runs the built program as a user does.
#pragma once

#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QString>
#include <QStringList>

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

} // namespace slopebook::tests
