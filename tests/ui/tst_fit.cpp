// SPDX-License-Identifier: GPL-3.0-or-later
// The walking test of the looks: every page and dialog at 1280 x 720, at 853 x 480 (the same screen
// at scale 1.5) and with larger letters, in English and German. Nothing is elided, cut off or drawn
// over its neighbour, in charts neither, and a page's picture has a third of the height.
#include "tests/ui/bykeys.h"
#include "tests/ui/everyplace.h"
#include "tests/ui/fitwalk.h"
#include "tests/ui/paintedtexts.h"
#include "ui/charts/labelroom.h"
#include "ui/parts/deskstyle.h"
#include "ui/parts/givesway.h"
#include "ui/parts/rowtable.h"
#include "ui/parts/sentence.h"
#include "ui/parts/shortcombo.h"
#include "ui/parts/striptabs.h"
#include "ui/parts/texttable.h"
#include "ui/parts/wraprow.h"
#include "ui/words/readable.h"

#include <QApplication>
#include <QFontInfo>
#include <QHeaderView>
#include <QLabel>
#include <QMainWindow>
#include <QPainter>
#include <QTabBar>
#include <QTabWidget>
#include <QTest>
#include <QToolTip>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>
#include <memory>

using namespace slopebook;
using namespace slopebook::test;

namespace {

constexpr QSize scaledScreen(853, 480); ///< 1280 x 720 at scale 1.5

void settled() {
    for (int i = 0; i < 3; ++i) // what is fitted once it is laid out
        QCoreApplication::processEvents();
}

QList<PaintedText> textsOf(QWidget& widget) {
    TextRecorder recorder(widget.size());
    QPainter painter(&recorder);
    painter.setFont(widget.font());
    widget.render(&painter, QPoint(), QRegion(), QWidget::RenderFlags());
    painter.end();
    return recorder.texts();
}

void report(const QStringList& wrong) {
    for (const QString& each : wrong)
        qInfo("%s", qPrintable(each));
    QVERIFY2(wrong.isEmpty(), QByteArray(QByteArray::number(wrong.size()) + " are wrong"));
}

/// The columns of each table that has room for them.
QMap<QTableView*, QList<int>> columnsThere(const QWidget& shown) {
    QMap<QTableView*, QList<int>> there;
    for (auto* table : shown.findChildren<QTableView*>())
        for (int column = 0; table->isVisible() && column < table->model()->columnCount(); ++column)
            if (!table->isColumnHidden(column))
                there[table] << column;
    return there;
}

/// What left a table for want of room is told by a key, and to those who hear the table. Returns
/// what is not; tried: how many cells were looked for.
QStringList untold(const QMap<QTableView*, QList<int>>& before, int& tried) {
    QStringList wrong;
    for (auto it = before.begin(); it != before.end(); ++it) {
        QTableView& table = *it.key();
        if (!table.isVisible() || table.model()->rowCount() == 0)
            continue;
        for (const int column : it.value()) {
            const QModelIndex cell = table.model()->index(0, column);
            const QString words = cell.data().toString();
            if (!table.isColumnHidden(column) || words.isEmpty())
                continue;
            ++tried;
            const int shown = table.columnAt(1);
            table.setCurrentIndex(cell.siblingAtColumn(shown < 0 ? 0 : shown));
            QTest::keyClick(&table, Qt::Key_F4);
            if (!QToolTip::isVisible() || !QToolTip::text().contains(words) ||
                !table.accessibleDescription().contains(words))
                wrong << QStringLiteral("%1: \"%2\" (%3) is not told")
                             .arg(table.accessibleName(), words,
                                  table.model()->headerData(column, Qt::Horizontal).toString());
        }
    }
    return wrong;
}

} // namespace

class TestFit : public QObject {
    Q_OBJECT
private Q_SLOTS:
    // The reader of charts finds what it is there to find.
    void aTextIsReadWhereItStands() {
        TextRecorder recorder({200, 100});
        {
            QPainter painter(&recorder);
            painter.drawText(QPointF(20, 40), QStringLiteral("below"));
            painter.translate(100, 50);
            painter.rotate(-90);
            painter.drawText(QPointF(0, 0), QStringLiteral("upright"));
            painter.resetTransform();
            painter.setBrush(Qt::black);
            painter.drawEllipse(QPointF(60, 70), 4, 4);
            painter.setBrush(Qt::NoBrush);
            painter.drawEllipse(QPointF(10, 10), 4, 4);
        }
        QCOMPARE(recorder.texts().size(), 2);
        QCOMPARE(recorder.texts()[0].text, QStringLiteral("below"));
        QVERIFY(recorder.texts()[0].box.contains(QPointF(25, 38)));
        QVERIFY(recorder.texts()[0].box.bottom() < 50);
        const QRectF upright = recorder.texts()[1].box;
        QVERIFY(upright.height() > upright.width());
        QVERIFY(upright.contains(QPointF(97, 40)));
        const double usual = QFontInfo(QApplication::font()).pixelSize();
        for (const PaintedText& text : recorder.texts()) // turned, not scaled
            QVERIFY(std::abs(text.pixels - usual) < 1.5);
        QCOMPARE(recorder.points(), QList<QPointF>{QPointF(60, 70)});
    }

    // As large as two lines of it allow, never smaller than its least, and never cut.
    void aSentenceTakesTheRoomOfTwoLines() {
        QWidget page;
        page.resize(600, 700);
        ui::Sentence sentence(&page);
        page.show();
        const auto sizeOf = [&](const QString& words) {
            sentence.setText(words);
            sentence.resize(600, sentence.heightForWidth(600));
            const QRect needed =
                QFontMetrics(sentence.font())
                    .boundingRect(QRect(0, 0, 600, 10000), Qt::TextWordWrap, words);
            return needed.height() <= sentence.height() ? sentence.font().pointSizeF() : 0;
        };
        const double words = QApplication::font().pointSizeF();
        const double large = sizeOf(QStringLiteral("Faster."));
        QVERIFY(large > 1.7 * words);
        double last = large;
        QString text;
        for (int i = 0; i < 30; ++i) {
            text += QStringLiteral("Faster from 30 to 50 kg; ");
            const double size = sizeOf(text);
            QVERIFY(size <= last);
            last = size;
        }
        QVERIFY(last > 1.3 * words);
        QVERIFY(last < large);
        QCOMPARE(sizeOf(QStringLiteral("Faster.")), large);
        page.resize(600, 400); // a low window keeps its largest for the picture
        sentence.resize(599, 40);
        QVERIFY(sizeOf(QStringLiteral("Faster.")) < large);
    }

    // A figure at the right of its column and the words beside it are two things.
    void columnsStandApart() {
        ui::wearDeskStyle();
        ui::TextTable rows;
        rows.setTable({QStringLiteral("Load"), QStringLiteral("Put on")},
                      {{.cells = {QStringLiteral("40 kg"), QStringLiteral("10 kg")}}},
                      QList<int>{0});
        const std::unique_ptr<QTableView> table(ui::rowTable(&rows, QStringLiteral("loads")));
        table->resizeColumnsToContents();
        const auto air = [&](int column, const QString& words) {
            return table->columnWidth(column) - table->fontMetrics().horizontalAdvance(words);
        };
        QVERIFY(air(0, QStringLiteral("40 kg")) >= 12);
        QVERIFY(air(0, QStringLiteral("40 kg")) <= 16 + 1);
        QVERIFY(table->horizontalHeader()->sectionSizeHint(1) -
                    table->fontMetrics().horizontalAdvance(QStringLiteral("Put on")) >=
                12);
    }

    // However high a table is, the last row that is seen is seen whole.
    void noRowIsCutThrough() {
        ui::TextTable rows;
        std::vector<ui::TextTable::Row> lines;
        for (int i = 0; i < 30; ++i)
            lines.push_back({.cells = {QStringLiteral("row %1").arg(i)}});
        rows.setTable({QStringLiteral("Row")}, std::move(lines), 1, 1);
        const std::unique_ptr<QTableView> table(
            ui::rowTable(&rows, QStringLiteral("rows"), {.compact = true}));
        table->show();
        const int row = table->rowHeight(0);
        for (int height = 4 * row; height < 6 * row; height += 5) {
            table->resize(200, height);
            settled();
            QWidget& seen = *table->viewport();
            const QList<PaintedText> texts = textsOf(seen);
            QVERIFY(!texts.isEmpty());
            for (const PaintedText& text : texts)
                QVERIFY2(text.box.bottom() <= seen.height() + 1,
                         qPrintable(QStringLiteral("%1 at %2").arg(text.text).arg(height)));
            QCOMPARE(texts.size(), seen.height() / row);
        }
    }

    // What wrapped in a narrow window is as wide as its words again in a wide one; what left comes
    // back, but not what the page says is not there.
    void columnsComeBackWithTheRoom() {
        ui::TextTable rows;
        const QString said = QStringLiteral("unclear, leaning to better; clear from 0.086 m/s up");
        rows.setTable({QStringLiteral("Day"), QStringLiteral("RPE"), QStringLiteral("Measured"),
                       QStringLiteral("Reading")},
                      {{.cells = {QStringLiteral("4 May 2026"), QStringLiteral("4"), {}, said}}},
                      QList<int>{});
        const std::unique_ptr<QTableView> table(
            ui::rowTable(&rows, QStringLiteral("rows"),
                         {.lastTakesRest = true, .giving = {3}, .leaving = {1, 2}}));
        table->show();
        const auto columns = [&](int width) {
            table->resize(width, 300);
            settled();
            QList<int> there;
            for (int column = 0; column < 4; ++column)
                if (!table->isColumnHidden(column))
                    there << column;
            return there;
        };
        const auto readWhole = [&] {
            return table->columnWidth(3) >= table->fontMetrics().horizontalAdvance(said);
        };
        QCOMPARE(columns(1000), (QList<int>{0, 1, 2, 3}));
        QVERIFY(readWhole());
        QCOMPARE(columns(240), (QList<int>{0, 3}));
        QVERIFY(!readWhole());
        QVERIFY(table->horizontalHeader()->length() <= table->viewport()->width());
        QVERIFY(table->rowHeight(0) >= 2 * table->fontMetrics().height());
        ui::haveColumn(*table, 2, false);
        QCOMPARE(columns(1000), (QList<int>{0, 1, 3}));
        QVERIFY(readWhole());
    }

    // What left is told by a key and to those who hear the table, of whichever row the keys go to.
    void aKeyTellsTheRestOfARow() {
        ui::TextTable rows;
        rows.setTable({QStringLiteral("Day"), QStringLiteral("Felt\neffort"),
                       QStringLiteral("Surface, footwear and all else")},
                      {{.cells = {QStringLiteral("4 May 2026"), QStringLiteral("4 of 10"),
                                  QStringLiteral("rubber floor, court shoes, hands on hips")}},
                       {.cells = {QStringLiteral("9 May 2026"), QStringLiteral("7 of 10"), {}}}},
                      QList<int>{});
        const std::unique_ptr<QTableView> table(
            ui::rowTable(&rows, QStringLiteral("rows"), {.leaving = {1, 2}, .told = {}}));
        table->resize(900, 300);
        table->show();
        settled();
        QVERIFY(table->accessibleDescription().isEmpty()); // all has its column
        table->resize(100, 300);
        settled();
        QVERIFY(table->isColumnHidden(1) && table->isColumnHidden(2));
        QVERIFY(table->accessibleDescription().contains(QStringLiteral("Felt effort")));
        QVERIFY(table->accessibleDescription().contains(QStringLiteral("F4")));
        table->selectRow(0);
        QVERIFY(table->accessibleDescription().contains(QStringLiteral("Felt effort: 4 of 10")));
        QVERIFY(!QToolTip::isVisible());
        QTest::keyClick(table.get(), Qt::Key_F4);
        QVERIFY(QToolTip::isVisible());
        QVERIFY(QToolTip::text().contains(QStringLiteral("hands on hips")));
        QTest::keyClick(table.get(), Qt::Key_Down);
        QCOMPARE(QToolTip::text(), QStringLiteral("Felt effort: 7 of 10"));
        QTest::keyClick(table.get(), Qt::Key_Escape);
        QTRY_VERIFY(!QToolTip::isVisible());
        QTest::keyClick(table.get(), Qt::Key_Up);
        QVERIFY(!QToolTip::isVisible());
    }

    // Of tabs in a control line the one that is shown asks for its height, and no other.
    void aTabAsksForItsOwnHeight() {
        QWidget page;
        auto* tabs = new ui::StripTabs;
        for (const int high : {120, 900, 300}) {
            auto* inside = new QWidget;
            inside->setMinimumHeight(high);
            auto* tab = new QWidget;
            auto* column = new QVBoxLayout(tab);
            column->addWidget(inside);
            tabs->addTab(tab, QString::number(high));
        }
        auto* layout = new QVBoxLayout(&page);
        layout->addWidget(ui::barInStrip(*tabs, QStringLiteral("Heights")));
        layout->addWidget(tabs);
        page.show();
        QList<int> least;
        for (const int tab : {0, 1, 2, 0}) {
            tabs->setCurrentIndex(tab);
            settled();
            least << page.minimumSizeHint().height();
        }
        QCOMPARE(least[1] - least[0], 900 - 120);
        QCOMPARE(least[2] - least[0], 300 - 120);
        QCOMPARE(least[3], least[0]);
    }

    // Words that give way end with a whole line, whatever room they have.
    void noLineIsCutThrough() {
        auto* words = new QWidget;
        auto* column = new QVBoxLayout(words);
        column->setContentsMargins(0, 0, 0, 0);
        for (const int times : {9, 14}) {
            auto* label = new QLabel(QStringLiteral("Loads are estimates. ").repeated(times));
            label->setWordWrap(true);
            column->addWidget(label);
        }
        ui::GivesWay area(words, 1);
        area.show();
        const int line = area.fontMetrics().lineSpacing();
        for (int height = 2 * line; height < 6 * line; height += 5) {
            area.resize(300, height);
            settled();
            const int seen = area.viewport()->height();
            QVERIFY(seen <= height && height - seen < line + column->spacing() + 1);
            const auto ends = [&](const QLabel& label) { // of a line of it, in what is seen
                const int in = seen - label.y();
                return in > 0 && in % line == 0 && in <= label.height();
            };
            const auto labels = words->findChildren<QLabel*>();
            QVERIFY2(std::ranges::any_of(labels, [&](auto* label) { return ends(*label); }),
                     qPrintable(QString::number(seen)));
        }
    }

    // Headings give way before figures do.
    void headingsStandOnTwoLines() {
        QCOMPARE(ui::inTwoLines({QStringLiteral("Day"), QStringLiteral("From the line (m/s)"),
                                 QStringLiteral("Interval, with noise and bend")}),
                 (QStringList{QStringLiteral("Day"), QStringLiteral("From the\nline (m/s)"),
                              QStringLiteral("Interval, with\nnoise and bend")}));
    }

    void aBoxSaysWholeParts() {
        const QFontMetricsF metrics(QApplication::font());
        const QString whole = QStringLiteral("Hop lane: Single hop, Triple hop \u00b7 5 points");
        const auto shown = [&](const QString& room) {
            return ui::firstPartsOf(whole, metrics, metrics.horizontalAdvance(room) + 1);
        };
        QCOMPARE(shown(whole), whole);
        const QString more = QStringLiteral(" \u2026"); // that there is more is seen
        QCOMPARE(shown(QStringLiteral("Hop lane: Single hop, Triple hop \u00b7 5 poi")),
                 QStringLiteral("Hop lane: Single hop, Triple hop") + more);
        QCOMPARE(shown(QStringLiteral("Hop lane: Single hop, Tr")),
                 QStringLiteral("Hop lane: Single hop") + more);
        QCOMPARE(shown(QStringLiteral("Hop lane") + more), QStringLiteral("Hop lane") + more);
        for (int letters = 8; letters < whole.size(); ++letters)
            QVERIFY(shown(whole.left(letters)).endsWith(more));
    }

    // In a line that tells what may be typed no sign ends a line before what it stands for.
    void aCodeStaysBesideItsWord() {
        const auto breaks = [](const QString& words) {
            return ui::withWholeCodes(words).split(u' ', Qt::SkipEmptyParts);
        };
        const QString help =
            QStringLiteral("Load in kg, speed in m/s, Enter.  -: not lifted.  @8: effort.  x: left "
                           "out.  # note.");
        QStringList last = breaks(help).mid(7);
        QCOMPARE(last.size(), 4);
        QCOMPARE(last.takeLast(), QStringLiteral("#\u00a0note."));
        for (const QString& piece : last)
            QVERIFY2(piece.endsWith(u'.'), qPrintable(piece));
        QCOMPARE(breaks(help).first(), QStringLiteral("Load"));
        QCOMPARE(breaks(QStringLiteral("Load, @ effort; or - not lifted.")),
                 (QStringList{QStringLiteral("Load,"), QStringLiteral("@\u00a0effort;"),
                              QStringLiteral("or"), QStringLiteral("-\u00a0not"),
                              QStringLiteral("lifted.")}));
    }

    // Names have room where no point and no other name is, in the order they are given in.
    void labelsKeepClear() {
        ui::charts::LabelRoom room(QRectF(0, 0, 100, 50), 4);
        room.takePoint({50, 25});
        const QRectF over(40, 20, 20, 10), beside(60, 20, 20, 10), outside(90, 20, 20, 10);
        QVERIFY(!room.isFree(over));
        QVERIFY(!room.isFree(outside));
        QCOMPARE(room.place({over, outside, beside}).value_or(9), std::size_t(2));
        QVERIFY(!room.isFree(beside));
        QVERIFY(!room.place({over, outside, beside}));
    }

    void controlsGoOnInTheNextLine() {
        QWidget row;
        auto* wrap = new ui::WrapRow(&row);
        for (int i = 0; i < 3; ++i) {
            auto* box = new QWidget;
            box->setFixedSize(100, 20);
            wrap->addWidget(box);
        }
        QCOMPARE(wrap->heightForWidth(400), 20);
        QCOMPARE(wrap->heightForWidth(220), 20 + wrap->spacing() + 20);
        QCOMPARE(wrap->minimumSize(), QSize(100, 20));
    }

    void nothingIsCutOff_data() {
        QTest::addColumn<QString>("language");
        QTest::addColumn<double>("letters");
        const QString only = qEnvironmentVariable("SLOPEBOOK_FIT_ONLY");
        const auto row = [&only](const char* name, const char* language, double letters) {
            if (only.isEmpty() || only == QLatin1String(name))
                QTest::newRow(name) << QString::fromLatin1(language) << letters;
        };
        row("English", "en", 1.0);
        row("German", "de", 1.0);
        row("larger", "de", 1.2);
    }
    void nothingIsCutOff() {
        QFETCH(QString, language);
        QFETCH(double, letters);
        const QFont usual = QApplication::font();
        QFont large = usual;
        large.setPointSizeF(letters * usual.pointSizeF());
        QApplication::setFont(large);
        FitWalk wide(QStringLiteral("1280 x 720")), small(QStringLiteral("853 x 480"));
        wide.countStrips(letters <= 1); // larger letters may take a second line
        wide.countColumns(letters <= 1);
        QStringList others;
        int told = 0;
        inEveryPlace(language, false, [&](const QString& place, QWidget& shown) {
            const bool page = qobject_cast<QMainWindow*>(&shown);
            settled();
            const auto keep = [&](const QString& size) {
                QString name = QStringLiteral("%1 %2 %3").arg(language, place, size);
                keepPicture(shown, name.replace(u'/', u'-'));
            };
            wide.look(place, shown, page);
            keep(QStringLiteral("wide"));
            if (letters > 1)
                return; // larger letters on the small screen as well are no promise
            const QSize before = shown.size();
            const auto columns = columnsThere(shown);
            shown.resize(before.boundedTo(scaledScreen));
            settled();
            small.look(place, shown, page);
            keep(QStringLiteral("small"));
            for (const QString& one : untold(columns, told))
                others << QStringLiteral("%1: %2").arg(place, one);
            if (shown.width() > scaledScreen.width() || shown.height() > scaledScreen.height())
                others << QStringLiteral("%1: is %2 x %3")
                              .arg(place)
                              .arg(shown.width())
                              .arg(shown.height());
            shown.resize(before);
            settled();
        });
        QApplication::setFont(usual);
        QVERIFY2(wide.seen() > 1000, "too little was looked at");
        QVERIFY(letters > 1 || told > 4);
        report(wide.wrong() + small.wrong() + others);
    }
};

QTEST_MAIN(TestFit)
#include "tst_fit.moc"
