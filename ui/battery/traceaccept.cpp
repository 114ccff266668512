// SPDX-License-Identifier: GPL-3.0-or-later
// What a trace becomes once the coach accepts it: an attempt of a test, or a set's speeds.
#include "core/answers/testkinds.h"
#include "ui/battery/tracedialog.h"
#include "ui/shell/format.h"

#include <QComboBox>
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
constexpr Named named[] = {
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
    for (const Named& one : named)
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
                    m_accept->addItem(known ? tr("an attempt of %1").arg(text(test.name))
                                            : tr("the selected figure as an attempt of %1 (%2)")
                                                  .arg(text(test.name), text(test.unit)),
                                      i);
            }
        m_accept->setCurrentIndex(m_accept->count() > 0 ? 0 : -1);
    }
    fitAccept();
}

void TraceDialog::fitAccept() {
    const bool attempt = static_cast<TraceKind>(m_kind->currentIndex()) != TraceKind::Lift &&
                         m_accept->currentIndex() >= 0;
    m_side->setVisible(
        attempt && m_tests.at(static_cast<std::size_t>(m_accept->currentData().toInt())).twoSided);
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
    Q_EMIT attemptAccepted(kind, {.side = side,
                                  .value = *value,
                                  .contact = contact,
                                  .note = "from a trace",
                                  .excluded = {}});
    say(tr("Added to the session: %1").arg(text(kind.name)), false);
}

} // namespace slopebook::ui
