# SPDX-License-Identifier: GPL-3.0-or-later
# Prediction of one new point on another day, for tst_plan: variance of a new observation by lm's
# own figures and its t, plus twice the day variance with the t of its own df (Banerjee 1960).
x <- c(40, 60, 80, 100, 110, 120)
y <- c(1.22, 1.00, 0.79, 0.57, 0.47, 0.35)
fit <- lm(y ~ x)
for (load in c(60, 100)) for (day in list(c(0.02, Inf), c(0.03, 3))) {
    p <- predict(fit, data.frame(x = load), se.fit = TRUE)
    own <- p$residual.scale^2 + p$se.fit^2
    half <- sqrt(qt(0.975, p$df)^2 * own + qt(0.975, day[2])^2 * 2 * day[1]^2)
    cat(sprintf("low %g %g %.17g\nhigh %g %g %.17g\n", load, day[1], p$fit - half, load, day[1], p$fit + half))
}
