// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/scheme.h"

#include "ui/parts/deskstyle.h"

#include <QApplication>
#include <QEvent>
#include <QToolTip>

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>
#include <vector>

namespace slopebook::ui {

namespace {

constexpr std::array schemeKeys{u"desktop", u"light", u"dark"};
constexpr std::array groups{QPalette::Active, QPalette::Inactive, QPalette::Disabled};

double luminance(const QColor& colour) {
    const auto part = [](float value) {
        const double v = static_cast<double>(value);
        return v <= 0.04045 ? v / 12.92 : std::pow((v + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * part(colour.redF()) + 0.7152 * part(colour.greenF()) +
           0.0722 * part(colour.blueF());
}

QColor between(const QColor& a, const QColor& b, float share) {
    const auto mix = [share](float x, float y) { return x + (y - x) * share; };
    return QColor::fromRgbF(mix(a.redF(), b.redF()), mix(a.greenF(), b.greenF()),
                            mix(a.blueF(), b.blueF()));
}

/// A ground and its ink; all that is between them is mixed of the two.
struct Tones {
    QColor window, base, button, ink, chosen, onChosen, link;
};

QPalette made(const Tones& of) {
    QPalette palette(of.button, of.window);
    const QColor pale = between(of.ink, of.window, 0.5F);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText,
                            QPalette::ToolTipText, QPalette::BrightText}) {
        palette.setColor(role, of.ink);
        palette.setColor(QPalette::Disabled, role, pale);
    }
    for (const auto role : {QPalette::Base, QPalette::ToolTipBase})
        palette.setColor(role, of.base);
    palette.setColor(QPalette::AlternateBase, between(of.base, of.window, 0.5F));
    palette.setColor(QPalette::Highlight, of.chosen);
    palette.setColor(QPalette::HighlightedText, of.onChosen);
    palette.setColor(QPalette::Disabled, QPalette::Highlight, between(of.chosen, of.window, 0.6F));
    palette.setColor(QPalette::Link, of.link);
    palette.setColor(QPalette::LinkVisited, of.chosen);
    return palette;
}

} // namespace

QString wordOf(Scheme scheme) {
    return QString::fromUtf16(schemeKeys.at(static_cast<std::size_t>(scheme)));
}

Scheme schemeCalled(QStringView word) {
    for (const Scheme scheme : {Scheme::Light, Scheme::Dark})
        if (word == wordOf(scheme))
            return scheme;
    return Scheme::Desktop;
}

double contrast(const QColor& one, const QColor& other) {
    const double a = luminance(one), b = luminance(other);
    return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

QColor readable(const QColor& wanted, const QColor& ink, std::initializer_list<QColor> grounds,
                double least) {
    constexpr int steps = 32;
    for (int i = 0; i < steps; ++i) {
        const QColor tried = between(wanted, ink, static_cast<float>(i) / steps);
        if (std::ranges::all_of(
                grounds, [&](const QColor& ground) { return contrast(tried, ground) >= least; }))
            return tried;
    }
    return ink;
}

QColor hintColour(const QPalette& palette) {
    const QColor ink = palette.color(QPalette::Active, QPalette::Text);
    const QColor base = palette.color(QPalette::Active, QPalette::Base);
    const QColor window = palette.color(QPalette::Active, QPalette::Window);
    return readable(between(ink, base, 0.5F), ink, {base, window}, quietContrast);
}

QColor disabledColour(const QPalette& palette) {
    const auto of = [&](QPalette::ColorRole role) { return palette.color(QPalette::Active, role); };
    const QColor ink = of(QPalette::Text), base = of(QPalette::Base);
    return readable(between(ink, base, 0.5F), ink,
                    {base, of(QPalette::Window), of(QPalette::Button)}, disabledContrast);
}

QPalette paletteOf(Scheme scheme) {
    if (scheme == Scheme::Dark)
        return made({.window = QColor(0x22, 0x28, 0x26),
                     .base = QColor(0x1A, 0x1F, 0x1D),
                     .button = QColor(0x30, 0x38, 0x35),
                     .ink = QColor(0xE6, 0xEA, 0xE7),
                     .chosen = QColor(0x8E, 0x3F, 0x71),
                     .onChosen = Qt::white,
                     .link = QColor(0x8A, 0xC4, 0xF0)});
    return made({.window = QColor(0xF3, 0xF5, 0xF3),
                 .base = Qt::white,
                 .button = QColor(0xEA, 0xED, 0xEA),
                 .ink = QColor(0x1B, 0x20, 0x1D),
                 .chosen = QColor(0x7A, 0x2A, 0x5C),
                 .onChosen = Qt::white,
                 .link = QColor(0x00, 0x5A, 0x8F)});
}

SchemeKeeper::SchemeKeeper(Scheme scheme, QObject* parent) : QObject(parent) {
    qApp->installEventFilter(this);
    wear(scheme);
}

void SchemeKeeper::wear(Scheme scheme) {
    if (scheme != m_worn)
        QApplication::setPalette(scheme == Scheme::Desktop ? QPalette() : paletteOf(scheme));
    m_worn = scheme;
    fitHints();
    QToolTip::setPalette(QApplication::palette());
}

// Only the hints and the accent are set: what else the desktop says, and changes later, goes on
// being followed.
void SchemeKeeper::fitHints() {
    QPalette palette = QApplication::palette();
    const QColor page = palette.color(QPalette::Active, QPalette::Base);
    const QColor ink = palette.color(QPalette::Active, QPalette::Text);
    std::vector wanted{std::pair{QPalette::PlaceholderText, hintColour(palette)}};
    if (m_worn == Scheme::Desktop) {
        const QColor chosen = accentOn(page);
        wanted.emplace_back(QPalette::Highlight, chosen);
        wanted.emplace_back(QPalette::HighlightedText,
                            contrast(page, chosen) > contrast(ink, chosen) ? page : ink);
    }
    bool fits = true;
    const QColor pale = disabledColour(palette);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
        fits = fits && palette.color(QPalette::Disabled, role) == pale;
        palette.setColor(QPalette::Disabled, role, pale);
    }
    for (const auto& [role, colour] : wanted)
        for (const auto group : groups) {
            fits = fits && palette.color(group, role) == colour;
            palette.setColor(group, role, colour);
        }
    if (!fits)
        QApplication::setPalette(palette);
    Q_EMIT dressed();
}

bool SchemeKeeper::eventFilter(QObject* watched, QEvent* event) {
    if (watched == qApp && event->type() == QEvent::ApplicationPaletteChange)
        QMetaObject::invokeMethod(this, &SchemeKeeper::fitHints, Qt::QueuedConnection);
    return false;
}

} // namespace slopebook::ui
