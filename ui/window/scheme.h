// SPDX-License-Identifier: GPL-3.0-or-later
// Light or dark: as the desktop has it, or as the coach says. Hints are readable in whatever
// colours are in use.
#pragma once

#include <QColor>
#include <QObject>
#include <QPalette>
#include <QStringView>

namespace slopebook::ui {

enum class Scheme { Desktop, Light, Dark };
/// What the settings remember it by.
QString wordOf(Scheme scheme);
/// The one that is called so; the desktop's where none is.
Scheme schemeCalled(QStringView word);

/// From 1 to 21, of two opaque colours: (L1 + 0.05) / (L2 + 0.05) of their relative luminances
/// (WCAG 2.1, "contrast ratio").
double contrast(const QColor& one, const QColor& other);
constexpr double readableContrast = 4.5; ///< of ordinary text (WCAG 2.1, 1.4.3)
constexpr double quietContrast = 5;      ///< of words of the second rank: that, with some room

/// The first colour on the way from wanted to ink that is read on all of those grounds; ink where
/// none is.
QColor readable(const QColor& wanted, const QColor& ink, std::initializer_list<QColor> grounds,
                double least = readableContrast);
/// For words of the second rank, as hints in fields: the text's own, paled as far as it is still
/// read on windows and in fields.
QColor hintColour(const QPalette& palette);
/// Of what cannot be pressed now: paler than the ink, and still read on every ground (3 to 1).
constexpr double disabledContrast = 3;
QColor disabledColour(const QPalette& palette);

QPalette paletteOf(Scheme scheme); ///< not of the desktop's

/// Dresses the whole program, and again when the desktop's colours change.
class SchemeKeeper final : public QObject {
    Q_OBJECT
public:
    explicit SchemeKeeper(Scheme scheme, QObject* parent = nullptr);
    void wear(Scheme scheme);
    bool eventFilter(QObject* watched, QEvent* event) override;

Q_SIGNALS:
    /// What makes colours of its own from the program's is to do so anew.
    void dressed();

private:
    void fitHints();
    Scheme m_worn = Scheme::Desktop;
};

} // namespace slopebook::ui
