// SPDX-License-Identifier: GPL-3.0-or-later
// The index beside the page, as in a book: how wide it is, and whether it is folded away.
#pragma once

#include <QSplitter>

#include <optional>

namespace slopebook::ui {

class Index;

class Frame final : public QSplitter {
    Q_OBJECT
public:
    /// Takes both over.
    Frame(Index* index, QWidget* page);
    /// In the program's colours as they are now: no widget is told of a change of them by itself.
    void dress();

    /// px; kept while it is folded.
    int indexWidth() const { return m_width; }
    void setIndexWidth(int width);
    /// What the coach wants; nothing: folded where the window is narrow.
    std::optional<bool> foldWanted() const { return m_wanted; }
    void wantFold(std::optional<bool> folded);
    bool folded() const;
    /// Opens the folded index for one choice, and folds it again.
    void peek(bool wanted);

Q_SIGNALS:
    void foldedChanged(bool folded);

protected:
    QSplitterHandle* createHandle() override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void fit();

    Index* m_index;
    QWidget* m_page;
    int m_width;
    std::optional<bool> m_wanted;
    bool m_peeking = false;
    bool m_wasFolded = false;
};

} // namespace slopebook::ui
