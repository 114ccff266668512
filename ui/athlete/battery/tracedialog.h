// SPDX-License-Identifier: GPL-3.0-or-later
// A force or displacement trace from a CSV file: the curve with what was found on it, marks that
// can be moved, the figures, and the way into the session.
#pragma once

#include "core/exchange/tracecsv.h"
#include "core/model/battery.h"
#include "core/model/lift.h"
#include "core/traces/analysis.h"
#include "ui/athlete/battery/traceview.h"
#include "ui/parts/texttable.h"

#include <QDialog>

#include <functional>
#include <optional>
#include <set>

class QComboBox;
class QLabel;
class QPushButton;
class QTableView;

namespace slopebook::ui {

/// For whom a trace was opened: they and their session stay, whatever the window shows meanwhile.
struct TraceTarget {
    QString whose;                ///< the athlete's name
    std::optional<Date> day;      ///< of the session; nothing: one of today is made
    std::optional<TestKind> test; ///< that was chosen when the dialog was opened
    std::function<Date()> today;
    /// Puts the attempt on disk, into the session or, where that is asked for, into one of today;
    /// the day of the session that it went into. Throws LogError or BadInput.
    std::function<Date(const TestKind&, const Attempt&, bool intoToday)> add;
    /// Whether that very attempt stands there already. Throws LogError.
    std::function<bool(const TestKind&, const Attempt&)> stands;
};

class TraceDialog final : public QDialog {
    Q_OBJECT
public:
    explicit TraceDialog(QWidget* parent = nullptr);

    /// Reads the file with its likely columns and shows it; what goes wrong is said in the dialog.
    void openFile(const QString& file);
    void setKind(traces::TraceKind kind);
    TraceView& view() { return *m_view; }
    const TextTable& figures() const { return *m_figures; }
    QString said() const;
    /// The tests that an attempt can be for: the log's and the built-in ones.
    void setTests(std::vector<TestKind> tests);
    /// For whom it is; without, nothing is accepted but speeds.
    void setTarget(TraceTarget target);
    /// The figure of the table that a test of the coach's own takes.
    void selectFigure(int row);
    std::size_t events() const { return m_analysis ? m_analysis->events() : 0; }

Q_SIGNALS:
    /// Speeds of all reps (m/s) of that velocity kind, as text for the session form.
    void speedsAccepted(const QString& speeds, slopebook::VelocityKind kind);

private:
    void showTraceEvent(std::size_t event);
    QWidget* buildChoices();
    QWidget* buildBelow();
    void connectParts();
    void chooseFile();
    void readFile();
    void analyse();
    void showFigures();
    void fillAccept();
    void fitAccept();
    void accepted();
    void acceptSpeeds();
    void acceptAttempt(const TestKind& kind);
    void add(const TestKind& kind, const Attempt& attempt);
    void showWhose();
    void fitTake();
    std::optional<double> selectedFigure(const std::string& unit) const;
    void say(const QString& words, bool problem);

    QString m_file;
    exchange::TraceFile m_layout;
    std::optional<traces::Trace> m_trace;
    std::optional<traces::Analysis> m_analysis;
    std::size_t m_event = 0;
    std::vector<TestKind> m_tests;
    QLabel* m_fileName;
    QPushButton* m_choose;
    QComboBox* m_kind;
    QComboBox* m_time;
    QComboBox* m_value;
    QComboBox* m_events;
    TraceView* m_view;
    QLabel* m_said;
    TextTable* m_figures;
    QTableView* m_table;
    QComboBox* m_accept;
    QComboBox* m_side;
    QPushButton* m_take;
    QLabel* m_whose;
    TraceTarget m_target;
    bool m_good = false;       ///< what is shown has figures
    bool m_dayAgreed = false;  ///< the coach wants that day, which is not today
    std::set<QString> m_taken; ///< what of which file became an attempt of which test
};

} // namespace slopebook::ui
