// SPDX-License-Identifier: GPL-3.0-or-later
// The answer of a page: the largest type on it, as large as one or two lines of it allow.
#pragma once

#include "ui/parts/settledlabel.h"

namespace slopebook::ui {

/// The face that sentences are set in, so many times the size of the words around it.
QFont sentenceFont(const QFont& words, double times);

class Sentence final : public SettledLabel {
    Q_OBJECT
public:
    explicit Sentence(QWidget* parent = nullptr);

    /// Instead of QLabel's.
    void setText(const QString& text);
    int heightForWidth(int width) const override;
    /// Always of the one size: for words that come and go while a coach types beside them.
    void setSteady(bool steady);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool event(QEvent* event) override;

private:
    QFont fitting(int width) const;
    void fit();
    bool m_steady = false;
    mutable QHash<int, int> m_fitted; ///< by width, px: their height
};

} // namespace slopebook::ui
