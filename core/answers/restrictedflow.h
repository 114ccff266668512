// SPDX-License-Identifier: GPL-3.0-or-later
// Restricted-flow training: its load window, and the cautions without which it is never shown.
// Figures and lists follow Patterson et al. 2019 (Front Physiol 10:533) and the clinical
// literature, from memory, in our own words. Read in Front Physiol 2022;13:808622 (abstract and
// opening): chronic kidney disease, heart failure and atrial fibrillation, haemophilia, rheumatoid
// arthritis, anabolic or ergogenic medicines, the months after a birth, smoking; nausea, headache
// and fainting. A clinician has to review it all before it is relied upon.
#pragma once

#include "core/model/words.h"

#include <vector>

namespace slopebook::answers {

/// The usual window, in % of 1RM (Patterson et al. 2019, from memory).
constexpr double restrictedFlowFrom = 20;
constexpr double restrictedFlowTo = 40;

struct RestrictedFlowText {
    Words source;  ///< where it comes from and how far it was checked
    Words leading; ///< who decides and who sets the pressure
    std::vector<Words> usualPractice;
    std::vector<Words> screening;  ///< do not start without medical clearance with these
    std::vector<Words> stopAtOnce; ///< deflate and stop for these
    std::vector<Words> afterwards; ///< to medical care for these
};

/// The text, always shown whole wherever a restricted-flow load is shown.
const RestrictedFlowText& restrictedFlowText();
/// The same in sentences, one a list.
std::vector<Words> restrictedFlowSentences();

} // namespace slopebook::answers
