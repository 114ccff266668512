# SPDX-License-Identifier: GPL-3.0-or-later
# Fieller's set for the x at which a line reaches y, by the plain quadratic
# (b^2 - t^2 Vb) q^2 - 2 b Y q + Y^2 - t^2 (s^2/n + u^2) <= 0, q = x - mean(x), solved by
# polyroot. Input: rows "id x y"; output "id.row.figure value"; ends are given from mean(x).
d <- read.table(file("stdin"), colClasses = c("character", "numeric", "numeric"),
                col.names = c("id", "x", "y"))
put <- function(id, name, v) cat(sprintf("%s.%s %.17g\n", id, name, v), sep = "")
for (id in unique(d$id)) {
  e <- d[d$id == id, ]
  x <- e$x - mean(e$x)
  m <- lm(e$y ~ x)
  s2 <- sum(residuals(m)^2) / m$df.residual
  b <- coef(m)[[2]]
  t2 <- qt(0.975, m$df.residual)^2
  rows <- list(mean = c(0.17, 0), single = c(0.17, s2), spread = c(0.3, 0.04^2),
               low = c(min(e$y) - 0.1, 0))
  for (row in names(rows)) {
    y <- rows[[row]][1]; u2 <- rows[[row]][2]
    Y <- y - mean(e$y)
    A <- b^2 - t2 * s2 / sum(x^2)
    C <- Y^2 - t2 * (s2 / length(x) + u2)
    disc <- b^2 * Y^2 - A * C
    name <- paste0(id, ".", row)
    put(name, "y", y); put(name, "y2", u2)
    put(name, "d", Y / b); put(name, "g", t2 * s2 / sum(x^2) / b^2)
    shape <- if (A > 0) 0 else if (disc >= 0) 1 else 2
    put(name, "shape", shape)
    if (shape < 2) {
      ends <- sort((b * Y + c(-1, 1) * sqrt(disc)) / A)
      put(name, "low", ends[1]); put(name, "high", ends[2])
    }
  }
}
