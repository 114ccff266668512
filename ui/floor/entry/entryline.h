// SPDX-License-Identifier: GPL-3.0-or-later
// The line that sets are typed in, with its answer below it: help, what is wrong, or a question.
#pragma once

#include "core/model/session.h"
#include "ui/parts/undoableedit.h"
#include "ui/typed/setline.h"
#include "ui/words/units.h"

#include <QLineEdit>

#include <functional>
#include <optional>
#include <vector>

class QLabel;

namespace slopebook::ui {

/// A line edit whose up and down keys step along the ladder, and which hands several lines on
/// instead of taking them, however they come: by key, menu, middle button or drop.
class SetEdit final : public UndoableEdit {
    Q_OBJECT
public:
    using UndoableEdit::UndoableEdit;

Q_SIGNALS:
    void stepped(int direction);      ///< +1: heavier
    void pasted(const QString& text); ///< more than one line
    void escaped();

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    void inputMethodEvent(QInputMethodEvent* event) override;

private:
    /// Whether text is several lines; then they are handed on.
    bool handOn(const QString& text);
};

class EntryLine final : public QWidget {
    Q_OBJECT
public:
    /// Puts sets on disk, all or none; the sentence that says why they could not be, or nothing.
    using Take = std::function<QString(const std::vector<Set>&)>;

    /// Notes what was not possible; likewise.
    using Note = std::function<QString(const TypedGap&)>;

    /// unit: of a load that names none, and of the loads that the arrow keys put there.
    explicit EntryLine(Take take, LoadUnit unit, QWidget* parent = nullptr);

    SetEdit* edit() const { return m_edit; }
    void setNote(Note note) { m_note = std::move(note); }
    /// Loads of today (in order of entry) and of last time, for the up and down keys.
    void setLoads(std::vector<Mass> today, std::vector<Mass> lastTime);
    /// What a maximum is estimated at, and the loads last lifted as one: the up key goes no
    /// further.
    void setLimit(std::optional<Mass> limit, std::vector<Mass> maxima);
    /// A load that was not lifted today, and what is offered under it: the up key goes no further.
    void setNotLifted(std::optional<Mass> load, std::optional<Mass> under) {
        m_notLifted = load;
        m_under = under;
    }
    /// The block's ceiling on that day: neither does it go beyond this one.
    void setCeiling(std::optional<Mass> ceiling) { m_ceiling = ceiling; }
    /// Asked of each set before it is taken: a question, or nothing where it is easy to believe.
    void setDoubts(std::function<QString(const Set&)> doubts) { m_doubts = std::move(doubts); }
    /// A sentence below the line: something else of the page went wrong.
    void showProblem(const QString& why);
    void showHelp();
    /// Speeds that something else measured: they stand in the line, the cursor before them, for the
    /// load to be typed and Enter.
    void offerSpeeds(const QString& speeds);
    QString answer() const;
    /// Ready sets, asked about like typed ones where they are hard to believe; also: what else is
    /// to be said or asked of them. Enter takes them, Esc or typing drops them.
    void offerSets(const std::vector<Set>& sets, const QStringList& also);
    /// Where sets wait for Enter, they do no more: another session is shown than they were for.
    void dropOffer();
    /// Lines of the clipboard: a block of cells is handed on, lines as they are typed are taken.
    void paste(const QString& text);

Q_SIGNALS:
    void blockPasted(const QString& text); ///< lines with tabs, as a spreadsheet copies them

private:
    /// Puts ready sets on disk and says what of them is worth a look.
    void takeSets(const std::vector<Set>& sets);
    void submit();
    void submitLines(const QStringList& lines, bool sure);
    void step(int direction);
    void noteGap(const TypedGap& gap, const QString& place, bool alone);
    void ask(const QString& question, QStringList meant);
    void refuse(const QString& why);
    bool isKnown(Mass load) const;
    void say(const QString& words, bool isHelp);

    Take m_take;
    Note m_note;
    LoadUnit m_unit;
    SetEdit* m_edit;
    QLabel* m_answer;
    std::vector<Set> m_offered; ///< wait for Enter
    QString m_words;            ///< of the answer, without its mark
    std::vector<Mass> m_today, m_lastTime, m_maxima;
    std::optional<Mass> m_limit, m_ceiling, m_notLifted, m_under;
    std::function<QString(const Set&)> m_doubts;
    QStringList m_meant;    ///< lines as probably meant, while a question stands
    bool m_doubted = false; ///< that question was whether what was typed is to be believed
};

} // namespace slopebook::ui
