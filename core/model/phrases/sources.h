// SPDX-License-Identifier: GPL-3.0-or-later
// Where published figures come from (resources/published.csv, resources/testkinds.csv and the
// published relations), in full and as a sentence cites them: names of papers stay, what is said
// of them is read in the window's language.
#pragma once

#include "core/model/phrases/translate.h"

#include <string_view>

namespace slopebook::phrases {

inline constexpr std::string_view sources[]{
    translate("Phrases",
              "typical error of the speed at one load between days, 0.035 m/s (0.026 to "
              "0.04 by Grgic et al., Front Physiol 2020, and Orange et al., J Strength "
              "Cond Res 2020, the latter of CVs at assumed speeds); less the scatter about "
              "a line of 0.015 to 0.025 m/s (the middle of both ends)"),
    translate("Phrases",
              "0.2 x between-athlete SD over the mean of measured 1RMs, median of seven "
              "groups of four lifts (2.3 to 4.7 %); in m/s along 50 to 70 % 1RM, mean of "
              "five published equations (from memory): 0.0155 m/s per %"),
    translate("Phrases",
              "0.2 x between-athlete SD over the mean of measured 1RMs, median of seven "
              "groups of four lifts (2.3 to 4.7 %); in m/s along 50 to 70 % 1RM, mean of "
              "five published equations: 0.0155 m/s per %"),
    translate("Phrases",
              "typical error of the speed at one load between days, 0.035 to 0.04 m/s by "
              "judgement: none read in m/s, CVs (2.84 to 7.72 %) a little above those of "
              "mean speed (2.55 to 7.61 %; bench pull, Garcia-Ramos et al., PLoS ONE "
              "2019); less the scatter about a line of 0.015 to 0.025 m/s (the middle of "
              "both ends)"),
    translate("Phrases",
              "typical error of the speed at one load between days, 0.055 m/s (bench press "
              "3.9 to 8.4 %, Orange et al., J Strength Cond Res 2020, at assumed speeds); "
              "less the scatter about a line of 0.015 to 0.025 m/s (the middle of both "
              "ends)"),
    translate("Phrases", "0.2 x between-athlete SD over the mean of measured 1RMs, median of seven "
                         "groups of four lifts (2.3 to 4.7 %)"),
    translate("Phrases",
              "Gonzalez-Badillo and Sanchez-Medina, Int J Sports Med 2010 (120 men, guided "
              "bar)"),
    translate("Phrases",
              "0.2 x between-athlete SD over the mean of measured 1RMs, men: 3.1 to 3.4 % "
              "(women 4.5 %); in m/s along 50 to 70 % 1RM, equation of Gonzalez-Badillo "
              "and Sanchez-Medina 2010 (from memory): 0.0155 m/s per %"),
    translate("Phrases",
              "0.2 x between-athlete SD over the mean of measured 1RMs, men: 3.1 to 3.4 % "
              "(women 4.5 %); in m/s along 50 to 70 % 1RM, equation of Gonzalez-Badillo "
              "and Sanchez-Medina 2010: 0.0155 m/s per %"),
    translate("Phrases",
              "Gonzalez-Badillo and Sanchez-Medina, Int J Sports Med 2010 (120 men, guided "
              "bar; mean and propulsive coincide where nothing is braked)"),
    translate("Phrases",
              "0.2 x between-athlete SD over the mean of measured 1RMs, men: 3.1 to 3.4 % "
              "(women 4.5 %); in m/s along 50 to 70 % 1RM, equation of Gonzalez-Badillo "
              "and Sanchez-Medina 2010 (from memory): 0.0166 m/s per %"),
    translate("Phrases",
              "0.2 x between-athlete SD over the mean of measured 1RMs, men: 3.1 to 3.4 % "
              "(women 4.5 %); in m/s along 50 to 70 % 1RM, equation of Gonzalez-Badillo "
              "and Sanchez-Medina 2010: 0.0166 m/s per %"),
    translate("Phrases",
              "Banyard, Nosaka and Haff, J Strength Cond Res 2017 (17 men, free weight)"),
    translate("Phrases",
              "0.2 x between-athlete SD over the mean of measured 1RMs, squat: 27.2 of "
              "140.3 kg (Banyard, Nosaka and Haff, J Strength Cond Res 2017); 4.7 % in 17 "
              "men (Int J Sports Med 2024); in m/s 0.0120 per % (parallel squat, 290 "
              "athletes; Naclerio and Larumbe-Zabala)"),
    translate("Phrases", "Sanchez-Medina et al., Sports Med Int Open 2017 (80 men)"),
    translate("Phrases",
              "0.2 x between-athlete SD over the mean of measured 1RMs, squat: 27.2 of "
              "140.3 kg (Banyard, Nosaka and Haff, J Strength Cond Res 2017); 4.7 % in 17 "
              "men (Int J Sports Med 2024); in m/s along 50 to 70 % 1RM, equation of "
              "Sanchez-Medina et al. 2017 (from memory): 0.0141 m/s per %"),
    translate("Phrases",
              "0.2 x between-athlete SD over the mean of measured 1RMs, squat: 27.2 of "
              "140.3 kg (Banyard, Nosaka and Haff, J Strength Cond Res 2017); 4.7 % in 17 "
              "men (Int J Sports Med 2024); in m/s along 50 to 70 % 1RM, equation of "
              "Sanchez-Medina et al. 2017: 0.0141 m/s per %"),
    translate("Phrases", "Sanchez-Medina et al., Sports Med Int Open 2017 (80 men; mean and "
                         "propulsive coincide where nothing is braked)"),
    translate("Phrases",
              "0.2 x between-athlete SD over the mean of measured 1RMs, squat: 27.2 of "
              "140.3 kg (Banyard, Nosaka and Haff, J Strength Cond Res 2017); 4.7 % in 17 "
              "men (Int J Sports Med 2024); in m/s along 50 to 70 % 1RM, equation of "
              "Sanchez-Medina et al. 2017 (from memory): 0.0160 m/s per %"),
    translate("Phrases",
              "0.2 x between-athlete SD over the mean of measured 1RMs, squat: 27.2 of "
              "140.3 kg (Banyard, Nosaka and Haff, J Strength Cond Res 2017); 4.7 % in 17 "
              "men (Int J Sports Med 2024); in m/s along 50 to 70 % 1RM, equation of "
              "Sanchez-Medina et al. 2017: 0.0160 m/s per %"),
    translate("Phrases", "Helms et al., J Strength Cond Res 2017 (15 powerlifters); in others some "
                         "0.18 m/s by the 0.029 m/s and 15.7 % of Ruf et al. 2018"),
    translate("Phrases",
              "0.2 x between-athlete SD over the mean of measured 1RMs; in m/s along 50 to "
              "70 % 1RM, mean of five published equations (from memory): 0.0155 m/s per %"),
    translate("Phrases",
              "0.2 x between-athlete SD over the mean of measured 1RMs; in m/s along 50 to "
              "70 % 1RM, mean of five published equations: 0.0155 m/s per %"),
    translate("Phrases", "Janicijevic et al., Int J Sports Med 2024 (27 men); SD of the deadlift, "
                         "Helms et al., J Strength Cond Res 2017"),
    translate("Phrases",
              "that of the deadlift: 0.2 x between-athlete SD over the mean of measured "
              "1RMs; in m/s along 50 to 70 % 1RM, mean of five published equations (from "
              "memory): 0.0155 m/s per %"),
    translate("Phrases",
              "that of the deadlift: 0.2 x between-athlete SD over the mean of measured "
              "1RMs; in m/s along 50 to 70 % 1RM, mean of five published equations: 0.0155 "
              "m/s per %"),
    translate("Phrases", "Sanchez-Medina et al., Int J Sports Med 2014 (75 athletes), from memory"),
    translate("Phrases", "Sanchez-Medina et al., Int J Sports Med 2014 (75 athletes)"),
    translate("Phrases", "Sanchez-Medina et al., Int J Sports Med 2014: 0.5058 at 100 % by the "
                         "equation, from memory"),
    translate("Phrases", "Sanchez-Medina et al., Int J Sports Med 2014: 0.5058 at 100 % by the "
                         "equation"),
    translate("Phrases",
              "0.2 x between-athlete SD over the mean of measured 1RMs, median of seven "
              "groups of four lifts (2.3 to 4.7 %); in m/s along 50 to 70 % 1RM, equation "
              "of Sanchez-Medina et al. 2014 (from memory): 0.0153 m/s per %"),
    translate("Phrases",
              "0.2 x between-athlete SD over the mean of measured 1RMs, median of seven "
              "groups of four lifts (2.3 to 4.7 %); in m/s along 50 to 70 % 1RM, equation "
              "of Sanchez-Medina et al. 2014: 0.0153 m/s per %"),
    translate("Phrases",
              "Balsalobre-Fernandez et al., Int J Sports Sci Coach 2018; Garcia-Ramos et "
              "al., Sports Biomech 2019: 0.19 to 0.20 (SD by the 12.9 to 24.6 % between "
              "athletes that was read), from memory"),
    translate("Phrases",
              "Balsalobre-Fernandez et al., Int J Sports Sci Coach 2018; Garcia-Ramos et "
              "al., Sports Biomech 2019: 0.19 to 0.20 (SD by the 12.9 to 24.6 % between "
              "athletes that was read)"),
    translate("Phrases",
              "0.2 x between-athlete SD over the mean of measured 1RMs, men (women 3.4 %); "
              "in m/s along 50 to 70 % 1RM, mean of five published equations (from "
              "memory): 0.0155 m/s per %"),
    translate("Phrases",
              "0.2 x between-athlete SD over the mean of measured 1RMs, men (women 3.4 %); "
              "in m/s along 50 to 70 % 1RM, mean of five published equations: 0.0155 m/s "
              "per %"),
    translate("Phrases", "de Hoyo et al., J Strength Cond Res 2021 (102 men)"),
    translate("Phrases", "Sanchez-Moreno et al., Int J Sports Physiol Perform 2017, from memory"),
    translate("Phrases", "Sanchez-Moreno et al., Int J Sports Physiol Perform 2017"),
    translate("Phrases",
              "between days 3.8 % (16 women; Appl Sci 2024;14:2662), 5.8 % (41 men; "
              "PMC7039490) and 2.5 % (17 adolescents, by a smallest detectable difference "
              "of 7 %; PMC5969001)"),
    translate("Phrases", "0.2 x between-athlete SD of about 0.05 m (common practice)"),
    translate("Phrases",
              "judgement: none read between days; within a session 8.2 to 11.2 % (30 men; "
              "Stratford et al.) and 2 to 3 % (basketball players; Markwick et al., Int J "
              "Sports Physiol Perform 2015)"),
    translate("Phrases",
              "between days: CV of at most 10 % (women, five rebounds; Comyns et al., Int "
              "J Sports Physiol Perform 2019), the upper end; 1.4 to 5.6 % in 23 elite "
              "athletes (Southey et al. 2023)"),
    translate("Phrases", "between days (16 women; Appl Sci 2024;14:2662)"),
    translate("Phrases",
              "between days 2.6 to 4.1 % of the distance (16 people; Dingenen et al., Knee "
              "2019) and 2.9 % (17 adolescents, by a smallest detectable difference of 8 "
              "%; PMC5969001)"),
    translate("Phrases",
              "0.2 x between-athlete SD implied by an SEM of 4.61 cm and the middle of its "
              "ICC of 0.92 to 0.97 (Ross, Langford and Whelan, J Strength Cond Res 2002, "
              "which test has which from memory): 0.2 SEM / sqrt(0.05)"),
    translate("Phrases",
              "0.2 x between-athlete SD implied by an SEM of 4.61 cm and the middle of its "
              "ICC of 0.92 to 0.97 (Ross, Langford and Whelan, J Strength Cond Res 2002): "
              "0.2 SEM / sqrt(0.05)"),
    translate("Phrases", "0.2 x between-athlete SD implied by an SEM of 11.17 cm and the middle of "
                         "its ICC of 0.92 to 0.97 (Ross, Langford and Whelan, J Strength Cond Res "
                         "2002, which test has which from memory): 0.2 SEM / sqrt(0.05)"),
    translate("Phrases", "0.2 x between-athlete SD implied by an SEM of 11.17 cm and the middle of "
                         "its ICC of 0.92 to 0.97 (Ross, Langford and Whelan, J Strength Cond Res "
                         "2002): 0.2 SEM / sqrt(0.05)"),
    translate("Phrases", "Ross, Langford and Whelan, J Strength Cond Res 2002 (SEM, 18 cadets, a "
                         "month apart; 4.61 to 17.74 cm read, which test has which from memory)"),
    translate("Phrases", "Ross, Langford and Whelan, J Strength Cond Res 2002 (SEM, 18 cadets, a "
                         "month apart; 4.61 to 17.74 cm read)"),
    translate("Phrases",
              "0.2 x between-athlete SD implied by that SEM and the middle of its ICC of "
              "0.92 to 0.97: 0.2 SEM / sqrt(0.05)"),
    translate("Phrases",
              "Ross, Langford and Whelan, J Strength Cond Res 2002 (SEM of the 6 m hop)"),
    translate("Phrases",
              "between days (29 women, 3 days; J Orthop Surg Res 2023); within a session "
              "0.10 to 0.173 m (Beckham et al., J Phys Act Res 2019), and at most 4.0 % in "
              "50 boys a week apart (Carron, Pediatr Exerc Sci 2024)"),
    translate("Phrases",
              "0.2 x between-athlete SD of 1.0 m (20 adults, 10 lb ball; Beckham et al., J "
              "Phys Act Res 2019)"),
    translate("Phrases",
              "between days, median of 16 studies (0.7 to 11.1 %; Grgic et al., Biol Sport "
              "2022)"),
    translate("Phrases", "judgement within the 5 to 24 % of forces 30 to 250 ms from onset (girls; "
                         "Moeskops et al., J Strength Cond Res 2018)"),
    translate("Phrases",
              "judgement: over 10 to 11 % in two studies that call it too much (Moeskops "
              "et al., J Strength Cond Res 2018; PMC5969001)"),
    translate("Phrases", "Gonzalez-Badillo and Sanchez-Medina 2010"),
    translate("Phrases", "Sanchez-Medina et al. 2014"),
    translate("Phrases", "Sanchez-Medina et al. 2017"),
};

} // namespace slopebook::phrases
