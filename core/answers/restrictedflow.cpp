// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/answers/restrictedflow.h"

namespace slopebook::answers {

const RestrictedFlowText& restrictedFlowText() {
    static const RestrictedFlowText text{
        .source =
            "After Patterson et al. 2019 (Front Physiol 10:533), Front Physiol 2022;13:808622 and "
            "the clinical literature: have a clinician review it before relying on it.",
        .leading =
            "This plan is not medical advice. Restricted-flow training needs medical screening and "
            "trained, licensed supervision. Restriction pressure must be set by a trained person "
            "from a measured occlusion pressure, never by elastic wraps at a guessed tightness. "
            "Local rules come first.",
        .usualPractice =
            {"load 20 to 40 % of 1RM",
             "pressure 40 to 80 % of the occlusion pressure measured on that limb, with that cuff, "
             "in that posture; a wider cuff needs less",
             "2 to 4 sets, often 30, 15, 15 and 15 reps, 1 to 2 s up and 1 to 2 s down",
             "30 to 60 s between sets; about 5 to 10 min of restriction for an exercise, then "
             "deflate"},
        .screening =
            {"a deep-vein thrombosis, pulmonary embolism or clotting disorder, now or before",
             "haemophilia; medicines that raise the risk of clots or of bleeding",
             "anabolic steroids or other ergogenic medicines",
             "pregnancy and the months after a birth",
             "high blood pressure that is not under control",
             "unstable heart disease, a recent heart attack or stroke",
             "heart failure or atrial fibrillation",
             "peripheral arterial disease or poor circulation; varicose veins", "smoking",
             "sickle-cell disease or trait", "chronic kidney disease", "rheumatoid arthritis",
             "active cancer",
             "an open wound, infection, recent fracture or surgery of the limb; a vascular graft "
             "or "
             "dialysis access; lymphoedema or removed lymph nodes",
             "diabetes with damage to vessels or nerves", "severe obesity",
             "long bed rest or recent long travel", "rhabdomyolysis before"},
        .stopAtOnce = {"numbness or tingling", "sharp pain", "unusual swelling or colour",
                       "dizziness, chest pain or shortness of breath",
                       "nausea, headache or faintness"},
        .afterwards = {"dark urine", "soreness out of all proportion"}};
    return text;
}

} // namespace slopebook::answers
