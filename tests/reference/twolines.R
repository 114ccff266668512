# SPDX-License-Identifier: GPL-3.0-or-later
# Two lines in one model, by lm and plain algebra. Input: rows "id g x y" (g 1 or 2); output:
# "id.figure value".
d <- read.table(file("stdin"), colClasses = c("character", "numeric", "numeric", "numeric"),
                col.names = c("id", "g", "x", "y"))
put <- function(id, name, v) cat(sprintf("%s.%s %.17g\n", id, name, v), sep = "")
level <- 0.95
for (id in unique(d$id)) {
  e <- d[d$id == id, ]
  x <- e$x; y <- e$y; G <- e$g - 1
  m <- lm(y ~ x + G + G:x)
  co <- summary(m)$coefficients; V <- vcov(m)
  df <- m$df.residual
  cc <- coef(m)[["G"]]; dd <- coef(m)[["x:G"]]
  put(id, "c", cc); put(id, "d", dd)
  put(id, "cSe", co["G", 2]); put(id, "dSe", co["x:G", 2])
  put(id, "s2", summary(m)$sigma^2); put(id, "df", df)
  a <- anova(lm(y ~ x + G), m); put(id, "parallelF", a$F[2]); put(id, "parallelP", a$`Pr(>F)`[2])
  a <- anova(lm(y ~ x), m); put(id, "coincidentF", a$F[2]); put(id, "coincidentP", a$`Pr(>F)`[2])
  Vaa <- V["G", "G"]; Vab <- V["G", "x:G"]; Vbb <- V["x:G", "x:G"]
  l1 <- lm(y ~ x, subset = G == 0); l2 <- lm(y ~ x, subset = G == 1)
  s1 <- summary(l1)$sigma^2; s2 <- summary(l2)$sigma^2
  f1 <- l1$df.residual; f2 <- l2$df.residual
  ratio <- max(s1, s2) / min(s1, s2)
  p <- pf(ratio, if (s1 > s2) f1 else f2, if (s1 > s2) f2 else f1, lower.tail = FALSE)
  put(id, "ratioF", ratio); put(id, "ratioP", 2 * min(p, 1 - p))
  spread <- function(k) list(n = length(k), m = mean(k), ss = sum((k - mean(k))^2))
  l1 <- spread(x[G == 0]); l2 <- spread(x[G == 1])
  h <- function(l, at) 1 / l$n + (at - l$m)^2 / l$ss
  T <- qt((1 + level) / 2, df)
  welch <- function(at) {
    v1 <- s1 * h(l1, at); v2 <- s2 * h(l2, at)
    list(v = v1 + v2, df = (v1 + v2)^2 / (v1^2 / f1 + v2^2 / f2), v1 = v1, v2 = v2)
  }
  t2 <- function(df) qt((1 + level) / 2, df)^2
  F2 <- function(df) 2 * qf(level, 2, df)
  # Squared half-width: Satterthwaite's, but no less than one line's own part on its own df.
  floored <- function(w, crit)
    pmax(crit(w$df) * w$v, crit(f1) * w$v1, crit(f2) * w$v2)
  for (k in 1:4) {
    at <- c(min(x) - 10, mean(x), max(x), max(x) + 40)[k]
    put(id, paste0("at", k), at)
    D <- cc + dd * at
    v <- summary(m)$sigma^2 * (h(l1, at) + h(l2, at))
    put(id, paste0("D", k), D); put(id, paste0("var", k), v)
    put(id, paste0("low", k), D - T * sqrt(v)); put(id, paste0("high", k), D + T * sqrt(v))
    put(id, paste0("bandHigh", k), D + sqrt(2 * qf(level, 2, df) * v))
    w <- welch(at)
    put(id, paste0("welchVar", k), w$v); put(id, paste0("welchDf", k), w$df)
    put(id, paste0("welchLow", k), D - sqrt(floored(w, t2)))
    put(id, paste0("welchBandLow", k), D - sqrt(floored(w, F2)))
    # Day-to-day noise 2 x 0.015^2 on 7 df, added by Satterthwaite.
    n <- 2 * 0.015^2
    put(id, paste0("noisyDf", k), (v + n)^2 / (v^2 / df + n^2 / 7))
    put(id, paste0("noisyWelchDf", k), (w$v + n)^2 / (w$v^2 / w$df + n^2 / 7))
    # Never narrower than without it.
    noisy <- function(lines, v, df, crit)
      sqrt(max(lines, crit((v + n)^2 / (v^2 / df + n^2 / 7)) * (v + n)))
    put(id, paste0("noisyHigh", k), D + noisy(T^2 * v, v, df, t2))
    put(id, paste0("noisyBandHigh", k), D + noisy(F2(df) * v, v, df, F2))
    put(id, paste0("noisyWelchHigh", k), D + noisy(floored(w, t2), w$v, w$df, t2))
  }
  # Johnson and Neyman's quadratic, about the mean load so that its roots keep their digits.
  mid <- mean(x)
  Da <- cc + dd * mid; va <- Vaa + 2 * mid * Vab + mid^2 * Vbb; vab <- Vab + mid * Vbb
  for (kind in c("point", "band")) {
    q <- if (kind == "point") T^2 else 2 * qf(level, 2, df)
    A <- dd^2 - q * Vbb; B <- 2 * (Da * dd - q * vab); C <- Da^2 - q * va
    disc <- B^2 - 4 * A * C
    put(id, paste0(kind, "A"), A); put(id, paste0(kind, "Disc"), disc)
    if (disc > 0) {
      r <- sort((-B + c(-1, 1) * sqrt(disc)) / (2 * A)) + mid
      put(id, paste0(kind, "Root1"), r[1]); put(id, paste0(kind, "Root2"), r[2])
    }
  }
  # Fieller's interval of the crossing -c/d, with the covariance of c and d.
  g <- T^2 * Vbb / dd^2
  put(id, "crossing", -cc / dd); put(id, "crossingG", g)
  # Separate variances: sign changes of |D| less its half-width between 2000 loads of a wide window.
  at <- seq(mid - 400, mid + 400, length.out = 2001)
  f <- function(k) { w <- welch(k); abs(cc + dd * k) / sqrt(w$v) - sqrt(floored(w, t2) / w$v) }
  v <- f(at); k <- which(diff(sign(v)) != 0)
  put(id, "welchRoots", length(k))
  for (i in seq_along(k))
    put(id, paste0("welchRoot", i), uniroot(f, at[k[i] + 0:1], tol = 1e-12)$root)
}
