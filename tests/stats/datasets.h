// SPDX-License-Identifier: GPL-3.0-or-later
// Published data with known answers, and made data with known truth. Sources beside each set;
// facts only.
#pragma once

#include "core/stats/line.h"

#include <cmath>
#include <random>
#include <vector>

namespace slopebook::tests {

struct Points {
    std::vector<double> x, y;
};

inline stats::Line lineOf(const Points& points) {
    return stats::fitLine(points.x, points.y).value();
}

/// NIST StRD Norris (www.itl.nist.gov/div898/strd/lls/data/Norris.shtml), public domain.
inline Points norris() {
    return {{0.2, 337.4, 118.2, 884.6, 10.1,  226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4,
             0.6, 775.5, 666.9, 338.0, 447.5, 11.6,  556.0, 228.1, 995.8, 887.6, 120.2, 0.3,
             0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1,  118.3, 229.2, 669.1, 448.9, 0.5},
            {0.1, 338.8, 118.1, 888.0, 9.2,   228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3,
             0.1, 778.1, 668.8, 339.3, 448.9, 10.8,  557.7, 228.3, 998.0, 888.8, 119.6, 0.3,
             0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2,  117.6, 228.9, 668.4, 449.2, 0.2}};
}

/// NIST StRD Pontius: load cells, a parabola.
inline Points pontius() {
    Points p;
    for (int run = 0; run < 2; ++run)
        for (int i = 1; i <= 20; ++i)
            p.x.push_back(150000.0 * i);
    p.y = {.11019,  .21956,  .32949,  .43899,  .54803,  .65694,  .76562,  .87487,
           .98292,  1.09146, 1.20001, 1.30822, 1.41599, 1.52399, 1.63194, 1.73947,
           1.84646, 1.95392, 2.06128, 2.16844, .11052,  .22018,  .32939,  .43886,
           .54798,  .65739,  .76596,  .87474,  .98300,  1.09150, 1.20004, 1.30818,
           1.41613, 1.52408, 1.63159, 1.73965, 1.84696, 1.95445, 2.06177, 2.16829};
    return p;
}

/// Toluca Company: Kutner, Nachtsheim, Neter, Li, Applied Linear Statistical Models, ch. 1.
/// From memory, confirmed by the book's answers.
inline Points toluca() {
    return {{80, 30,  50,  90, 70, 60, 120, 80, 100, 50, 40, 70, 90,
             20, 110, 100, 30, 50, 90, 110, 30, 90,  40, 80, 70},
            {399, 121, 221, 376, 361, 224, 546, 352, 353, 157, 160, 252, 389,
             113, 435, 420, 212, 268, 377, 421, 273, 468, 244, 342, 323}};
}

/// Steam data: Draper and Smith, Applied Regression Analysis, ch. 1. From memory, confirmed by the
/// book's answers.
inline Points steam() {
    return {{35.3, 29.7, 30.8, 58.8, 61.4, 71.3, 74.4, 76.7, 70.7, 57.5, 46.4, 28.9, 28.1,
             39.1, 46.8, 48.5, 59.3, 70.0, 70.0, 74.5, 72.1, 58.1, 44.6, 33.4, 28.6},
            {10.98, 11.13, 12.51, 8.40,  9.27, 8.73, 6.36, 8.50, 7.82, 9.14, 8.24,  12.19, 11.88,
             9.57,  10.94, 9.58,  10.09, 8.11, 6.83, 8.88, 7.68, 8.47, 8.86, 10.36, 11.08}};
}

/// Ezekiel 1930, R's cars: speed and stopping distance.
inline Points cars() {
    return {{4,  4,  7,  7,  8,  9,  10, 10, 10, 11, 11, 12, 12, 12, 12, 13, 13,
             13, 13, 14, 14, 14, 14, 15, 15, 15, 16, 16, 17, 17, 17, 18, 18, 18,
             18, 19, 19, 19, 20, 20, 20, 20, 20, 22, 23, 24, 24, 24, 24, 25},
            {2,  10, 4,  22, 16, 10, 18, 26, 34, 17, 28, 14, 20, 24, 28,  26, 34,
             34, 46, 26, 36, 60, 80, 20, 26, 54, 32, 40, 32, 40, 50, 42,  56, 76,
             84, 36, 46, 68, 32, 48, 52, 56, 64, 66, 54, 70, 92, 93, 120, 85}};
}

/// Anscombe 1973, Am Stat 27:17-21; set 1 to 4.
inline Points anscombe(int set) {
    const std::vector<double> x{10, 8, 13, 9, 11, 14, 6, 4, 12, 7, 5};
    switch (set) {
    case 1:
        return {x, {8.04, 6.95, 7.58, 8.81, 8.33, 9.96, 7.24, 4.26, 10.84, 4.82, 5.68}};
    case 2:
        return {x, {9.14, 8.14, 8.74, 8.77, 9.26, 8.10, 6.13, 3.10, 9.13, 7.26, 4.74}};
    case 3:
        return {x, {7.46, 6.77, 12.74, 7.11, 7.81, 8.84, 6.08, 5.39, 8.15, 6.42, 5.73}};
    default:
        return {{8, 8, 8, 8, 8, 8, 8, 19, 8, 8, 8},
                {6.58, 5.76, 7.71, 8.84, 8.47, 7.04, 5.25, 12.50, 5.56, 7.91, 6.89}};
    }
}

/// Crystal growth: Graybill and Iyer 1994, Regression Analysis. From memory.
inline Points crystal() {
    return {
        {2, 4, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28},
        {.08, 1.12, 4.43, 4.98, 4.92, 7.18, 5.57, 8.40, 8.81, 10.81, 11.16, 10.12, 13.12, 15.04}};
}

/// R's Orange, tree 1: age in days and trunk circumference (Draper and Smith 1998).
inline Points orangeTree1() {
    return {{118, 484, 664, 1004, 1231, 1372, 1582}, {30, 58, 87, 115, 120, 142, 145}};
}

/// R's ChickWeight, chick 1: days and grams (Crowder and Hand 1990). Bends on purpose.
inline Points chick1() {
    return {{0, 2, 4, 6, 8, 10, 12, 14, 16, 18, 20, 21},
            {42, 51, 59, 64, 76, 93, 106, 125, 149, 171, 199, 205}};
}

/// Invented ladders of published-values.md 10.3, the earlier and the later session.
inline Points sessionA() {
    return {{40, 60, 80, 100, 110, 120}, {1.22, 1.00, 0.79, 0.57, 0.47, 0.35}};
}
inline Points sessionB() {
    return {{40, 60, 80, 100, 110, 120}, {1.27, 1.07, 0.84, 0.64, 0.52, 0.43}};
}

/// Soap production lines: Kutner et al., ch. 8. From memory, confirmed by the book's answers.
inline Points soapLine1() {
    return {{100, 125, 220, 205, 300, 255, 225, 175, 270, 170, 155, 190, 140, 290, 265},
            {218, 248, 360, 351, 470, 394, 332, 321, 410, 260, 241, 331, 275, 425, 367}};
}
inline Points soapLine2() {
    return {{105, 215, 270, 255, 175, 135, 200, 275, 155, 320, 190, 295},
            {140, 277, 384, 341, 215, 180, 260, 361, 252, 422, 273, 410}};
}

/// R's ToothGrowth (Crampton 1947): dose and tooth length, ascorbic acid and orange juice.
inline Points toothVc() {
    return {{0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 1, 1, 1, 1, 1,
             1,   1,   1,   1,   1,   2,   2,   2,   2,   2,   2, 2, 2, 2, 2},
            {4.2,  11.5, 7.3,  5.8,  6.4,  10,   11.2, 11.2, 5.2,  7,
             16.5, 16.5, 15.2, 17.3, 22.5, 17.3, 13.6, 14.5, 18.8, 15.5,
             23.6, 18.5, 33.9, 25.5, 26.4, 32.5, 26.7, 21.5, 23.3, 29.5}};
}
inline Points toothOj() {
    return {toothVc().x, {15.2, 21.5, 17.6, 9.7,  14.5, 10,   8.2,  9.4,  16.5, 9.7,
                          19.7, 23.3, 23.6, 26.4, 20,   25.2, 25.8, 21.2, 14.5, 27.3,
                          25.5, 26.4, 22.4, 24.5, 24.8, 30.9, 26.4, 27.3, 29.4, 23}};
}

/// R's mtcars (Henderson and Velleman 1981): weight and miles per gallon, automatic and manual.
inline Points carsAutomatic() {
    return {{3.215, 3.44, 3.46, 3.57, 3.19, 3.15, 3.44, 3.44, 4.07, 3.73, 3.78, 5.25, 5.424, 5.345,
             2.465, 3.52, 3.435, 3.84, 3.845},
            {21.4, 18.7, 18.1, 14.3, 24.4, 22.8, 19.2, 17.8, 16.4, 17.3, 15.2, 10.4, 10.4, 14.7,
             21.5, 15.5, 15.2, 13.3, 19.2}};
}
inline Points carsManual() {
    return {{2.62, 2.875, 2.32, 2.2, 1.615, 1.835, 1.935, 2.14, 1.513, 3.17, 2.77, 3.57, 2.78},
            {21, 21, 22.8, 32.4, 30.4, 33.9, 27.3, 26, 30.4, 15.8, 19.7, 15, 21.4}};
}

/// A made ladder: loads in kg, speeds of the line a + b load with normal scatter.
struct Recipe {
    double a = 1.6, b = -0.011, sd = 0.02;
    int points = 6;
    double from = 30, step = 15;
};
inline Points make(const Recipe& recipe, std::mt19937_64& random) {
    std::normal_distribution<double> scatter(0, recipe.sd);
    Points p;
    for (int i = 0; i < recipe.points; ++i) {
        p.x.push_back(recipe.from + recipe.step * i);
        p.y.push_back(recipe.a + recipe.b * p.x.back() + scatter(random));
    }
    return p;
}

/// Forty ladders of all sorts: few and many points, flat and steep, light-only, uneven, repeated
/// loads, far from zero.
inline std::vector<Points> madeLadders() {
    std::mt19937_64 random(20240611);
    std::vector<Points> ladders;
    for (int i = 0; i < 40; ++i) {
        Recipe recipe;
        recipe.points = 3 + i % 9;
        recipe.from = i % 5 == 4 ? 1e6 : 15 + 5 * (i % 4);
        recipe.step = i % 3 == 0 ? 2.5 : 10 + i % 7;
        recipe.sd = i % 2 == 0 ? 0.02 : 0.06;
        recipe.b = i % 7 == 6 ? -0.002 : -0.008 - 0.0005 * (i % 5);
        if (recipe.from > 1e5)
            recipe.a = 1.5 - recipe.b * 1e6;
        Points p = make(recipe, random);
        if (i % 4 == 3)
            p.x[1] = p.x[0]; // two sets at one load
        ladders.push_back(p);
    }
    return ladders;
}

/// Pairs of made ladders: unlike in points, loads, scatter and truth; every third pair the same.
inline std::vector<std::pair<Points, Points>> madePairs() {
    std::mt19937_64 random(20240612);
    std::vector<std::pair<Points, Points>> pairs;
    for (int i = 0; i < 40; ++i) {
        Recipe first, second;
        first.points = 3 + i % 6;
        second.points = 3 + (i / 2) % 7;
        first.sd = i % 2 == 0 ? 0.01 : 0.04;
        second.sd = i % 5 == 0 ? 0.05 : 0.02;
        second.from = first.from + 5 * (i % 3);
        second.step = 8 + i % 5;
        if (i % 3 != 0) {
            second.a += 0.06 * (i % 4);
            second.b -= 0.0015 * (i % 3);
        }
        pairs.emplace_back(make(first, random), make(second, random));
    }
    return pairs;
}

} // namespace slopebook::tests
