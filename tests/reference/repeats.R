# SPDX-License-Identifier: GPL-3.0-or-later
# Typical error by aov and its chi-square interval; agreement and least products by their formulas.
# Input: rows "id person trial value"; output: "id.figure value".
d <- read.table(file("stdin"), colClasses = c("character", "integer", "integer", "numeric"),
                col.names = c("id", "person", "trial", "value"))
put <- function(id, name, v) cat(sprintf("%s.%s %.17g\n", id, name, v), sep = "")
for (id in unique(d$id)) {
  e <- d[d$id == id, ]
  table <- anova(aov(value ~ factor(person) + factor(trial), e))
  ms <- table["Residuals", "Mean Sq"]; df <- table["Residuals", "Df"]
  put(id, "te", sqrt(ms)); put(id, "df", df)
  put(id, "low", sqrt(ms * df / qchisq(0.975, df)))
  put(id, "high", sqrt(ms * df / qchisq(0.025, df)))
  put(id, "cv", 100 * sqrt(ms) / mean(e$value))
  logs <- anova(aov(log(value) ~ factor(person) + factor(trial), e))["Residuals", "Mean Sq"]
  put(id, "cvLog", 100 * (exp(sqrt(logs)) - 1))
  if (length(unique(e$trial)) == 2) {
    w <- reshape(e[, -1], idvar = "person", timevar = "trial", direction = "wide")
    y <- w$value.1; x <- w$value.2; n <- length(x)
    put(id, "bias", mean(y - x)); put(id, "sd", sd(y - x))
    ci <- t.test(y, x, paired = TRUE)$conf.int
    put(id, "biasLow", ci[1]); put(id, "biasHigh", ci[2])
    put(id, "limitLow", mean(y - x) - 1.96 * sd(y - x))
    half <- qt(0.975, n - 1) * sqrt(3 * var(y - x) / n)
    put(id, "limitLowHigh", mean(y - x) - 1.96 * sd(y - x) + half)
    put(id, "limitHighLow", mean(y - x) + 1.96 * sd(y - x) - half)
    r <- cor(x, y); put(id, "r", r)
    b <- sign(r) * sd(y) / sd(x); put(id, "slope", b); put(id, "intercept", mean(y) - b * mean(x))
    B <- qf(0.95, 1, n - 2) * (1 - r^2) / (n - 2)
    ends <- sort(b * (sqrt(B + 1) + c(-1, 1) * sqrt(B)))
    put(id, "slopeLow", ends[1]); put(id, "slopeHigh", ends[2])
    at <- sort(mean(y) - ends * mean(x))
    put(id, "interceptLow", at[1]); put(id, "interceptHigh", at[2])
  }
}
