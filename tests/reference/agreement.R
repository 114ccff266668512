# SPDX-License-Identifier: GPL-3.0-or-later
# Agreement of two devices with several sets an athlete: Bland and Altman's limits by the variance
# components of aov (1999, 2007; intervals by variance recovery, Zou 2013), least products by the principal ratio of SDs (interval: Jolicoeur and Mosimann 1968), and
# the variance of the bias by sets or, where wider at 95 %, by athletes (sandwich of lm(d ~ 1)).
# Input: "ATHLETE FIRST SECOND" a line. Output: "name value".
e <- read.table(file("stdin"), col.names = c("s", "y", "x"))
say <- function(name, v) cat(sprintf("%s %.17g\n", name, v))
d <- e$y - e$x; n <- nrow(e)
say("bias", mean(d))
ms <- summary(aov(d ~ factor(e$s)))[[1]]; M <- ms[["Mean Sq"]]; f <- ms[["Df"]]
m <- as.vector(table(e$s)); m0 <- (n - sum(m^2) / n) / (length(m) - 1)
between <- max(0, (M[1] - M[2]) / m0); s <- sqrt(between + M[2])
say("between", between); say("within", M[2]); say("sd", s)
limit <- mean(d) + c(-1.96, 1.96) * s
say("limit.low", limit[1]); say("limit.high", limit[2])
part <- c(M[1] / m0, M[2] * (1 - 1 / m0))
low <- sqrt(sum(part) - sqrt(sum((part * (1 - f / qchisq(0.975, f)))^2)))
high <- sqrt(sum(part) + sqrt(sum((part * (f / qchisq(0.025, f) - 1))^2)))
ofBias <- qt(0.975, f[1])^2 * (between * sum(m^2) / n^2 + M[2] / n)
out <- sqrt(ofBias + 1.96^2 * (high - s)^2); inner <- sqrt(ofBias + 1.96^2 * (s - low)^2)
say("limit.low.low", limit[1] - out); say("limit.low.high", limit[1] + inner)
say("limit.high.low", limit[2] - inner); say("limit.high.high", limit[2] + out)
slope <- sd(e$y) / sd(e$x); r <- cor(e$x, e$y)
B <- qf(0.95, 1, n - 2) * (1 - r^2) / (n - 2)
say("slope", slope); say("intercept", mean(e$y) - slope * mean(e$x))
say("slope.low", slope * (sqrt(B + 1) - sqrt(B))); say("slope.high", slope * (sqrt(B + 1) + sqrt(B)))
fit <- lm(d ~ 1)
X <- model.matrix(fit)
scores <- rowsum(residuals(fit) * X, e$s); k <- nrow(scores)
bread <- solve(crossprod(X))
clustered <- (bread %*% crossprod(scores) %*% bread * k / (k - 1))[1, 1]
plain <- vcov(fit)[1, 1]
wider <- qt(0.975, k - 1) * sqrt(clustered) > qt(0.975, n - 1) * sqrt(plain)
say("used.variance", if (wider) clustered else plain)
say("used.df", if (wider) k - 1 else n - 1)
half <- if (wider) qt(0.975, k - 1) * sqrt(clustered) else qt(0.975, n - 1) * sqrt(plain)
say("bias.low", mean(d) - half); say("bias.high", mean(d) + half)
