// SPDX-License-Identifier: GPL-3.0-or-later
// Runs a Python helper of tests/system, or R, and says what it printed.
#pragma once

#include "tests/system/program.h"

#include <QStandardPaths>

namespace slopebook::tests {

/// Debian's own, which has the modules of tests/packages.txt.
inline const QString python = QStringLiteral("/usr/bin/python3");

/// exit is -1 where it did not end or is not installed.
inline Ran runTool(const QString& tool, const QStringList& arguments) {
    QProcess process;
    process.start(tool, arguments);
    if (!process.waitForFinished(120'000) || process.exitStatus() != QProcess::NormalExit)
        return {-1, process.readAllStandardOutput(), process.readAllStandardError()};
    return {process.exitCode(), process.readAllStandardOutput(), process.readAllStandardError()};
}

inline Ran runPython(const QString& script, const QStringList& arguments) {
    return runTool(python, QStringList{QStringLiteral(SLOPEBOOK_SOURCE "/tests/system/") + script} +
                               arguments);
}

inline bool haveTool(const QString& tool) {
    return !QStandardPaths::findExecutable(tool).isEmpty();
}

/// Whether python3 has a module.
inline bool haveModule(const QString& module) {
    return runTool(python, {QStringLiteral("-c"), QStringLiteral("import ") + module}).exit == 0;
}

} // namespace slopebook::tests
