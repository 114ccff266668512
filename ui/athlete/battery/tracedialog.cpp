// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/athlete/battery/tracedialog.h"

#include "core/answers/testkinds.h"
#include "core/model/errors.h"
#include "ui/parts/filedialog.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFileInfo>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScreen>
#include <QTableView>
#include <QVBoxLayout>

namespace slopebook::ui {

using traces::TraceKind;

TraceDialog::TraceDialog(QWidget* parent)
    : QDialog(parent),
      m_tests(answers::builtInTestKinds().begin(), answers::builtInTestKinds().end()) {
    setWindowTitle(tr("From a trace"));
    m_view = new TraceView;
    m_said = new QLabel(tr("A CSV file with one row a sample: time in s, and force in N or "
                           "displacement in m; 100 Hz to 10 kHz."));
    m_said->setWordWrap(true);
    m_said->setAccessibleDescription(tr("What was found"));
    m_whose = new QLabel;
    m_whose->setObjectName(QStringLiteral("whose"));
    m_whose->setWordWrap(true);
    QFont bold = m_whose->font();
    bold.setBold(true);
    m_whose->setFont(bold);
    m_whose->hide();
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_whose);
    layout->addWidget(buildChoices());
    layout->addWidget(m_view, 3);
    layout->addWidget(m_said);
    layout->addWidget(buildBelow(), 2);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    layout->addWidget(buttons);
    connectParts();
    fillAccept();
    resize(QSize(980, 720).boundedTo(screen()->availableSize()));
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
    add(tr("Sho&wn"), m_events);
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
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setSelectionMode(QAbstractItemView::SingleSelection);
    m_table->verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 6);
    m_table->verticalHeader()->hide();
    m_table->horizontalHeader()->setStretchLastSection(true);
    column->addWidget(m_table, 1);
    auto* row = new QHBoxLayout;
    m_accept = new QComboBox;
    m_accept->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    m_accept->setPlaceholderText(tr("choose what it is"));
    auto* caption = new QLabel(tr("&Becomes"));
    caption->setBuddy(m_accept);
    m_accept->setAccessibleName(tr("Becomes"));
    m_take = new QPushButton(tr("&Accept"));
    m_take->setObjectName(QStringLiteral("accept"));
    row->addWidget(caption);
    row->addWidget(m_accept);
    m_side = new QComboBox;
    m_side->addItem(tr("left"), static_cast<int>(BodySide::Left));
    m_side->addItem(tr("right"), static_cast<int>(BodySide::Right));
    m_side->setAccessibleName(tr("Side"));
    row->addWidget(m_side);
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
    connect(m_accept, &QComboBox::currentIndexChanged, this, &TraceDialog::fitAccept);
    connect(m_take, &QPushButton::clicked, this, &TraceDialog::accepted);
}

void TraceDialog::chooseFile() {
    const QString file = filedialog::open(
        this, {.title = tr("Trace"), .filter = tr("CSV (*.csv *.txt *.tsv);;All files (*)")});
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
        say(ui::said(error), true);
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
            problem = ui::said(fault->what);
            if (fault->sample)
                problem = tr("Line %1: %2").arg(columns.lines[*fault->sample]).arg(problem);
        } else {
            m_trace = std::move(std::get<traces::Trace>(made));
        }
    } catch (const std::exception& error) {
        problem = ui::said(error);
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
    m_good = false;
    fitTake();
    if (!m_trace)
        return;
    const auto kind = static_cast<TraceKind>(m_kind->currentIndex());
    auto made = traces::Analysis::make(*m_trace, kind);
    if (const auto* fault = std::get_if<traces::Fault>(&made)) {
        say(ui::said(fault->what), true);
        return;
    }
    m_analysis = std::move(std::get<traces::Analysis>(made));
    const QString one = kind == TraceKind::Isometric ? tr("push %1")
                        : kind == TraceKind::Jump    ? tr("jump %1")
                                                     : tr("rep %1");
    for (std::size_t i = 0; i < m_analysis->events(); ++i)
        m_events->addItem(one.arg(i + 1));
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
        say(ui::said(fault->what), true);
        m_good = false;
    } else {
        for (const traces::Figure& f : std::get<std::vector<traces::Figure>>(found))
            rows.push_back(
                {.cells = {ui::said(f.name), number(f.value, f.decimals), text(f.unit)}});
        const Words remark = m_analysis->remark(m_event);
        const QString samples =
            tr("%1 samples at %2 Hz. Drag a mark, or Tab to it and use the arrow "
               "keys: the figures follow.")
                .arg(m_analysis->trace().values.size())
                .arg(number(m_analysis->trace().rate, 0));
        say(remark.empty() ? samples : ui::said(remark) + u' ' + samples, !remark.empty());
        m_good = true;
    }
    fitTake();
    m_figures->setTable({tr("Figure"), tr("Value"), tr("Unit")}, std::move(rows), 1, 2);
    m_table->resizeColumnsToContents();
}

QString TraceDialog::said() const {
    return m_said->text();
}

void TraceDialog::say(const QString& words, bool problem) {
    m_said->setText(problem ? QStringLiteral("\u26a0 ") + words : words);
}

} // namespace slopebook::ui
