// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/parts/cautions.h"

#include <QCoreApplication>
#include <QFont>

namespace slopebook::ui {

QString shortCaution() {
    return QCoreApplication::translate(
        "cautions", "An estimate, not clearance to lift. Near-maximal lifts need a competent "
                    "spotter or safeties, and a coach's eye. Pain, illness or return from injury: "
                    "a qualified practitioner decides. Local rules come first.");
}

QString fullCautions() {
    return QCoreApplication::translate(
        "cautions",
        "Loads are estimates, not clearance to lift. Near-maximal lifts need a competent spotter "
        "or safeties, and a coach's eye. Restricted-flow training needs screening for vascular, "
        "cardiac, clotting and pressure problems, and trained supervision. Pain, illness or return "
        "from injury: a qualified practitioner decides. Local rules come first.");
}

CautionLabel::CautionLabel(QWidget* parent) : QLabel(shortCaution(), parent) {
    setWordWrap(true);
    setToolTip(fullCautions());
    setAccessibleDescription(fullCautions());
    QFont small = font();
    small.setPointSizeF(small.pointSizeF() * 0.9);
    setFont(small);
}

} // namespace slopebook::ui
