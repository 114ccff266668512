# SPDX-License-Identifier: GPL-3.0-or-later
# Every figure of a straight line from base R. Input: rows "id x y"; output: "id.figure value".
d <- read.table(file("stdin"), colClasses = c("character", "numeric", "numeric"),
                col.names = c("id", "x", "y"))
put <- function(id, name, v) cat(sprintf("%s.%s %.17g\n", id, name, v), sep = "")
level <- 0.95
for (id in unique(d$id)) {
  e <- d[d$id == id, ]
  x <- e$x; y <- e$y; n <- length(x)
  m <- lm(y ~ x)
  s <- suppressWarnings(summary(m))
  co <- s$coefficients
  put(id, "intercept", co[1, 1]); put(id, "interceptSe", co[1, 2])
  put(id, "slope", co[2, 1]); put(id, "slopeSe", co[2, 2])
  put(id, "s", s$sigma); put(id, "r2", s$r.squared); put(id, "rss", sum(residuals(m)^2))
  ci <- confint(m, level = level)
  put(id, "interceptLow", ci[1, 1]); put(id, "interceptHigh", ci[1, 2])
  put(id, "slopeLow", ci[2, 1]); put(id, "slopeHigh", ci[2, 2])
  ends <- range(x)
  at <- c(mean(x), ends[1] - 0.3 * diff(ends), ends[2] + 0.2 * diff(ends))
  for (k in seq_along(at)) {
    # Predicted on centred loads: predict() on raw loads of a million loses digits itself.
    xc <- x - mean(x); mc <- lm(y ~ xc)
    nd <- data.frame(xc = at[k] - mean(x))
    a <- predict(mc, nd, interval = "confidence", level = level)
    b <- predict(mc, nd, interval = "prediction", level = level)
    put(id, paste0("at", k), at[k])
    put(id, paste0("meanLow", k), a[2]); put(id, paste0("meanHigh", k), a[3])
    put(id, paste0("predictionLow", k), b[2]); put(id, paste0("predictionHigh", k), b[3])
    se <- predict(mc, nd, se.fit = TRUE)$se.fit
    put(id, paste0("bandHigh", k), a[1] + sqrt(2 * qf(level, 2, n - 2)) * se)
    put(id, paste0("mean4High", k), a[1] + qt(0.975, n - 2) * sqrt(se^2 + s$sigma^2 / 4))
  }
  h <- hatvalues(m); r <- suppressWarnings(rstudent(m)); ck <- suppressWarnings(cooks.distance(m))
  for (i in seq_len(n)) {
    put(id, paste0("residual", i), residuals(lm(y ~ I(x - mean(x))))[i])
    put(id, paste0("leverage", i), h[i])
    put(id, paste0("student", i), r[i]); put(id, paste0("cook", i), ck[i])
  }
  if (length(unique(x)) > 3 && n > 3) {
    # Centred in R: the quadratic coefficient and its t do not change, R's digits do.
    xc <- x - mean(x)
    q <- summary(lm(y ~ xc + I(xc^2)))$coefficients
    put(id, "bend", q[3, 1]); put(id, "bendT", q[3, 3]); put(id, "bendP", q[3, 4])
  }
}
