# SPDX-License-Identifier: GPL-3.0-or-later
# Block against block on rows "block session load speed" from standard input. nlme: a random
# intercept by REML (package nlme) on ladders that are all alike. rule: the rule of tests/README.md,
# 'Seasons', written from its formulas alone: published SD 0.025 m/s, MVT 0.45 m/s, asked at 60 kg.
arguments <- commandArgs(trailingOnly = TRUE)
if (arguments[1] == "holm") { # p.adjust, and what lies beyond a reach by integrate()
  p <- p.adjust(as.numeric(arguments[-1]), "holm")
  for (i in seq_along(p)) cat(sprintf("p%d %.17g\n", i, p[i]))
  reach <- sqrt(0.0004 * qt(.975, 12)^2 + 0.0009 * qt(.975, 6)^2)
  inside <- integrate(function(t) dt(t, 12) * (pt((reach - 0.02 * t) / 0.03, 6) -
                                               pt((-reach - 0.02 * t) / 0.03, 6)),
                      -Inf, Inf, rel.tol = 1e-10)$value
  cat(sprintf("beyond %.17g\n", 1 - inside))
  # of an error anywhere in 0.03, the second part of a likely variance: median 0.8, log SD 0.9
  given <- function(e, r) integrate(function(z) dnorm(z) * sapply(z, function(z) {
    s <- sqrt(0.0009 * 0.8 * exp(0.9 * z))
    integrate(function(t) dt(t, 12) * (pnorm((-r - e - 0.02 * t) / s) + pnorm((e - r + 0.02 * t) / s)),
              -Inf, Inf, rel.tol = 1e-9)$value
  }), -8, 8, rel.tol = 1e-9)$value
  cat(sprintf("likely %.17g\n", given(0, reach)))
  cat(sprintf("spanned %.17g\n", integrate(function(e) sapply(e, given, r = reach + 0.01) / 0.03,
                                           -0.015, 0.015, rel.tol = 1e-8)$value))
  cat(sprintf("alone %.17g\n", 2 * pt(-2.5, 4)))
  quit("no")
}
d <- read.table(file("stdin"), col.names = c("b", "s", "L", "v"))
say <- function(name, value) cat(name, " ", format(value, digits = 15), "\n", sep = "")
if (arguments[1] == "nlme") {
  library(nlme)
  x <- 70
  d$x <- d$L - x
  # slopes free in each session, as each has its own line: at the mean load they take no part
  m <- lme(v ~ factor(b) + factor(s):x, random = ~1 | s, data = d,
           control = lmeControl(opt = "optim", reltol = 1e-15, tolerance = 1e-12, msTol = 1e-13))
  vc <- as.numeric(VarCorr(m)[, 1])
  say("change", unname(fixef(m)["factor(b)1"]))
  say("se", sqrt(vcov(m)["factor(b)1", "factor(b)1"]))
  say("tau2", vc[1])
  say("s2", vc[2])
} else {
  phi <- 0.5
  x <- 60
  v0 <- 0.45
  fits <- lapply(split(d, d$s), function(g) {
    m <- lm(v ~ L, g)
    list(b = g$b[1], a = coef(m)[[1]], k = coef(m)[[2]], n = nrow(g), m = mean(g$L),
         sxx = sum((g$L - mean(g$L))^2), rss = sum(resid(m)^2), top = max(g$L), low = min(g$L))
  })
  df <- sum(sapply(fits, function(f) f$n - 2))
  s2 <- sum(sapply(fits, function(f) f$rss)) / df
  own <- function(f) max(s2, f$rss / (f$n - 2))
  h <- function(f, x) 1 / f$n + (x - f$m)^2 / f$sxx
  C <- function(K) { c <- 1; if (K > 1) for (i in 1:(K - 1)) c <- c + 2 * (1 - i / K) * phi^i; c }
  side <- list(Filter(function(f) f$b == 0, fits), Filter(function(f) f$b == 1, fits))
  # the blocks' own spread as repeats
  c2 <- (0.84 * 0.025)^2
  ke <- 0
  found <- 0
  for (S in side) {
    K <- length(S)
    w <- sapply(S, function(f) 1 / f$sxx)
    at <- sum(w * sapply(S, function(f) f$m)) / sum(w)
    y <- sapply(S, function(f) f$a + f$k * at)
    v <- s2 * mean(sapply(S, h, x = at))
    sh <- (K - C(K)) / (K - 1)
    # df of y'Py for y of covariance R + (v / c2) I, by the traces of matrices
    P <- diag(K) - 1 / K
    A <- P %*% (phi^abs(outer(1:K, 1:K, "-")))
    whole <- A + v / c2 * P
    e <- sum(diag(A))^2 / sum(diag(whole %*% whole))
    ke <- ke + e
    found <- found + e * (var(y) - v) / sh
  }
  left <- 4 * min(1, max(0, (14 - ke) / 8)) # the prior is let go from 6 df to 14
  sd2 <- max(c2 / 4 * max(left / 4, 1 / 4), (left * c2 + found) / (left + ke))
  nu <- left + ke
  lead <- sapply(side, function(S) max(which(sapply(S, function(f) f$top) ==
                                             max(sapply(S, function(f) f$top)))))
  A <- side[[1]][[lead[1]]]
  B <- side[[2]][[lead[2]]]
  pivot <- 0.6 * (v0 - A$a) / A$k
  tilt <- (0.025 * sqrt(sd2) / 0.025 * (abs(A$k) + abs(B$k)) / 2)^2
  day <- function(x) sd2 + tilt * (x - pivot)^2
  mix <- function(S, x) {
    off <- sapply(S, function(f) max(0, f$low - x, x - f$top))
    use <- if (min(off) > 0) off <= min(off) + 0.1 * x else off <= 0
    w <- sapply(S, function(f) 1 / (own(f) * h(f, x) + C(sum(use)) * day(x))) * use
    p <- w / sum(w)
    q <- p[use]
    list(p = p, R = sum(outer(q, q) * phi^abs(outer(seq_along(q), seq_along(q), "-"))),
         at = sum(p * sapply(S, function(f) f$a + f$k * x)),
         V = sum(p^2 * sapply(S, function(f) own(f) * h(f, x))))
  }
  M <- lapply(side, mix, x = x)
  D <- M[[2]]$at - M[[1]]$at
  hw <- sqrt(qt(.975, df)^2 * (M[[1]]$V + M[[2]]$V) + qt(.975, nu)^2 * day(x) * (M[[1]]$R + M[[2]]$R))
  # the max: where the mean line reaches the MVT, its weights those at that load; the set by search
  top <- function(S, f) {
    x <- (v0 - f$a) / f$k
    for (i in 1:50) {
      p <- mix(S, x)$p
      x <- (v0 - sum(p * sapply(S, function(f) f$a))) / sum(p * sapply(S, function(f) f$k))
    }
    p <- mix(S, x)$p
    R <- mix(S, x)$R
    a <- sum(p * sapply(S, function(f) f$a))
    k <- sum(p * sapply(S, function(f) f$k))
    g <- function(z) (a + k * z - v0)^2 -
      qt(.975, df)^2 * sum(p^2 * sapply(S, function(f) own(f) * h(f, z))) -
      qt(.975, nu)^2 * R * day(z)
    c(x, uniroot(g, c(x - 60, x), tol = 1e-12)$root, uniroot(g, c(x, x + 120), tol = 1e-12)$root)
  }
  P <- top(side[[1]], A)
  Q <- top(side[[2]], B)
  say("s2", s2)
  say("sd2", sd2)
  say("nu", nu)
  say("change", D)
  say("low", D - hw)
  say("high", D + hw)
  say("max", Q[1] - P[1])
  say("max_low", Q[1] - P[1] - sqrt((Q[1] - Q[2])^2 + (P[3] - P[1])^2))
  say("max_high", Q[1] - P[1] + sqrt((Q[3] - Q[1])^2 + (P[1] - P[2])^2))
}
