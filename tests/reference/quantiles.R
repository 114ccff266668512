# SPDX-License-Identifier: GPL-3.0-or-later
# R's own quantiles and tails over a grid of df and p.
put <- function(name, v) cat(sprintf("%s %.17g\n", name, v), sep = "")
for (p in c(0.001, 0.025, 0.2, 0.5, 0.9, 0.95, 0.975, 0.995, 0.9999)) {
  for (df in c(0.7, 1, 1.5, 2, 3, 4, 7.25, 10, 30, 120, 1e4, 1e6, Inf)) {
    put(sprintf("t %g %g", p, df), qt(p, df))
    put(sprintf("f1 %g %g", p, df), qf(p, 1, df))
    put(sprintf("f2 %g %g", p, df), qf(p, 2, df))
    if (is.finite(df)) put(sprintf("chi %g %g", p, df), qchisq(p, df))
  }
}
for (v in c(0, 0.3, 1, 2, 5, 12, 40)) {
  for (df in c(0.7, 1, 1.5, 2, 3, 4, 7.25, 10, 30, 120, 1e4, 1e6, Inf)) {
    put(sprintf("pt %g %g", v, df), 2 * pt(v, df, lower.tail = FALSE))
    put(sprintf("pf %g %g", v, df), pf(v, 2, df, lower.tail = FALSE))
  }
}
