# SPDX-License-Identifier: GPL-3.0-or-later
# Fewest repeats that make a reading clear, for tst_nexttest, counted up from one: the chance is the
# mean over 15 quantiles of the scatter of what a normal estimate gives against half-width^2 = t1^2
# V_lines + t0^2 V_days. Days near each other are alike (0.5 from one to the next), and every
# further one is a repeat. Rows "kind both day df" (0: later tests, 1: tests of both sides), "kind
# sameday day df" (the later ladder so many times on its day), "kind standing day df" (later tests,
# beside a variance of 0.0001 on 12 df that no test lessens), "kind bent day df" (later tests,
# beside a bend that spans 0.02).
v1 <- 0.00030; v2 <- 0.00024; df0 <- 8; m <- 0.05
C <- function(k) { i <- seq_len(k - 1); 1 + 2 * sum((1 - i / k) * 0.5^i) }
imbens <- function(span) if (span == 0) 1 else
    uniroot(function(f) pnorm(1.959963984540054 * (f + span)) - pnorm(-1.959963984540054 * f) - 0.95,
            c(0.5, 1.1), tol = 1e-14)$root
chance <- function(kind, e, later, same, day, standing, span) {
    n <- later * same
    df <- df0 + df0 / 2 * (e + n - 2); lines <- v1 / e + v2 / n
    share <- C(e) / e + C(later) / later
    rho <- day[1] / (day[1] + (v1 + v2) / 2)
    nu <- day[2] + (e - C(e) + later - C(later)) * rho^2
    prior <- day[1] * share; se <- sqrt(lines + day[1] * share + standing)
    if (standing > 0 && day[1] > 0) prior <- prior + standing * (qt(0.975, 12) / qt(0.975, nu))^2
    if (standing > 0 && day[1] == 0) { prior <- standing; nu <- 12 }
    s2 <- lines * qchisq((1:15 - 0.5) / 15, df) / df
    half <- function(p) sqrt(qt(p, df)^2 * s2 + if (prior > 0) qt(p, nu)^2 * prior else 0)
    if (kind == "change") {
        h <- half(0.975); h <- h * sapply(span / h, imbens) + span / 2
        mean(pnorm((m - h) / se) + pnorm((-m - h) / se))
    } else {
        room <- m - half(0.95) - span / 2
        mean(ifelse(room > 0, 2 * pnorm(room / se) - 1, 0))
    }
}
fewest <- function(most, f) { for (r in 1:most) if (f(r) >= 0.8) return(r); NA }
for (day in list(c(0, 5), c(0.0004, 5), c(0.0004, 1e9), c(0.002, 5)))
    for (kind in c("change", "held")) {
        put <- function(how, v) cat(sprintf("%s %s %g %g %.17g\n", kind, how, day[1], day[2], v))
        put("now", chance(kind, 1, 1, 1, day, 0, 0))
        put("0", fewest(20, function(r) chance(kind, 1, r, 1, day, 0, 0)))
        put("1", fewest(20, function(r) chance(kind, r, r, 1, day, 0, 0)))
        put("sameday", fewest(4, function(r) chance(kind, 1, 1, r, day, 0, 0)))
        put("standing", fewest(20, function(r) chance(kind, 1, r, 1, day, 0.0001, 0)))
        put("bentnow", chance(kind, 1, 1, 1, day, 0, 0.02))
        put("bent", fewest(20, function(r) chance(kind, 1, r, 1, day, 0, 0.02)))
    }
