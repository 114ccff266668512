# SPDX-License-Identifier: GPL-3.0-or-later
# Fewest repeats that make a reading clear, for tst_nexttest: noncentral t and integrate(), with
# Satterthwaite's df, counted up from one.
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
