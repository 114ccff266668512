// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/filedialog.h"

#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QAbstractItemView>
#include <QCoreApplication>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QPushButton>

namespace slopebook::ui::filedialog {

namespace {

struct FileQuestions {
    Q_DECLARE_TR_FUNCTIONS(FileQuestions)
};

// No deleting, no renaming, no dragging. The desktop's own dialogs are managers of files too: ours
// alone keeps to what it is asked.
void makeHarmless(QFileDialog& dialog) {
    dialog.setOption(QFileDialog::DontUseNativeDialog);
    dialog.setOption(QFileDialog::ReadOnly);
    for (auto* view : dialog.findChildren<QAbstractItemView*>()) {
        view->setDragEnabled(false);
        view->setAcceptDrops(false);
        view->setDragDropMode(QAbstractItemView::NoDragDrop);
    }
}

QStringList asked(QWidget* parent, const Question& question, QFileDialog::AcceptMode accept,
                  QFileDialog::FileMode mode) {
    QFileDialog dialog(parent, question.title);
    makeHarmless(dialog);
    dialog.setOption(QFileDialog::DontConfirmOverwrite); // asked below, once the name is whole
    dialog.setAcceptMode(accept);
    dialog.setFileMode(mode);
    if (!question.filter.isEmpty())
        dialog.setNameFilters(question.filter.split(QStringLiteral(";;")));
    const QFileInfo start(question.start);
    if (start.isDir()) {
        dialog.setDirectory(start.filePath());
    } else if (!question.start.isEmpty()) {
        if (start.dir().exists() && question.start.contains(QLatin1Char('/')))
            dialog.setDirectory(start.path());
        dialog.selectFile(start.fileName());
    }
    return dialog.exec() == QDialog::Accepted ? dialog.selectedFiles() : QStringList();
}

QString first(const QStringList& files) {
    return files.isEmpty() ? QString() : files.first();
}

bool mayReplace(QWidget* parent, const Question& question, const std::filesystem::path& file) {
    try {
        log::requireWritable(file, log::Existing::Replace);
    } catch (const std::exception& error) {
        QMessageBox::warning(parent, question.title, said(error));
        return false;
    }
    QMessageBox box(QMessageBox::Question, question.title,
                    FileQuestions::tr("%1 is there already. Replace it?").arg(nameOf(file)),
                    QMessageBox::Cancel, parent);
    auto* replace = box.addButton(FileQuestions::tr("&Replace"), QMessageBox::DestructiveRole);
    box.setDefaultButton(QMessageBox::Cancel);
    box.exec();
    return box.clickedButton() == replace;
}

} // namespace

QString open(QWidget* parent, const Question& question) {
    return first(asked(parent, question, QFileDialog::AcceptOpen, QFileDialog::ExistingFile));
}

QStringList openMany(QWidget* parent, const Question& question) {
    return asked(parent, question, QFileDialog::AcceptOpen, QFileDialog::ExistingFiles);
}

std::optional<log::Destination> save(QWidget* parent, const Question& question) {
    Question again = question;
    for (;;) {
        QString file = saveNew(parent, again);
        if (file.isEmpty())
            return std::nullopt;
        if (!file.endsWith(question.ending, Qt::CaseInsensitive))
            file += question.ending;
        const auto path = pathOf(file);
        if (!std::filesystem::exists(std::filesystem::symlink_status(path)))
            return log::Destination(path);
        if (mayReplace(parent, question, path))
            return log::Destination(path, log::Existing::Replace);
        again.start = file;
    }
}

QString saveNew(QWidget* parent, const Question& question) {
    return first(asked(parent, question, QFileDialog::AcceptSave, QFileDialog::AnyFile));
}

} // namespace slopebook::ui::filedialog
