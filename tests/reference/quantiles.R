# SPDX-License-Identifier: GPL-3.0-or-later
# R's own quantiles and tails over a grid of df and p.
# qf() itself loses up to ten digits where the quantile is small (its help page says how it is made
# from qbeta); so the end of the beta that keeps its digits is taken here.
exactF <- function(p, df1, df2) {
  if (!is.finite(df2)) return(qchisq(p, df1) / df1)
  b <- qbeta(p, df1 / 2, df2 / 2)
  if (b < 0.5) return(df2 / df1 * b / (1 - b))
  a <- qbeta(p, df2 / 2, df1 / 2, lower.tail = FALSE)
  df2 / df1 * (1 - a) / a
}
put <- function(name, v) cat(sprintf("%s %.17g\n", name, v), sep = "")
for (p in c(0.001, 0.025, 0.2, 0.5, 0.9, 0.95, 0.975, 0.995, 0.9999)) {
  for (df in c(0.7, 1, 1.5, 2, 3, 4, 7.25, 10, 30, 120, 1e4, 1e6, Inf)) {
    put(sprintf("t %g %g", p, df), qt(p, df))
    put(sprintf("f1 %g %g", p, df), exactF(p, 1, df))
    put(sprintf("f2 %g %g", p, df), exactF(p, 2, df))
    put(sprintf("f2.plain %g %g", p, df), qf(p, 2, df))
    if (is.finite(df)) put(sprintf("chi %g %g", p, df), qchisq(p, df))
  }
}
for (v in c(0, 0.3, 1, 2, 5, 12, 40)) {
  for (df in c(0.7, 1, 1.5, 2, 3, 4, 7.25, 10, 30, 120, 1e4, 1e6, Inf)) {
    put(sprintf("pt %g %g", v, df), 2 * pt(v, df, lower.tail = FALSE))
    put(sprintf("pf %g %g", v, df), pf(v, 2, df, lower.tail = FALSE))
  }
}
