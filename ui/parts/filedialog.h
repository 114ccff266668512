// SPDX-License-Identifier: GPL-3.0-or-later
// Every window that asks for a file is made here: one that can neither delete nor rename, in which
// nothing can be dragged, and that asks before a file is written anew.
#pragma once

#include "core/log/target.h"

#include <QString>
#include <QStringList>

#include <optional>

class QFileDialog;
class QWidget;

namespace slopebook::ui::filedialog {

/// What is asked for. start: folder, with a name proposed where one is to be written.
struct Question {
    QString title{}, start{}, filter{};
    QString ending{}; ///< ".png": put after a name without it
};

/// A file that is there; nothing where the coach took it back.
QString open(QWidget* parent, const Question& question);
QStringList openMany(QWidget* parent, const Question& question);

/// A file to be written. One that is there is asked about first, and only then to be replaced;
/// what may never be replaced (core/log/target.h) is said, and the dialog comes again.
std::optional<log::Destination> save(QWidget* parent, const Question& question);

/// A file or folder that is to be made; whether it is there is for the maker to say.
QString saveNew(QWidget* parent, const Question& question);

} // namespace slopebook::ui::filedialog
