// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/ui/fitwalk.h"

#include "tests/ui/everyplace.h"
#include "tests/ui/paintedtexts.h"
#include "ui/charts/chartout.h"
#include "ui/charts/chartview.h"
#include "ui/parts/sentence.h"
#include "ui/window/index.h"
#include "ui/window/messagebar.h"
#include "ui/window/scheme.h"
#include "ui/window/strip.h"

#include <QAbstractButton>
#include <QAbstractScrollArea>
#include <QComboBox>
#include <QDateEdit>
#include <QFontInfo>
#include <QGraphicsScene>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QMenuBar>
#include <QPainter>
#include <QRegularExpression>
#include <QStackedLayout>
#include <QStyle>
#include <QStyleOptionComboBox>
#include <QTabBar>
#include <QTableView>

#include <algorithm>
#include <array>

namespace slopebook::test {

using namespace slopebook::ui;

namespace {

constexpr int rowsLookedAt = 12;
constexpr int leastLetters = 12; ///< px (looks: small)

/// A chart as it stands on the screen; Qt Charts' views show theirs to a scene.
void paintInto(TextRecorder& recorder, QWidget& chart) {
    QPainter painter(&recorder);
    painter.setFont(chart.font());
    if (const auto* view = dynamic_cast<const charts::ChartView*>(&chart))
        view->scene()->render(&painter, QRectF(QPointF(), chart.size()),
                              QRectF(QPointF(), chart.size()), Qt::IgnoreAspectRatio);
    else
        chart.render(&painter, QPoint(), QRegion(), QWidget::RenderFlags());
}

QString quoted(const PaintedText& text) {
    return QStringLiteral("\"%1\" (%2, %3)")
        .arg(text.text)
        .arg(text.box.left(), 0, 'f', 0)
        .arg(text.box.top(), 0, 'f', 0);
}

/// Not on another tab, nor scrolled out of sight. What a viewport covers is not seen itself.
bool isSeen(const QWidget& widget, const QWidget& window) {
    if (!widget.isVisible() || widget.window() != &window)
        return false;
    const auto* area = qobject_cast<const QAbstractScrollArea*>(&widget);
    return !(area ? area->viewport() : &widget)->visibleRegion().isEmpty();
}

/// Texts that touch: by more than what letters keep clear of each other.
bool overEachOther(const QRectF& one, const QRectF& other) {
    return one.adjusted(0.5, 1, -0.5, -1).intersects(other.adjusted(0.5, 1, -0.5, -1));
}

} // namespace

FitWalk::FitWalk(QString name) : m_name(std::move(name)) {}

void FitWalk::take(bool good, const QString& place, const QString& what) {
    ++m_seen;
    if (!good)
        m_wrong << QStringLiteral("%1: %2: %3").arg(m_name, place, what);
}

void FitWalk::look(const QString& place, QWidget& shown, bool page) {
    int tallest = 0;
    QString picture;
    for (QWidget* each : shown.findChildren<QWidget*>()) {
        if (!isSeen(*each, shown))
            continue;
        lookAtText(place, *each);
        if (const auto* label = qobject_cast<const QLabel*>(each); label && page)
            take(5 * label->visibleRegion().boundingRect().height() <= 2 * shown.height(), place,
                 QStringLiteral("half of the page is ") + described(*each));
        lookAtLayout(place, *each);
        lookAtLetters(place, *each);
        lookAtField(place, *each);
        if (auto* line = qobject_cast<QLineEdit*>(each))
            lookAtHint(place, *line);
        if (const auto* day = qobject_cast<const QDateEdit*>(each))
            lookAtDay(place, shown, *day);
        if (const auto* table = qobject_cast<QTableView*>(each))
            lookAtTable(place, *table);
        if (dynamic_cast<charts::ChartOut*>(each)) {
            lookIntoChart(place, *each);
            if (each->height() > tallest) {
                tallest = each->height();
                picture = each->accessibleName().left(60);
            }
        }
    }
    if (page)
        lookAtPlace(place, shown);
    if (page && m_strips)
        lookAtStrips(place, shown);
    if (page && tallest > 0)
        take(3 * tallest >= shown.height(), place,
             QStringLiteral("picture \"%1\" has %2 px of %3")
                 .arg(picture)
                 .arg(tallest)
                 .arg(shown.height()));
}

/// What a layout has no room for lies over what stands beside it.
void FitWalk::lookAtLayout(const QString& place, const QWidget& widget) {
    const QLayout* layout = widget.layout();
    if (!layout || qobject_cast<const QStackedLayout*>(layout))
        return;
    QList<QRect> held;
    QStringList names;
    for (int i = 0; i < layout->count(); ++i)
        if (QLayoutItem* item = layout->itemAt(i); item && !item->isEmpty()) {
            held << item->geometry();
            names << (item->widget() ? described(*item->widget()) : QStringLiteral("a part"));
        }
    for (qsizetype i = 0; i < held.size(); ++i)
        for (qsizetype j = i + 1; j < held.size(); ++j)
            take(!held[i].intersects(held[j]), place,
                 QStringLiteral("%1 lies on %2").arg(names[i], names[j]));
}

/// What a page is about begins its line, at the page's left.
void FitWalk::lookAtPlace(const QString& place, const QWidget& shown) {
    constexpr int margin = 20; // px
    const auto* strip = shown.findChild<ui::Strip*>();
    const auto* name = strip ? strip->findChild<QWidget*>(QStringLiteral("place")) : nullptr;
    if (!name || !isSeen(*name, shown))
        return;
    const int left = name->mapTo(strip->parentWidget(), QPoint()).x();
    take(left <= margin, place, QStringLiteral("its title begins at %1").arg(left));
}

/// Above what a page says stands one line of controls.
void FitWalk::lookAtStrips(const QString& place, const QWidget& shown) {
    int sentence = -1;
    for (const auto* each : shown.findChildren<ui::Sentence*>())
        if (const int top = each->mapTo(&shown, QPoint()).y();
            isSeen(*each, shown) && !each->text().isEmpty() && (sentence < 0 || top < sentence))
            sentence = top;
    for (const auto* each : shown.findChildren<ui::Sentence*>())
        if (isSeen(*each, shown)) {
            const int lines = qRound(double(each->heightForWidth(each->width())) /
                                     each->fontMetrics().lineSpacing());
            take(lines <= 2, place,
                 QStringLiteral("a sentence of %1 lines: %2").arg(lines).arg(each->text()));
        }
    const auto* index = shown.findChild<ui::Index*>();
    const auto* bar = shown.findChild<QMenuBar*>();
    const auto* message = shown.findChild<ui::MessageBar*>();
    QList<QRect> lines;
    for (const QWidget* each : shown.findChildren<QWidget*>()) {
        const bool control = qobject_cast<const QComboBox*>(each) ||
                             qobject_cast<const QTabBar*>(each) ||
                             qobject_cast<const QAbstractButton*>(each);
        if (!control || !isSeen(*each, shown) || (index && index->isAncestorOf(each)) ||
            (bar && bar->isAncestorOf(each)) || (message && message->isAncestorOf(each)))
            continue;
        QRect box(each->mapTo(&shown, QPoint()), each->size());
        if (box.bottom() > sentence)
            continue;
        const auto beside = std::ranges::find_if(lines, [&box](const QRect& line) {
            return line.top() <= box.center().y() && box.center().y() <= line.bottom();
        });
        if (beside == lines.end())
            lines << box;
        else
            *beside |= box;
    }
    take(lines.size() <= 1, place,
         QStringLiteral("%1 lines of controls above the sentence").arg(lines.size()));
}

void FitWalk::lookAtText(const QString& place, const QWidget& widget) {
    if (const auto* label = qobject_cast<const QLabel*>(&widget);
        label && !label->text().isEmpty()) {
        const bool wraps = label->wordWrap();
        const int least =
            wraps ? label->heightForWidth(label->width()) : label->sizeHint().height();
        take(label->height() + 1 >= least, place, QStringLiteral("low ") + described(widget));
        take(label->width() + 1 >= (wraps ? label->minimumSizeHint() : label->sizeHint()).width(),
             place, QStringLiteral("narrow ") + described(widget));
        overlaps(place, widget);
    } else if (const auto* button = qobject_cast<const QAbstractButton*>(&widget);
               button && !button->text().isEmpty()) {
        const QFontMetrics metrics(button->font());
        take(button->width() >= metrics.size(Qt::TextShowMnemonic, button->text()).width(), place,
             QStringLiteral("narrow ") + described(widget));
        take(button->height() >= metrics.height(), place,
             QStringLiteral("low ") + described(widget));
        overlaps(place, widget);
    } else if (const auto* bar = qobject_cast<const QTabBar*>(&widget)) {
        for (int tab = 0; tab < bar->count(); ++tab)
            take(bar->tabRect(tab).width() >=
                     bar->fontMetrics().size(Qt::TextShowMnemonic, bar->tabText(tab)).width(),
                 place, QStringLiteral("tab ") + bar->tabText(tab));
    }
}

/// No text is under 12 px, and what cannot be pressed now is still read.
void FitWalk::lookAtLetters(const QString& place, const QWidget& widget) {
    const auto* label = qobject_cast<const QLabel*>(&widget);
    const auto* button = qobject_cast<const QAbstractButton*>(&widget);
    const bool words = (label && !label->text().isEmpty()) || (button && !button->text().isEmpty());
    if (!words && !qobject_cast<const QTableView*>(&widget) &&
        !qobject_cast<const QComboBox*>(&widget) && !qobject_cast<const QLineEdit*>(&widget))
        return;
    const int pixels = QFontInfo(widget.font()).pixelSize();
    take(pixels >= leastLetters, place, QStringLiteral("%1 px: ").arg(pixels) + described(widget));
    if (!button || button->isEnabled())
        return;
    const QPalette palette = button->palette();
    const QColor ink = palette.color(QPalette::Disabled, QPalette::ButtonText);
    for (const auto ground : {QPalette::Base, QPalette::Window})
        take(contrast(ink, palette.color(QPalette::Active, ground)) >= disabledContrast, place,
             QStringLiteral("%1 on %2: ")
                     .arg(ink.name(), palette.color(QPalette::Active, ground).name()) +
                 described(widget));
}

// What is chosen, and what a field that is empty asks for.
void FitWalk::lookAtField(const QString& place, const QWidget& widget) {
    if (const auto* box = qobject_cast<const QComboBox*>(&widget); box && !box->isEditable()) {
        QStyleOptionComboBox option;
        option.initFrom(box);
        const QRect room = box->style()->subControlRect(QStyle::CC_ComboBox, &option,
                                                        QStyle::SC_ComboBoxEditField, box);
        TextRecorder recorder(box->size());
        paintInto(recorder, const_cast<QWidget&>(widget)); // painting is no change of it
        for (const PaintedText& text : recorder.texts())
            take(text.box.right() <= room.right() + 1, place,
                 QStringLiteral("narrow box %1 in %2").arg(quoted(text)).arg(room.width()));
    }
    // A place is read whole, wherever it stands in a control line.
    if (const auto* line = qobject_cast<const QLineEdit*>(&widget);
        line && line->objectName() == QLatin1String("sessionPlace"))
        take(line->fontMetrics().horizontalAdvance(line->text()) <= line->width() - 6, place,
             QStringLiteral("cut field \"%1\" %2").arg(line->text()).arg(line->width()));
    if (const auto* line = qobject_cast<const QLineEdit*>(&widget);
        line && line->text().isEmpty() && line->isEnabled())
        take(line->fontMetrics().horizontalAdvance(line->placeholderText()) <= line->width() - 6,
             place,
             QStringLiteral("narrow field \"%1\" %2")
                 .arg(line->placeholderText())
                 .arg(line->width()));
}

/// The caret of an empty field stands on no letter of what the field asks for.
void FitWalk::lookAtHint(const QString& place, QLineEdit& line) {
    const QString hint = line.placeholderText().trimmed();
    if (!line.text().isEmpty() || hint.isEmpty() || !line.isEnabled())
        return;
    TextRecorder recorder(line.size());
    paintInto(recorder, line);
    const auto& texts = recorder.texts();
    const auto painted =
        std::ranges::find(texts, hint, [](const PaintedText& one) { return one.text.trimmed(); });
    take(painted != texts.end(), place, QStringLiteral("no hint \"%1\"").arg(hint));
    if (painted == texts.end())
        return;
    constexpr int before = 5; // px, that Qt adds to what is drawn anew
    const QFontMetricsF metrics(line.font());
    const double caret = line.inputMethodQuery(Qt::ImCursorRectangle).toRectF().left() + before;
    const double end =
        caret + line.style()->pixelMetric(QStyle::PM_TextCursorWidth, nullptr, &line);
    const qsizetype blanks = painted->text.indexOf(hint.front());
    const double first = painted->box.left() +
                         metrics.horizontalAdvance(painted->text.left(blanks)) +
                         metrics.leftBearing(hint.front());
    const double last = first + metrics.horizontalAdvance(hint);
    take(first >= end || last <= caret + 1, place,
         QStringLiteral("caret %1 to %2 in the hint \"%3\" %4 to %5")
             .arg(caret)
             .arg(end)
             .arg(hint)
             .arg(first)
             .arg(last));
}

/// A day among other fields says which day it is.
void FitWalk::lookAtDay(const QString& place, const QWidget& shown, const QDateEdit& day) {
    const auto labels = shown.findChildren<QLabel*>();
    take(std::ranges::any_of(
             labels,
             [&](const QLabel* label) { return label->buddy() == &day && label->isVisible(); }),
         place, QStringLiteral("a day without its caption: ") + described(day));
}

/// Texts beside it within the same parent are not drawn over it.
void FitWalk::overlaps(const QString& place, const QWidget& widget) {
    for (const QObject* child : widget.parentWidget()->children()) {
        const auto* other = qobject_cast<const QWidget*>(child);
        if (!other || other <= &widget || !other->isVisible() || other->isWindow())
            continue;
        if (qobject_cast<const QLabel*>(other) || qobject_cast<const QAbstractButton*>(other))
            take(!other->geometry().intersects(widget.geometry()), place,
                 described(widget) + QStringLiteral(" over ") + described(*other));
    }
}

void FitWalk::lookAtTable(const QString& place, const QTableView& table) {
    const QHeaderView& header = *table.horizontalHeader();
    const QString name = table.accessibleName();
    if (!table.model() || header.isHidden())
        return;
    // One that paints its own headings paints its cells too, and is read as a chart is.
    const bool plainHeader = header.metaObject() == &QHeaderView::staticMetaObject;
    if (!plainHeader)
        for (QWidget* painted : {header.viewport(), table.viewport()})
            lookIntoChart(place, *painted);
    for (int column = 0; column < header.count(); ++column) {
        if (header.isSectionHidden(column))
            continue;
        const QString words = table.model()->headerData(column, Qt::Horizontal).toString();
        take(!plainHeader ||
                 header.sectionSize(column) >= header.fontMetrics().size(0, words).width() + 4,
             place,
             QStringLiteral("%1, heading \"%2\" in %3")
                 .arg(name, words)
                 .arg(header.sectionSize(column)));
        for (int row = 0; plainHeader && row < std::min(table.model()->rowCount(), rowsLookedAt);
             ++row)
            lookAtCell(place, table, row, column);
    }
    // What cannot be scrolled to is lost.
    if (table.model()->rowCount() > 0 &&
        table.horizontalScrollBarPolicy() == Qt::ScrollBarAlwaysOff)
        take(header.length() <= table.viewport()->width() + 1, place,
             QStringLiteral("%1: columns of %2 in %3")
                 .arg(name)
                 .arg(header.length())
                 .arg(table.viewport()->width()));
    const bool readAcross = table.objectName() == QLatin1String("matrix") ||
                            table.objectName() == QLatin1String("everything");
    // What goes on the bar, and what a change is read as, is read across in whatever window.
    constexpr std::array always{"loads",     "ladders", "lines",        "overview", "season",
                                "squad",     "sets",    "attemptsDone", "values",   "tests",
                                "leftRight", "missing", "noise"};
    const bool inAny = std::ranges::any_of(
        always, [&](const char* one) { return table.objectName() == QLatin1String(one); });
    if (inAny || (m_columns && readAcross))
        take(header.length() <= table.viewport()->width() + 1, place,
             QStringLiteral("%1: columns of %2 in %3, to be moved sideways")
                 .arg(name)
                 .arg(header.length())
                 .arg(table.viewport()->width()));
    const int rows = std::min(2, table.model()->rowCount());
    take(rows == 0 || table.viewport()->height() >= rows * table.rowHeight(0), place,
         QStringLiteral("%1: rows seen in %2 px").arg(name).arg(table.viewport()->height()));
}

void FitWalk::lookAtCell(const QString& place, const QTableView& table, int row, int column) {
    const QModelIndex index = table.model()->index(row, column);
    const QString words = index.data().toString();
    if (words.isEmpty() || table.isRowHidden(row))
        return;
    QFont font = table.font();
    if (const QVariant own = index.data(Qt::FontRole); own.isValid())
        font = own.value<QFont>().resolve(font);
    const int columns = table.columnSpan(row, column), rows = table.rowSpan(row, column);
    QSize cell;
    for (int i = 0; i < columns; ++i)
        cell.rwidth() += table.columnWidth(column + i);
    for (int i = 0; i < rows; ++i)
        cell.rheight() += table.rowHeight(row + i);
    // With the box and the mark before the words, which a delegate puts there.
    const int whole = table.wordWrap() ? 0 : table.sizeHintForIndex(index).width();
    if (whole > cell.width() + 1) { // a grid's own
        take(false, place,
             QStringLiteral("%1, cell \"%2\" with its marks: %3 px in %4")
                 .arg(table.accessibleName(), words)
                 .arg(whole)
                 .arg(cell.width()));
        return;
    }
    if (QFontMetrics(font).size(0, words).width() <= cell.width() - 4) {
        ++m_seen;
        return;
    }
    const QRect needed = QFontMetrics(font).boundingRect(
        QRect(0, 0, cell.width() - 4, 10000), table.wordWrap() ? Qt::TextWordWrap : 0, words);
    take(needed.width() <= cell.width() && needed.height() <= cell.height() + 2, place,
         QStringLiteral("%1, cell \"%2\" (%3) in %4 x %5")
             .arg(table.accessibleName(), words,
                  table.model()->headerData(column, Qt::Horizontal).toString())
             .arg(cell.width())
             .arg(cell.height()));
}

void FitWalk::lookIntoChart(const QString& place, QWidget& chart) {
    TextRecorder recorder(chart.size());
    paintInto(recorder, chart);
    const QString name = QLatin1String(chart.metaObject()->className());
    const QList<PaintedText>& texts = recorder.texts();
    const QRectF room = QRectF(QPointF(), chart.size()).adjusted(-1, -1, 1, 1);
    for (qsizetype i = 0; i < texts.size(); ++i) {
        const PaintedText& text = texts[i];
        take(room.contains(text.box), place,
             name + QStringLiteral(": beyond the edge ") + quoted(text));
        take(text.pixels > leastLetters - 0.5, place,
             name + QStringLiteral(": %1 px ").arg(text.pixels) + quoted(text));
        take(!text.text.endsWith(QChar(0x2026)), place,
             name + QStringLiteral(": elided ") + quoted(text));
        static const QRegularExpression pointed(QStringLiteral("[0-9][.][0-9]"));
        take(QLocale().decimalPoint() != QLatin1String(",") || !text.text.contains(pointed), place,
             name + QStringLiteral(": a decimal point in ") + quoted(text));
        for (qsizetype j = i + 1; j < texts.size(); ++j)
            take(!overEachOther(text.box, texts[j].box), place,
                 name + QStringLiteral(": ") + quoted(text) + QStringLiteral(" over ") +
                     quoted(texts[j]));
        for (const QPointF& point : recorder.points())
            take(!text.box.contains(point), place,
                 name + QStringLiteral(": %1 over the point at %2, %3")
                            .arg(quoted(text))
                            .arg(point.x(), 0, 'f', 0)
                            .arg(point.y(), 0, 'f', 0));
    }
}

} // namespace slopebook::test
