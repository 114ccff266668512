// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/battery/tracedialog.h"

#include "core/answers/testkinds.h"
#include "core/model/errors.h"
#include "ui/shell/format.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

namespace slopebook::ui {

namespace {

using traces::TraceKind;

/// What a figure of a trace may become: a built-in test, made from these figures.
struct Becomes {
    TraceKind kind;
    const char* test;
    const char* value;
    const char* contact; ///< or nothing
};
constexpr Becomes becomes[] = {
    {TraceKind::Isometric, "Isometric pull, peak force", "peak_force_n", nullptr},
    {TraceKind::Isometric, "Isometric pull, peak force per body mass", "peak_force_n", nullptr},
    {TraceKind::Isometric, "Isometric pull, force at 100 ms", "force_100ms_n", nullptr},
    {TraceKind::Isometric, "Isometric pull, rate 0 to 100 ms", "rfd_0_100ms_n_per_s", nullptr},
    {TraceKind::Jump, "Countermovement jump", "flight_time_s", nullptr},
    {TraceKind::Jump, "Drop jump, reactive strength", "flight_time_s", "contact_time_s"}};

struct Speeds {
    const char* label;
    const char* key;
};
constexpr Speeds speeds[] = {
    {QT_TRANSLATE_NOOP("slopebook::ui::TraceDialog", "mean velocities to the session"),
     "mean_m_per_s"},
    {QT_TRANSLATE_NOOP("slopebook::ui::TraceDialog", "mean propulsive velocities to the session"),
     "propulsive_m_per_s"},
    {QT_TRANSLATE_NOOP("slopebook::ui::TraceDialog", "peak velocities to the session"),
     "peak_m_per_s"}};

std::optional<double> figureOf(const traces::Analysis& analysis, std::size_t event,
                               const char* key) {
    const auto found = analysis.figures(event);
    if (const auto* list = std::get_if<std::vector<traces::Figure>>(&found))
        for (const traces::Figure& figure : *list)
            if (figure.key == key)
                return figure.value;
    return std::nullopt;
}

} // namespace

TraceDialog::TraceDialog(QWidget* parent) : QDialog(parent) {
    setWindowTitle(tr("From a trace"));
    m_view = new TraceView;
    m_said = new QLabel(tr("A CSV file with one row a sample: time in s, and force in N or "
                           "displacement in m; 100 Hz to 10 kHz."));
    m_said->setWordWrap(true);
    m_said->setAccessibleName(tr("What was found"));
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(buildChoices());
    layout->addWidget(m_view, 3);
    layout->addWidget(m_said);
    layout->addWidget(buildBelow(), 2);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    layout->addWidget(buttons);
    connectParts();
    fillAccept();
    resize(980, 720);
}

QWidget* TraceDialog::buildChoices() {
    auto* row = new QWidget;
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    m_choose = new QPushButton(tr("&File..."));
    m_fileName = new QLabel;
    m_kind = new QComboBox;
    m_kind->addItems({tr("isometric push or pull"), tr("jumps"), tr("reps of a lift")});
    m_time = new QComboBox;
    m_value = new QComboBox;
    m_events = new QComboBox;
    layout->addWidget(m_choose);
    layout->addWidget(m_fileName, 1);
    const auto add = [&](const QString& label, QComboBox* box) {
        auto* caption = new QLabel(label);
        caption->setBuddy(box);
        QString name = label;
        box->setAccessibleName(name.remove(QLatin1Char('&')));
        box->setSizeAdjustPolicy(QComboBox::AdjustToContents);
        layout->addWidget(caption);
        layout->addWidget(box);
    };
    add(tr("&Kind"), m_kind);
    add(tr("&Time"), m_time);
    add(tr("&Value"), m_value);
    add(tr("&Shown"), m_events);
    return row;
}

QWidget* TraceDialog::buildBelow() {
    auto* box = new QWidget;
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    m_figures = new TextTable(this);
    m_table = new QTableView;
    m_table->setModel(m_figures);
    m_table->setAccessibleName(tr("Figures of the trace"));
    m_table->setTabKeyNavigation(false);
    m_table->verticalHeader()->hide();
    m_table->horizontalHeader()->setStretchLastSection(true);
    column->addWidget(m_table, 1);
    auto* row = new QHBoxLayout;
    m_accept = new QComboBox;
    m_accept->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    auto* caption = new QLabel(tr("&Becomes"));
    caption->setBuddy(m_accept);
    m_accept->setAccessibleName(tr("Becomes"));
    m_take = new QPushButton(tr("&Accept"));
    m_take->setObjectName(QStringLiteral("accept"));
    row->addWidget(caption);
    row->addWidget(m_accept);
    row->addWidget(m_take);
    row->addStretch(1);
    column->addLayout(row);
    return box;
}

void TraceDialog::connectParts() {
    connect(m_choose, &QPushButton::clicked, this, &TraceDialog::chooseFile);
    connect(m_kind, &QComboBox::currentIndexChanged, this, [this] {
        fillAccept();
        analyse();
    });
    connect(m_time, &QComboBox::currentIndexChanged, this, &TraceDialog::readFile);
    connect(m_value, &QComboBox::currentIndexChanged, this, &TraceDialog::readFile);
    connect(m_events, &QComboBox::currentIndexChanged, this, [this](int event) {
        if (event >= 0)
            showTraceEvent(static_cast<std::size_t>(event));
    });
    connect(m_view, &TraceView::markMoved, this, [this](int mark, double time) {
        if (!m_analysis)
            return;
        m_analysis->moveMark(m_event, static_cast<std::size_t>(mark), time);
        m_view->marksChanged();
        showFigures();
    });
    connect(m_take, &QPushButton::clicked, this, &TraceDialog::accepted);
}

void TraceDialog::chooseFile() {
    const QString file = QFileDialog::getOpenFileName(this, tr("Trace"), {},
                                                      tr("CSV (*.csv *.txt *.tsv);;All files (*)"));
    if (!file.isEmpty())
        openFile(file);
}

void TraceDialog::openFile(const QString& file) {
    try {
        m_file = file;
        m_fileName->setText(QFileInfo(file).fileName());
        m_layout = exchange::traceFile(utf8(file));
        const auto [time, value] = exchange::likelyColumns(m_layout);
        const QSignalBlocker quietTime(m_time), quietValue(m_value);
        m_time->clear();
        m_value->clear();
        for (const std::string& column : m_layout.columns) {
            m_time->addItem(text(column));
            m_value->addItem(text(column));
        }
        m_time->setCurrentText(text(time));
        m_value->setCurrentText(text(value));
    } catch (const std::exception& error) {
        m_trace.reset();
        analyse();
        say(QString::fromUtf8(error.what()), true);
        return;
    }
    readFile();
}

void TraceDialog::setKind(traces::TraceKind kind) {
    m_kind->setCurrentIndex(static_cast<int>(kind));
}

void TraceDialog::readFile() {
    m_trace.reset();
    QString problem;
    try {
        const auto columns =
            exchange::readTrace(utf8(m_file), m_layout, std::to_string(m_time->currentIndex() + 1),
                                std::to_string(m_value->currentIndex() + 1));
        auto made = traces::makeTrace(columns.times, columns.values);
        if (const auto* fault = std::get_if<traces::Fault>(&made)) {
            problem = text(fault->what);
            if (fault->sample)
                problem = tr("Line %1: %2").arg(columns.lines[*fault->sample]).arg(problem);
        } else {
            m_trace = std::move(std::get<traces::Trace>(made));
        }
    } catch (const std::exception& error) {
        problem = QString::fromUtf8(error.what());
    }
    analyse();
    if (!problem.isEmpty())
        say(problem, true);
}

void TraceDialog::analyse() {
    m_view->show(nullptr, 0);
    m_analysis.reset();
    const QSignalBlocker quiet(m_events);
    m_events->clear();
    m_figures->setTable({tr("Figure"), tr("Value"), tr("Unit")}, {}, 1, 2);
    m_take->setEnabled(false);
    if (!m_trace)
        return;
    const auto kind = static_cast<TraceKind>(m_kind->currentIndex());
    auto made = traces::Analysis::make(*m_trace, kind);
    if (const auto* fault = std::get_if<traces::Fault>(&made)) {
        say(text(fault->what), true);
        return;
    }
    m_analysis = std::move(std::get<traces::Analysis>(made));
    const QString one = kind == TraceKind::Isometric ? tr("push %1")
                        : kind == TraceKind::Jump    ? tr("jump %1")
                                                     : tr("rep %1");
    for (std::size_t i = 0; i < m_analysis->events(); ++i)
        m_events->addItem(one.arg(i + 1));
    m_take->setEnabled(true);
    showTraceEvent(0);
}

void TraceDialog::showTraceEvent(std::size_t event) {
    m_event = event;
    m_view->show(m_analysis ? &*m_analysis : nullptr, event);
    showFigures();
}

void TraceDialog::showFigures() {
    if (!m_analysis)
        return;
    std::vector<TextTable::Row> rows;
    const auto found = m_analysis->figures(m_event);
    if (const auto* fault = std::get_if<traces::Fault>(&found)) {
        say(text(fault->what), true);
        m_take->setEnabled(false);
    } else {
        for (const traces::Figure& f : std::get<std::vector<traces::Figure>>(found))
            rows.push_back({.cells = {text(f.name), number(f.value, f.decimals), text(f.unit)}});
        say(tr("%1 samples at %2 Hz. Drag a mark, or Tab to it and use the arrow keys: the figures "
               "follow.")
                .arg(m_analysis->trace().values.size())
                .arg(number(m_analysis->trace().rate, 0)),
            false);
        m_take->setEnabled(true);
    }
    m_figures->setTable({tr("Figure"), tr("Value"), tr("Unit")}, std::move(rows), 1, 2);
    m_table->resizeColumnsToContents();
}

void TraceDialog::fillAccept() {
    m_accept->clear();
    const auto kind = static_cast<TraceKind>(m_kind->currentIndex());
    for (const Becomes& one : becomes)
        if (one.kind == kind)
            m_accept->addItem(tr("an attempt of %1").arg(QString::fromUtf8(one.test)),
                              QString::fromUtf8(one.test));
    if (kind == TraceKind::Lift)
        for (const Speeds& one : speeds)
            m_accept->addItem(tr(one.label), QString::fromUtf8(one.key));
}

void TraceDialog::accepted() {
    if (!m_analysis)
        return;
    const QByteArray chosen = m_accept->currentData().toString().toUtf8();
    if (m_analysis->kind() == TraceKind::Lift) {
        QStringList all;
        for (std::size_t i = 0; i < m_analysis->events(); ++i)
            if (const auto speed = figureOf(*m_analysis, i, chosen.constData()))
                all << number(*speed, 3);
        Q_EMIT speedsAccepted(all.join(QLatin1Char(' ')));
        say(tr("Handed over: %1").arg(all.join(QLatin1Char(' '))), false);
        return;
    }
    for (const Becomes& one : becomes) {
        if (chosen != one.test)
            continue;
        const auto kind = answers::builtInTestKind(one.test);
        const auto value = figureOf(*m_analysis, m_event, one.value);
        std::optional<double> contact;
        if (one.contact)
            contact = figureOf(*m_analysis, m_event, one.contact);
        if (!kind || !value || (one.contact && !contact)) {
            say(tr("This trace does not give what that test needs (a jump without a contact before "
                   "it has no contact time)."),
                true);
            return;
        }
        Q_EMIT attemptAccepted(*kind, {.side = BodySide::Both,
                                       .value = *value,
                                       .contact = contact,
                                       .note = "from a trace",
                                       .excluded = {}});
        say(tr("Added to the session: %1").arg(text(kind->name)), false);
    }
}

QString TraceDialog::said() const {
    return m_said->text();
}

void TraceDialog::say(const QString& words, bool problem) {
    m_said->setText(problem ? QStringLiteral("\u26a0 ") + words : words);
}

} // namespace slopebook::ui
