// SPDX-License-Identifier: GPL-3.0-or-later
// A CSV that nobody here has seen: columns and rows in any order, columns that we do not know,
// reps and sets that do not count. The program takes it in; its profile and its comparison agree
// with R, which reads the same file itself, to 1e-8 relative.
#include "tests/support/rscript.h"
#include "tests/system/program.h"

#include <QFile>
#include <QJsonArray>
#include <QJsonObject>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>
#include <cmath>
#include <random>

using namespace slopebook::tests;

namespace {

constexpr double tolerance = 1e-8;

// One file from its seed.
class Unseen {
public:
    explicit Unseen(unsigned seed) : m_engine(seed) {}

    QByteArray text() {
        m_columns = {"date",     "athlete",  "lift",         "set",     "load_kg", "rep",
                     "velocity", "excluded", "set_excluded", "weather", "mood",    "note"};
        std::shuffle(m_columns.begin(), m_columns.end(), m_engine);
        session("2025-11-03", real(1.3, 1.8), -real(0.007, 0.014));
        session("2026-02-17", real(1.3, 1.8), -real(0.007, 0.014));
        session("2026-03-03", real(1.3, 1.8), -real(0.007, 0.014)); // in the file, not asked about
        std::shuffle(m_rows.begin(), m_rows.end(), m_engine);
        QByteArray all = m_columns.join(',') + (below(2) ? "\r\n" : "\n");
        for (const QByteArray& row : m_rows)
            all += row + "\n";
        return (below(2) ? QByteArray("\xEF\xBB\xBF") : QByteArray()) + all;
    }

private:
    int below(int n) { return std::uniform_int_distribution<int>(0, n - 1)(m_engine); }
    double real(double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(m_engine);
    }

    void session(const QByteArray& date, double v0, double slope) {
        const int sets = 4 + below(5);
        std::normal_distribution<double> scatter(0, 0.02);
        for (int s = 1; s <= sets; ++s) {
            const double load = 20 + 7.5 * s + 2.5 * below(2);
            const bool setOut = s == 2 && below(3) == 0;
            const int reps = 1 + below(4);
            for (int r = 1; r <= reps; ++r) {
                const double v = std::max(0.05, v0 + slope * load + scatter(m_engine));
                const bool repOut = r == 2 && below(2) == 0;
                row({{"date", date},
                     {"athlete", "\"Roe, Kim \"\"K\"\"\""},
                     {"lift", "Landmine press"},
                     {"set", QByteArray::number(s)},
                     {"load_kg", QByteArray::number(load)},
                     {"rep", QByteArray::number(r)},
                     {"velocity", QByteArray::number(v, 'f', 2 + below(4))},
                     {"excluded", repOut ? "\"slipped, stopped\"" : ""},
                     {"set_excluded", setOut ? "wrong plates" : ""},
                     {"weather", below(2) ? "rain" : "\"sun, wind\""},
                     {"mood", QByteArray::number(5 + below(5))},
                     {"note", below(4) == 0 ? "felt \xC3\xA4hnlich" : ""}});
            }
        }
    }

    void row(const QMap<QByteArray, QByteArray>& cells) {
        QByteArray line;
        for (qsizetype i = 0; i < m_columns.size(); ++i)
            line += (i ? "," : "") + cells[m_columns[i]];
        m_rows.push_back(line);
    }

    std::mt19937 m_engine;
    QByteArrayList m_columns;
    std::vector<QByteArray> m_rows;
};

// The program's figures by R's names: a missing one is NaN, as R's NA reads.
class Figures {
public:
    Figures(const QMap<QString, double>& r, const QString& id) : m_r(r), m_id(id) {}

    void same(const QString& name, const QJsonValue& ours) {
        const QString key = m_id + name;
        QVERIFY2(m_r.contains(key), qPrintable(key));
        const double expected = m_r[key];
        ++m_compared;
        if (std::isnan(expected)) {
            QVERIFY2(ours.isNull(), qPrintable(key));
            return;
        }
        QVERIFY2(ours.isDouble() || ours.isBool(), qPrintable(key));
        const double found = ours.isBool() ? double(ours.toBool()) : ours.toDouble();
        // Residuals and changes near zero are compared on the scale of a speed.
        const double scale = std::max(std::abs(expected), 1e-4);
        QVERIFY2(std::abs(found - expected) <= tolerance * scale,
                 qPrintable(QStringLiteral("%1: %2, R %3")
                                .arg(key)
                                .arg(found, 0, 'g', 17)
                                .arg(expected, 0, 'g', 17)));
    }
    void each(const QString& prefix, const QJsonObject& object,
              std::initializer_list<std::pair<const char*, const char*>> names) {
        for (const auto& [theirs, ours] : names)
            same(prefix + QString::fromUtf8(theirs), object[QLatin1String(ours)]);
    }
    int compared() const { return m_compared; }

private:
    QMap<QString, double> m_r;
    QString m_id;
    int m_compared = 0;
};

void sameProfile(Figures& figures, const QString& side, const QJsonObject& profile) {
    figures.each(side, profile,
                 {{"n", "n"},
                  {"distinct", "distinct_loads"},
                  {"v0", "v0"},
                  {"slope", "slope"},
                  {"v0_se", "v0_se"},
                  {"slope_se", "slope_se"},
                  {"residual_sd", "residual_sd"},
                  {"df", "df"},
                  {"r2", "r2"},
                  {"l0", "l0"},
                  {"area", "area"}});
    figures.each(side, profile[QLatin1String("one_rm")].toObject(),
                 {{"one_rm", "estimate"}, {"reach", "reach"}, {"low", "low"}, {"high", "high"}});
    int i = 0;
    for (const QJsonValue& point : profile[QLatin1String("points")].toArray())
        figures.each(side + QStringLiteral("point%1.").arg(++i), point.toObject(),
                     {{"residual", "residual"},
                      {"leverage", "leverage"},
                      {"studentised", "studentised"},
                      {"cook", "cook"}});
}

void sameComparison(Figures& figures, const QJsonObject& json) {
    figures.each({}, json, {{"residual_sd", "residual_sd"}, {"df", "df"}});
    for (const char* test : {"parallel", "coincident"})
        figures.each(QString::fromUtf8(test) + QLatin1Char('.'),
                     json[QLatin1String(test)].toObject(),
                     {{"f", "f"}, {"df1", "df1"}, {"df2", "df2"}, {"p", "p"}});
    const QJsonArray at = json[QLatin1String("at")].toArray();
    figures.same(QStringLiteral("at"), double(at.size()));
    for (qsizetype i = 0; i < at.size(); ++i)
        figures.each(QStringLiteral("at%1.").arg(i + 1), at[i].toObject(),
                     {{"load", "load"},
                      {"change", "change"},
                      {"se", "se"},
                      {"low", "low"},
                      {"high", "high"},
                      {"band_low", "band_low"},
                      {"band_high", "band_high"},
                      {"reading_low", "straight_low"}, // of lines as straight as they are drawn
                      {"reading_high", "straight_high"},
                      {"extrapolated", "extrapolated"}});
    const QJsonArray differs = json[QLatin1String("differs")].toArray();
    figures.same(QStringLiteral("differs"), double(differs.size()));
    for (qsizetype i = 0; i < differs.size(); ++i)
        figures.each(QStringLiteral("differs%1.").arg(i + 1), differs[i].toObject(),
                     {{"from", "from_load"}, {"to", "to_load"}, {"extrapolated", "extrapolated"}});
    figures.each(QStringLiteral("crossing"), json[QLatin1String("crossing")].toObject(),
                 {{"", "load"}, {".low", "low"}, {".high", "high"}});
    figures.each(QStringLiteral("one_rm_change"), json[QLatin1String("one_rm_change")].toObject(),
                 {{"", "estimate"},
                  {".low", "low"},
                  {".high", "high"},
                  {".reading_low", "straight_low"},
                  {".reading_high", "straight_high"}});
}

} // namespace

class TestUnseen : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void agreesWithR_data() {
        QTest::addColumn<unsigned>("seed");
        for (unsigned seed = 1; seed <= 8; ++seed)
            QTest::addRow("file %u", seed) << seed;
    }
    void agreesWithR() {
        if (!haveR())
            QSKIP("R IS NOT INSTALLED: a file of one's own is not checked against R");
        QFETCH(unsigned, seed);
        const QTemporaryDir folder;
        const QString csv = folder.filePath(QStringLiteral("unseen.csv"));
        QFile file(csv);
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write(Unseen(seed).text());
        file.close();
        const QString log = folder.filePath(QStringLiteral("unseen.slopebook"));
        const QString athlete = QStringLiteral("Roe, Kim \"K\"");
        const QString lift = QStringLiteral("Landmine press");
        const QString loads = folder.filePath(QStringLiteral("loads.csv"));
        QFile loadsFile(loads);
        QVERIFY(loadsFile.open(QIODevice::WriteOnly));
        loadsFile.write("athlete,lift,check_load_kg\n"
                        "\"Roe, Kim \"\"K\"\"\",Landmine press,47.5\n"
                        "\"Roe, Kim \"\"K\"\"\",Landmine press,90\n");
        loadsFile.close();
        const Ran imported = runProgram({QStringLiteral("import"), log, csv, loads,
                                         QStringLiteral("--mvt"), lift + QStringLiteral("=0.3")});
        QVERIFY2(imported.exit == 0, imported.err);
        QVERIFY2(imported.out.contains("not used"), imported.out);

        const QStringList about{log,     QStringLiteral("--athlete"),
                                athlete, QStringLiteral("--lift"),
                                lift,    QStringLiteral("--json")};
        const QString from = QStringLiteral("2025-11-03");
        const QString to = QStringLiteral("2026-02-17");
        const Ran compared =
            runProgram(QStringList{QStringLiteral("compare")} + about +
                       QStringList{QStringLiteral("--from"), from, QStringLiteral("--to"), to});
        QVERIFY2(compared.exit == 0, compared.err + compared.out);
        const Ran profiled = runProgram(QStringList{QStringLiteral("profile")} + about +
                                        QStringList{QStringLiteral("--session"), from});
        QVERIFY2(profiled.exit == 0, profiled.err);

        const auto r = runR(QStringLiteral("unseen.R"),
                            {csv, QStringLiteral(SLOPEBOOK_SOURCE_DIR), athlete, lift, from, to,
                             QStringLiteral("0.3"), QStringLiteral("47.5,90")});
        // A profile takes all reps of a set, a comparison as many as the other day has.
        Figures alone(r, QStringLiteral("all.")), figures(r, QStringLiteral("x."));
        sameProfile(alone, QStringLiteral("from."), profiled.json());
        sameProfile(figures, QStringLiteral("from."),
                    compared.json()[QLatin1String("from")].toObject());
        sameProfile(figures, QStringLiteral("to."),
                    compared.json()[QLatin1String("to")].toObject());
        sameComparison(figures, compared.json());
        QVERIFY(figures.compared() > 80);
    }
};

QTEST_APPLESS_MAIN(TestUnseen)
#include "tst_unseen.moc"
