// SPDX-License-Identifier: GPL-3.0-or-later
// What a trace becomes once the coach accepts it: an attempt of a test, or a set's speeds.
#include "core/answers/testkinds.h"
#include "ui/athlete/battery/tracedialog.h"
#include "ui/words/format.h"
#include "ui/words/readable.h"
#include "ui/words/said.h"

#include <QComboBox>
#include <QLabel>
#include <QMessageBox>
#include <QPushButton>
#include <QTableView>

namespace slopebook::ui {

namespace {

using traces::TraceKind;

/// Which figures an attempt of a test is made of; no value: the one that the coach selects.
struct Becomes {
    const char* value;
    const char* contact; ///< or nothing
};

struct Named {
    TraceKind kind;
    const char* test;
    const char* value;
};
/// The built-in tests whose figure is known by their name.
constexpr Named namedFigures[] = {
    {TraceKind::Isometric, "Isometric pull, peak force", "peak_force_n"},
    {TraceKind::Isometric, "Isometric pull, force at 100 ms", "force_100ms_n"},
    {TraceKind::Isometric, "Isometric pull, rate 0 to 100 ms", "rfd_0_100ms_n_per_s"}};

/// Nothing where no figure of such a trace makes an attempt of that test.
std::optional<Becomes> becomes(TraceKind trace, const TestKind& test) {
    switch (test.formula) {
    case TestFormula::FlightHeight:
        return trace == TraceKind::Jump ? std::optional(Becomes{"flight_time_s", nullptr})
                                        : std::nullopt;
    case TestFormula::HeightRsi:
        return trace == TraceKind::Jump
                   ? std::optional(Becomes{"flight_height_m", "contact_time_s"})
                   : std::nullopt;
    case TestFormula::FlightRsi:
        return trace == TraceKind::Jump ? std::optional(Becomes{"flight_time_s", "contact_time_s"})
                                        : std::nullopt;
    case TestFormula::PerBodyMass:
        return trace == TraceKind::Isometric ? std::optional(Becomes{"peak_force_n", nullptr})
                                             : std::nullopt;
    case TestFormula::Value:
        break;
    }
    for (const Named& one : namedFigures)
        if (test.name == one.test)
            return one.kind == trace ? std::optional(Becomes{one.value, nullptr}) : std::nullopt;
    // A test of the coach's own may be of any figure in its unit; the other built-in ones are none.
    if (answers::builtInTestKind(test.name))
        return std::nullopt;
    return Becomes{nullptr, nullptr};
}

struct Speeds {
    const char* label;
    const char* key;
    VelocityKind kind;
};
constexpr Speeds speeds[] = {
    {QT_TRANSLATE_NOOP("slopebook::ui::TraceDialog", "mean velocities to the session"),
     "mean_m_per_s", VelocityKind::Mean},
    {QT_TRANSLATE_NOOP("slopebook::ui::TraceDialog", "mean propulsive velocities to the session"),
     "propulsive_m_per_s", VelocityKind::Propulsive},
    {QT_TRANSLATE_NOOP("slopebook::ui::TraceDialog", "peak velocities to the session"),
     "peak_m_per_s", VelocityKind::Peak}};

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

void TraceDialog::setTests(std::vector<TestKind> tests) {
    m_tests = std::move(tests);
    fillAccept();
}

void TraceDialog::fillAccept() {
    {
        const QSignalBlocker quiet(m_accept);
        m_accept->clear();
        const auto kind = static_cast<TraceKind>(m_kind->currentIndex());
        if (kind == TraceKind::Lift)
            for (int i = 0; i < static_cast<int>(std::size(speeds)); ++i)
                m_accept->addItem(tr(speeds[i].label), i);
        // Tests whose figure is known come first, then those that take the selected one.
        for (const bool known : {true, false})
            for (int i = 0; kind != TraceKind::Lift && i < static_cast<int>(m_tests.size()); ++i) {
                const TestKind& test = m_tests[static_cast<std::size_t>(i)];
                const auto made = becomes(kind, test);
                if (made && (made->value != nullptr) == known)
                    m_accept->addItem(known ? tr("an attempt of %1").arg(testText(test.name))
                                            : tr("the selected figure as an attempt of %1 (%2)")
                                                  .arg(testText(test.name), text(test.unit)),
                                      i);
            }
        // A test that was meant and cannot be made of such a trace is no reason to make another of
        // it: then the coach chooses.
        int at = m_accept->count() > 0 ? 0 : -1;
        if (m_target.test && kind != TraceKind::Lift) {
            at = -1;
            for (int row = 0; row < m_accept->count(); ++row)
                if (m_tests[static_cast<std::size_t>(m_accept->itemData(row).toInt())].name ==
                    m_target.test->name)
                    at = row;
        }
        m_accept->setCurrentIndex(at);
    }
    fitAccept();
}

void TraceDialog::setTarget(TraceTarget target) {
    m_target = std::move(target);
    if (m_target.test) {
        const bool push = becomes(TraceKind::Isometric, *m_target.test).has_value();
        const bool jump = becomes(TraceKind::Jump, *m_target.test).has_value();
        // One of the coach's own may be either: a force is pushed.
        if (push && jump)
            setKind(text(m_target.test->unit).contains(QLatin1Char('N')) ? TraceKind::Isometric
                                                                         : TraceKind::Jump);
        else if (push || jump)
            setKind(push ? TraceKind::Isometric : TraceKind::Jump);
    }
    fillAccept();
    showWhose();
}

void TraceDialog::showWhose() {
    m_whose->setText(
        m_target.day ? tr("For %1, the session of %2").arg(m_target.whose, dateText(*m_target.day))
                     : tr("For %1, a session of today, which is made with the first attempt")
                           .arg(m_target.whose));
    m_whose->setVisible(!m_target.whose.isEmpty());
    setWindowTitle(m_target.whose.isEmpty() ? tr("From a trace")
                                            : tr("From a trace: %1").arg(m_target.whose));
}

void TraceDialog::fitTake() {
    m_take->setEnabled(m_good && m_accept->currentIndex() >= 0);
}

void TraceDialog::fitAccept() {
    const bool attempt = static_cast<TraceKind>(m_kind->currentIndex()) != TraceKind::Lift &&
                         m_accept->currentIndex() >= 0;
    m_side->setVisible(
        attempt && m_tests.at(static_cast<std::size_t>(m_accept->currentData().toInt())).twoSided);
    fitTake();
}

void TraceDialog::selectFigure(int row) {
    m_table->selectRow(row);
}

void TraceDialog::accepted() {
    if (!m_analysis || m_accept->currentIndex() < 0)
        return;
    if (m_analysis->kind() == TraceKind::Lift)
        acceptSpeeds();
    else
        acceptAttempt(m_tests.at(static_cast<std::size_t>(m_accept->currentData().toInt())));
}

void TraceDialog::acceptSpeeds() {
    const Speeds& chosen = speeds[m_accept->currentData().toInt()];
    QStringList all;
    for (std::size_t i = 0; i < m_analysis->events(); ++i)
        if (const auto speed = figureOf(*m_analysis, i, chosen.key))
            all << number(*speed, 3);
    say(tr("In the session form: %1. Type the load before them there.")
            .arg(all.join(QLatin1Char(' '))),
        false);
    Q_EMIT speedsAccepted(all.join(QLatin1Char(' ')), chosen.kind);
}

/// The figure of the selected row, where it is in that unit.
std::optional<double> TraceDialog::selectedFigure(const std::string& unit) const {
    const auto found = m_analysis->figures(m_event);
    const auto* list = std::get_if<std::vector<traces::Figure>>(&found);
    const QModelIndex at = m_table->currentIndex();
    if (!list || !at.isValid() || static_cast<std::size_t>(at.row()) >= list->size())
        return std::nullopt;
    const traces::Figure& figure = (*list)[static_cast<std::size_t>(at.row())];
    return figure.unit == unit ? std::optional(figure.value) : std::nullopt;
}

void TraceDialog::acceptAttempt(const TestKind& kind) {
    const auto made = becomes(m_analysis->kind(), kind);
    if (!made)
        return;
    const auto value =
        made->value ? figureOf(*m_analysis, m_event, made->value) : selectedFigure(kind.unit);
    if (!value && !made->value) {
        say(tr("Select the figure in the table above that this test takes: one in %1.")
                .arg(text(kind.unit)),
            true);
        return;
    }
    std::optional<double> contact;
    if (made->contact)
        contact = figureOf(*m_analysis, m_event, made->contact);
    if (!value || (made->contact && !contact)) {
        say(tr("This trace does not give what that test needs (a jump without a contact before it "
               "has no contact time)."),
            true);
        return;
    }
    const BodySide side =
        kind.twoSided ? static_cast<BodySide>(m_side->currentData().toInt()) : BodySide::Both;
    add(kind, {.side = side,
               .value = *value,
               .contact = contact,
               .note = "from a trace",
               .excluded = {}});
}

void TraceDialog::add(const TestKind& kind, const Attempt& attempt) {
    if (!m_target.add)
        return;
    try {
        const QString what = m_events->currentText();
        const QString taken =
            QStringList{m_file, what, text(kind.name), QString::number(int(attempt.side))}.join(
                QLatin1Char('\n'));
        if ((m_taken.contains(taken) || m_target.stands(kind, attempt)) &&
            QMessageBox::question(this, windowTitle(),
                                  tr("%1 of this trace stands in the session of %2 already, as %3. "
                                     "Add it a second time?")
                                      .arg(what, m_target.whose, testText(kind.name)),
                                  QMessageBox::Yes | QMessageBox::No,
                                  QMessageBox::No) != QMessageBox::Yes)
            return;
        bool intoToday = !m_target.day;
        if (m_target.day && *m_target.day != m_target.today() && !m_dayAgreed) {
            QMessageBox ask(QMessageBox::Question, windowTitle(),
                            tr("The session of %1 is of %2, not of today. Where does the attempt "
                               "belong?")
                                .arg(m_target.whose, dateText(*m_target.day)),
                            QMessageBox::Cancel, this);
            const auto* into =
                ask.addButton(tr("To %1").arg(dateText(*m_target.day)), QMessageBox::AcceptRole);
            const auto* today = ask.addButton(tr("To today"), QMessageBox::AcceptRole);
            ask.setDefaultButton(QMessageBox::Cancel);
            ask.exec();
            if (ask.clickedButton() != into && ask.clickedButton() != today)
                return;
            m_dayAgreed = ask.clickedButton() == into;
            intoToday = ask.clickedButton() == today;
        }
        m_target.day = m_target.add(kind, attempt, intoToday);
        m_taken.insert(taken);
        showWhose();
        say(tr("Added to the session of %1 of %2: %3")
                .arg(m_target.whose, dateText(*m_target.day), testText(kind.name)),
            false);
    } catch (const std::exception& error) {
        say(ui::said(error), true);
    }
}

} // namespace slopebook::ui
