# SPDX-License-Identifier: GPL-3.0-or-later
# A trend through days that are alike from one to the next. Rows "case x y u" from standard input;
# for each case nlme's gls (corAR1(0.5) fixed, variance proportional to u, REML), and the same from
# the formulas alone: V = sqrt(u_i u_j) 0.5^|i-j|, b = (X'V^-1 X)^-1 X'V^-1 y, s^2 = r'V^-1 r / (n - 2).
library(nlme)
d <- read.table(file("stdin"), col.names = c("case", "x", "y", "u"))
for (case in unique(d$case)) {
  g <- d[d$case == case, ]
  n <- nrow(g)
  say <- function(name, value) cat(sprintf("%s_%s %.17g\n", case, name, value))
  i <- seq_len(n)
  V <- outer(sqrt(g$u), sqrt(g$u)) * 0.5^abs(outer(i, i, "-"))
  W <- solve(V)
  X <- cbind(1, g$x)
  A <- solve(t(X) %*% W %*% X)
  b <- A %*% t(X) %*% W %*% g$y
  r <- g$y - X %*% b
  s2 <- drop(t(r) %*% W %*% r) / (n - 2)
  say("slope", b[2])
  say("at0", b[1])
  say("se", sqrt(s2 * A[2, 2]))
  say("low", b[2] - qt(.975, n - 2) * sqrt(s2 * A[2, 2]))
  m <- gls(y ~ x, data = g, correlation = corAR1(0.5, fixed = TRUE), weights = varFixed(~u))
  say("gls_slope", coef(m)[["x"]])
  say("gls_at0", coef(m)[["(Intercept)"]])
  say("gls_se", sqrt(vcov(m)["x", "x"]))
}
