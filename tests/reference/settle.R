# SPDX-License-Identifier: GPL-3.0-or-later
# Fewest repeats that make a reading clear, for tst_nexttest: noncentral t and integrate(), with
# Satterthwaite's df, counted up from one. Rows "kind both day df" (later tests, tests of both
# sides), "kind sameday day df" (the later ladder so many times on its day), "kind standing day df"
# (later tests, beside a variance of 0.0001 on 12 df that no test lessens).
satt <- function(v1, df1, v2, df2) if (v2 == 0) df1 else (v1 + v2)^2 / (v1^2 / df1 + v2^2 / df2)
change <- function(m, v, df) {
    t <- qt(0.975, df); d <- m / sqrt(v)
    pt(t, df, d, lower.tail = FALSE) + pt(-t, df, d)
}
held <- function(m, v, df) {
    t <- qt(0.95, df); se <- sqrt(v)
    integrate(function(q) { room <- m - t * se * sqrt(q / df)
        ifelse(room > 0, 2 * pnorm(room / se) - 1, 0) * dchisq(q, df) },
        0, df * (m / (t * se))^2, rel.tol = 1e-9, subdivisions = 1000)$value
}
v1 <- 0.00030; v2 <- 0.00024; df0 <- 8; m <- 0.05
for (day in list(c(0, 5), c(0.0004, 5), c(0.0004, 1e9), c(0.002, 5)))
    for (kind in c("change", "held")) for (both in c(0, 1)) {
        f <- if (kind == "change") change else held
        answer <- NA
        for (r in 1:20) {
            e <- if (both) r else 1
            lines <- v1 / e + v2 / r; days <- day[1] / e + day[1] / r
            df <- satt(lines, df0 + df0 / 2 * (e + r - 2), days, day[2])
            if (r == 1) cat(sprintf("%s now %g %g %.17g\n", kind, day[1], day[2], f(m, lines + days, df)))
            if (f(m, lines + days, df) >= 0.8) { answer <- r; break }
        }
        cat(sprintf("%s %d %g %g %s\n", kind, both, day[1], day[2], answer))
    }
satt3 <- function(v, df) { k <- v > 0; sum(v[k])^2 / sum(v[k]^2 / df[k]) }
for (day in list(c(0, 5), c(0.0004, 5), c(0.0004, 1e9), c(0.002, 5)))
    for (kind in c("change", "held")) for (how in c("sameday", "standing")) {
        f <- if (kind == "change") change else held
        answer <- NA
        for (r in seq_len(if (how == "sameday") 4 else 20)) {
            v <- if (how == "sameday") c(v1 + v2 / r, 2 * day[1], 0)
                 else c(v1 + v2 / r, day[1] + day[1] / r, 0.0001)
            df <- satt3(v, c(df0 + df0 / 2 * (r - 1), day[2], 12))
            if (f(m, sum(v), df) >= 0.8) { answer <- r; break }
        }
        cat(sprintf("%s %s %g %g %s\n", kind, how, day[1], day[2], answer))
    }
