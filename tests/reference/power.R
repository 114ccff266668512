# SPDX-License-Identifier: GPL-3.0-or-later
# Power of the t test by base R, and of two one-sided tests by integrate(); for tst_power.
for (n in c(2, 3, 5, 12, 40)) for (delta in c(0.2, 0.8, 1.5)) {
    p <- power.t.test(n = n, delta = delta, sd = 1, type = "paired", strict = TRUE)$power
    cat(sprintf("paired %d %.1f %.17g\n", n, delta, p))
    p <- power.t.test(n = n, delta = delta, sd = 1, type = "two.sample", strict = TRUE,
                      sig.level = 0.10)$power
    cat(sprintf("two %d %.1f %.17g\n", n, delta, p))
}
tost <- function(truth, margin, se, df, level) {
    t <- qt((1 + level) / 2, df)
    f <- function(q) {
        room <- margin - t * se * sqrt(q / df)
        ifelse(room > 0, pnorm((room - truth) / se) - pnorm((-room - truth) / se), 0) * dchisq(q, df)
    }
    integrate(f, 0, df * (margin / (t * se))^2, rel.tol = 1e-10, subdivisions = 1000)$value
}
for (df in c(2, 5, 30)) for (margin in c(1.5, 3, 5)) for (truth in c(0, 0.7))
    cat(sprintf("tost %d %.1f %.1f %.17g\n", df, margin, truth, tost(truth, margin, 1, df, 0.90)))
