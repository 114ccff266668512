// SPDX-License-Identifier: GPL-3.0-or-later
// Refusals say where, what was found and what was expected.
#include "core/model/answer.h"
#include "core/model/errors.h"

#include <QTest>

using namespace slopebook;

class TstErrors : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void saysWhereAndWhat() {
        const BadInput error(Where{.file = "a.csv", .line = 7, .column = asIs("velocity")},
                             asIs("\"92\""), asIs("a speed in m/s between 0 and 10"));
        QCOMPARE(
            QString::fromUtf8(error.what()),
            QStringLiteral("a.csv, line 7, column velocity: found \"92\", expected a speed in m/s "
                           "between 0 and 10"));
        QCOMPARE(error.where().line, 7L);
    }
    void saysNothingOfAPlaceThatIsNone() {
        QCOMPARE(QString::fromUtf8(BadInput(filled("nothing"), filled("a name")).what()),
                 QStringLiteral("found nothing, expected a name"));
    }
    void anAnswerIsAValueOrAReason() {
        const Answer<double> yes = 1.5;
        QVERIFY(yes);
        QCOMPARE(*yes, 1.5);
        const Answer<double> no = NoAnswer{NoAnswer::Why::OneLoad, filled("not tested")};
        QVERIFY(!no);
        QCOMPARE(english(no.why().reason), std::string("not tested"));
        QVERIFY(!(yes == no));
    }
};

QTEST_APPLESS_MAIN(TstErrors)
#include "tst_errors.moc"
