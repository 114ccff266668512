// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/mergerows.h"

#include "ui/window/mergedialog.h"
#include "ui/words/said.h"

#include <QHeaderView>
#include <QTreeWidget>

namespace slopebook::ui {

namespace {
constexpr int rowAir = 8; // px
} // namespace

void layOutMergeRows(QTreeWidget& list) {
    list.setHeaderLabels({MergeDialog::tr("What"), MergeDialog::tr("Of"), MergeDialog::tr("How")});
    list.setRootIsDecorated(false);
    list.setWordWrap(true); // what is said is read to its end
    list.setTextElideMode(Qt::ElideNone);
    list.setAccessibleName(MergeDialog::tr("What is not simply added"));
    list.header()->setSectionResizeMode(0, QHeaderView::ResizeToContents);
    list.header()->resizeSection(1, 320);
}

void addMergeRow(QTreeWidget& list, const QStringList& cells) {
    auto* item = new QTreeWidgetItem(&list, cells);
    for (int column = 0; column < 3; ++column)
        item->setToolTip(column, item->text(column));
    giveRowAir(list, *item);
}

// Of the first column, which is fitted to it: what wraps in the others may be higher, not lower.
void giveRowAir(QTreeWidget& list, QTreeWidgetItem& row) {
    const QFontMetrics letters = list.fontMetrics();
    row.setSizeHint(
        0, {letters.horizontalAdvance(row.text(0)) + 2 * rowAir, letters.height() + rowAir});
}

void fillMergeRows(QTreeWidget& list, const desks::MergeReport& report, LoadUnit unit) {
    const auto words = [&](const Words& some) { return said(some, unit); };
    const auto add = [&](const QString& what, const QString& thing, const QString& more) {
        addMergeRow(list, {what, thing, more});
    };
    const auto named = [&](const std::string& kind, const Words& name) {
        return MergeDialog::tr("%1: %2").arg(words(desks::sayKind(kind)), words(name));
    };
    for (const desks::ShownConflict& one : report.listed)
        add(MergeDialog::tr("to choose"), named(one.kind, one.about),
            words(desks::sayWhy(one.why)));
    for (const auto& [from, into] : report.joined)
        add(MergeDialog::tr("joined"), named(from.kind, from.name),
            MergeDialog::tr("one with %1").arg(words(into.name)));
    for (const auto& [now, before] : report.renamed)
        add(MergeDialog::tr("renamed"), named(now.kind, now.name),
            MergeDialog::tr("before: %1").arg(QString::fromStdString(before)));
    for (const desks::Named& one : report.revived)
        add(MergeDialog::tr("brought back"), named(one.kind, one.name),
            MergeDialog::tr("removed in one log, in use in the "
                            "other"));
}

bool readsAlike(const desks::MergeReport& one, const desks::MergeReport& other, LoadUnit unit) {
    const auto told = [unit](const desks::MergeReport& report) {
        QTreeWidget list;
        fillMergeRows(list, report, unit);
        QStringList all;
        for (const std::size_t count :
             {report.added, report.changed, report.removed, report.becameOne})
            all << QString::number(count);
        for (int row = 0; row < list.topLevelItemCount(); ++row)
            for (int column = 0; column < 3; ++column)
                all << list.topLevelItem(row)->text(column);
        return all;
    };
    return told(one) == told(other);
}

} // namespace slopebook::ui
