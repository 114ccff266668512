// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/restrictedflow.h"

#include "core/model/phrases/answers.h"

namespace slopebook::answers {

const RestrictedFlowText& restrictedFlowText() {
    static const RestrictedFlowText text{
        .source =
            say("After Patterson et al. 2019 (Front Physiol 10:533), Front Physiol 2022;13:808622 "
                "and the clinical literature: have a clinician review it before relying on it."),
        .leading = say("This plan is not medical advice. Restricted-flow training needs medical "
                       "screening and trained, licensed supervision. Restriction pressure must be "
                       "set by a trained person from a measured occlusion pressure, never by "
                       "elastic wraps at a guessed tightness. Local rules come first."),
        .usualPractice =
            {say("load 20 to 40 % of 1RM"),
             say("pressure 40 to 80 % of the occlusion pressure measured on that limb, with that "
                 "cuff, in that posture; a wider cuff needs less"),
             say("2 to 4 sets, often 30, 15, 15 and 15 reps, 1 to 2 s up and 1 to 2 s down"),
             say("30 to 60 s between sets; about 5 to 10 min of restriction for an exercise, then "
                 "deflate")},
        .screening =
            {say("a deep-vein thrombosis, pulmonary embolism or clotting disorder, now or before"),
             say("haemophilia; medicines that raise the risk of clots or of bleeding"),
             say("anabolic steroids or other ergogenic medicines"),
             say("pregnancy and the months after a birth"),
             say("high blood pressure that is not under control"),
             say("unstable heart disease, a recent heart attack or stroke"),
             say("heart failure or atrial fibrillation"),
             say("peripheral arterial disease or poor circulation; varicose veins"), say("smoking"),
             say("sickle-cell disease or trait"), say("chronic kidney disease"),
             say("rheumatoid arthritis"), say("active cancer"),
             say("an open wound, infection, recent fracture or surgery of the limb; a vascular "
                 "graft or dialysis access; lymphoedema or removed lymph nodes"),
             say("diabetes with damage to vessels or nerves"), say("severe obesity"),
             say("long bed rest or recent long travel"), say("rhabdomyolysis before")},
        .stopAtOnce = {say("numbness or tingling"), say("sharp pain"),
                       say("unusual swelling or colour"),
                       say("dizziness, chest pain or shortness of breath"),
                       say("nausea, headache or faintness")},
        .afterwards = {say("dark urine"), say("soreness out of all proportion")}};
    return text;
}

std::vector<Words> restrictedFlowSentences() {
    const RestrictedFlowText& t = restrictedFlowText();
    return {t.leading,
            say("Not without medical clearance with: %1.", clauses(t.screening)),
            say("Stop and deflate at once for: %1.", clauses(t.stopAtOnce)),
            say("To medical care for: %1.", clauses(t.afterwards)),
            say("Usual practice: %1.", clauses(t.usualPractice)),
            t.source};
}

} // namespace slopebook::answers
