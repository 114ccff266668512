// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/joindialog.h"

#include "core/log/hold.h"
#include "core/meetings/joining.h"
#include "core/model/errors.h"
#include "ui/parts/roomfor.h"
#include "ui/words/format.h"
#include "ui/words/said.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <atomic>
#include <utility>

namespace slopebook::ui {

/// Between who joins and who stops it: whichever comes first is told to the other, so that "nothing
/// was changed" is true where it is said.
class JoinGate {
public:
    /// Before the log is written. False: it was stopped.
    bool enter() { return pass(State::Written); }
    /// False: it is being written, or was.
    bool close() { return pass(State::Closed); }

private:
    enum class State { Open, Written, Closed };
    bool pass(State to) {
        State open = State::Open;
        return m_state.compare_exchange_strong(open, to) || open == to;
    }
    std::atomic<State> m_state = State::Open;
};

namespace {
constexpr int fieldWidth = 420;
constexpr int answerLines = 3; ///< nothing moves for most of them

QLabel* wrapped(const QString& words) {
    auto* label = new QLabel(words);
    label->setWordWrap(true);
    label->setMinimumWidth(fieldWidth);
    label->setTextFormat(Qt::PlainText);
    return label;
}

QLabel* hintUnder(const QString& words, QWidget* field) {
    auto* label = wrapped(words);
    label->setForegroundRole(QPalette::PlaceholderText);
    field->setAccessibleDescription(words);
    return label;
}
} // namespace

JoinDialog::JoinDialog(std::filesystem::path log, const QString& address, const QString& squad,
                       QWidget* parent)
    : QDialog(parent), m_log(std::move(log)), m_before(squad), m_address(new QLineEdit(address)),
      m_squad(new QComboBox), m_told(wrapped({})) {
    setWindowTitle(tr("Join a shared store"));
    build();
    connect(&m_work, &LooseWork::stopped, this, &JoinDialog::rest);
    connect(m_address, &QLineEdit::textEdited, this, &JoinDialog::forget);
    forget();
}

void JoinDialog::build() {
    auto* form = new QFormLayout;
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    const auto add = [&](const QString& label, QWidget* field, const QString& below) {
        QString name = label;
        field->setAccessibleName(name.remove(u'&'));
        form->addRow(label, field);
        form->addRow(QString(), hintUnder(below, field));
    };
    m_address->setObjectName(QStringLiteral("storeAddress"));
    setHint(*m_address, QStringLiteral("postgresql://LOGIN@HOST/DATABASE"));
    add(tr("A&ddress"), m_address,
        tr("As PostgreSQL's programs take it. No password stands in it: passwords are looked for "
           "in ~/.pgpass or in PGPASSWORD."));
    m_squad->setObjectName(QStringLiteral("storeSquad"));
    add(tr("&Squad"), m_squad,
        tr("What is new here goes to it. The store names those in which this login may write."));
    m_told->setObjectName(QStringLiteral("joinTold"));
    m_told->setAccessibleDescription(tr("What the store answered"));
    m_told->setAlignment(Qt::AlignTop);
    m_told->setMinimumHeight(answerLines * m_told->fontMetrics().lineSpacing());
    auto* buttons = new QDialogButtonBox;
    m_ask = buttons->addButton(tr("As&k the store"), QDialogButtonBox::ActionRole);
    m_join = buttons->addButton(tr("&Join"), QDialogButtonBox::AcceptRole);
    buttons->addButton(QDialogButtonBox::Cancel); // last: Tab comes to none that came before others
    m_ask->setObjectName(QStringLiteral("askStore"));
    m_join->setObjectName(QStringLiteral("joinStore"));
    connect(m_ask, &QPushButton::clicked, this, &JoinDialog::ask);
    connect(buttons, &QDialogButtonBox::accepted, this, &JoinDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &JoinDialog::reject);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(
        wrapped(tr("Desks that join one store meet in it: what is new at one comes to the others, "
                   "and each works on without it. A store is a PostgreSQL database; who manages it "
                   "gives its address and a login.")));
    layout->addLayout(form);
    layout->addWidget(m_told);
    layout->addStretch();
    layout->addWidget(buttons);
    m_address->setFocus();
}

// What the store said was of another address.
void JoinDialog::forget() {
    m_known = false;
    m_squad->clear();
    m_squad->setEnabled(false);
    tell({});
    rest();
}

void JoinDialog::rest() {
    const bool busy = m_work.running();
    m_address->setEnabled(!busy);
    m_squad->setEnabled(!busy && m_known);
    m_ask->setEnabled(!busy);
    m_join->setEnabled(!busy && m_known);
    m_ask->setDefault(!m_known);
    m_join->setDefault(m_known);
}

void JoinDialog::work(const QString& words, LooseWork::Work work) {
    tell(words);
    m_work.start(std::move(work));
    rest();
}

void JoinDialog::accept() {
    if (m_work.running())
        return;
    if (m_known)
        join();
    else
        ask();
}

void JoinDialog::reject() {
    if (!m_work.running()) {
        QDialog::reject();
        return;
    }
    if (m_gate && !m_gate->close()) { // it is being written: its end is told in a moment
        tell(tr("It is just being written…"));
        return;
    }
    m_work.leave();
    rest();
    tell(tr("Stopped. Nothing was changed."));
    m_address->setFocus();
}

void JoinDialog::ask() {
    const std::string address = utf8(m_address->text().trimmed());
    if (address.empty()) {
        refuse(tr("Type the address that you were given."));
        return;
    }
    m_gate.reset();
    work(tr("Asking the store…"), [this, address](const Progress& stop) -> LooseWork::Told {
        Answer answer;
        try {
            auto store = store::Connection::open(store::Address::read(address), stop);
            answer.squads = store::squadsOf(store, stop);
        } catch (const Cancelled&) {
            throw;
        } catch (...) {
            answer.error = std::current_exception();
        }
        return [this, answer] { answered(answer); };
    });
}

void JoinDialog::answered(const Answer& answer) {
    rest();
    if (answer.error) {
        refuse(answer.error);
        return;
    }
    m_squad->clear();
    for (const store::Squad& squad : answer.squads)
        if (squad.mayWrite)
            m_squad->addItem(text(squad.name));
    if (m_squad->count() == 0) {
        refuse(tr("The store answers, but this login may write in no squad. Who manages the store "
                  "gives it the right with: slopebook store grant"));
        return;
    }
    m_squad->setCurrentIndex(std::max(0, m_squad->findText(m_before)));
    m_known = true;
    tell(tr("The store answers. All that this log holds goes to it with the first "
            "meeting, and what the squads there hold comes."));
    rest();
    (m_squad->count() > 1 ? static_cast<QWidget*>(m_squad) : m_join)->setFocus();
}

void JoinDialog::join() {
    const std::string address = utf8(m_address->text().trimmed());
    const std::string squad = utf8(m_squad->currentText());
    m_gate = std::make_shared<JoinGate>();
    work(tr("Joining the store…"),
         [this, file = m_log, address, squad,
          gate = m_gate](const Progress& stop) -> LooseWork::Told {
             std::exception_ptr error;
             try {
                 log::Log log = log::Log::open(file);
                 log::holdWrites(log, [gate] {
                     if (!gate->enter())
                         throw Cancelled{};
                 });
                 meetings::joinStore(log, address, squad, stop);
             } catch (const Cancelled&) {
                 throw;
             } catch (...) {
                 error = std::current_exception();
             }
             return [this, error] { joined(error); };
         });
}

void JoinDialog::joined(const std::exception_ptr& error) {
    m_gate.reset();
    rest();
    if (error)
        refuse(error);
    else
        QDialog::accept();
}

void JoinDialog::tell(const QString& words) {
    m_told->setText(words);
    const int wanted = layout()->totalHeightForWidth(width());
    if (isVisible() && height() < wanted)
        resize(width(), wanted);
}

void JoinDialog::refuse(const std::exception_ptr& error) {
    try {
        std::rethrow_exception(error);
    } catch (const BadInput& bad) {
        refuse(tr("Found %1, expected %2.").arg(said(bad.found()), said(bad.expected())));
    } catch (const std::exception& other) {
        refuse(said(other));
    }
}

void JoinDialog::refuse(const QString& why) {
    tell(QStringLiteral("\u26a0 ") + why);
    m_address->setFocus();
    m_address->selectAll();
}

} // namespace slopebook::ui
