// SPDX-License-Identifier: GPL-3.0-or-later
// What a session's line says, in figures: estimated 1RM first, and what is missing.
#pragma once

#include "core/questions/questions.h"
#include "ui/words/units.h"

#include <QWidget>

namespace slopebook::ui {

class Sentence;
class SettledLabel;
class SourcesFold;

class FiguresPanel final : public QWidget {
    Q_OBJECT
public:
    explicit FiguresPanel(LoadUnit unit, QWidget* parent = nullptr);

    /// session: absent while no set of the lift stands in the session.
    void showProfile(const std::optional<LiftSession>& session,
                     const std::optional<Answer<answers::Profile>>& profile);
    void clear();
    /// In a low window only the estimate and the cautions are shown: the rest is on the Profile
    /// tab.
    void setCompact(bool compact);
    /// With the interval of the line alone, how far a bent line may mislead, and where noise and
    /// bend come from.
    void setSources(bool sources);
    /// The estimate in large type: a page may give it the place of its sentence.
    QWidget* headline() const;
    /// The estimate as one sentence, for the chart's screen reader.
    QString sentence() const;

private:
    struct Words {
        QString headline{}, line{}, notes{}, sources{};
        QString detail{}, brief{}; ///< with sources, and without where there is little room
        bool muted = true;
    };
    Words wordsOf(const answers::Profile& profile) const;
    void addOneRm(Words& words, const answers::Profile& profile) const;
    void addLine(Words& words, const answers::Profile& profile) const;
    void say(const Words& words);
    void fit();

    Words m_said{};
    Sentence* m_headline;
    SettledLabel* m_detail;
    SettledLabel* m_line;
    SettledLabel* m_notes;
    SettledLabel* m_from; ///< where noise, bend and threshold come from, on demand
    SourcesFold* m_fold;
    bool m_compact = false;
    bool m_sources = false;
    LoadUnit m_unit;
};

} // namespace slopebook::ui
