# SPDX-License-Identifier: GPL-3.0-or-later
# Agreement of two devices with several sets a session: Bland and Altman's figures (t.test for the
# bias), least products by the principal ratio of SDs (interval: Jolicoeur and Mosimann 1968), and
# the variance of the bias by sets or, where wider at 95 %, by sessions (sandwich of lm(d ~ 1)).
# Input: "SESSION FIRST SECOND" a line. Output: "name value".
e <- read.table(file("stdin"), col.names = c("s", "y", "x"))
say <- function(name, v) cat(sprintf("%s %.17g\n", name, v))
d <- e$y - e$x; n <- nrow(e)
test <- t.test(e$y, e$x, paired = TRUE)
say("bias", test$estimate); say("bias.low", test$conf.int[1]); say("bias.high", test$conf.int[2])
limit <- mean(d) + c(-1.96, 1.96) * sd(d)
say("limit.low", limit[1]); say("limit.high", limit[2])
half <- qt(0.975, n - 1) * sqrt(3 * var(d) / n)
say("limit.low.low", limit[1] - half); say("limit.high.high", limit[2] + half)
slope <- sd(e$y) / sd(e$x); r <- cor(e$x, e$y)
B <- qf(0.95, 1, n - 2) * (1 - r^2) / (n - 2)
say("slope", slope); say("intercept", mean(e$y) - slope * mean(e$x))
say("slope.low", slope * (sqrt(B + 1) - sqrt(B))); say("slope.high", slope * (sqrt(B + 1) + sqrt(B)))
m <- lm(d ~ 1)
X <- model.matrix(m)
scores <- rowsum(residuals(m) * X, e$s); k <- nrow(scores)
bread <- solve(crossprod(X))
clustered <- (bread %*% crossprod(scores) %*% bread * k / (k - 1))[1, 1]
plain <- vcov(m)[1, 1]
wider <- qt(0.975, k - 1) * sqrt(clustered) > qt(0.975, n - 1) * sqrt(plain)
say("used.variance", if (wider) clustered else plain)
say("used.df", if (wider) k - 1 else n - 1)
