# SPDX-License-Identifier: GPL-3.0-or-later
# Lines and parabolas with prediction intervals by lm, for tst_parabola and tst_squadrelation.
# Standard input: x y, one pair a line. Arguments: the x at which to predict.
data <- read.table(file("stdin"), col.names = c("x", "y"))
at <- as.numeric(commandArgs(trailingOnly = TRUE))
for (degree in 1:2) {
    fit <- if (degree == 1) lm(y ~ x, data) else lm(y ~ x + I(x^2), data)
    for (i in seq_along(coef(fit))) cat(sprintf("%d c%d %.17g\n", degree, i - 1, coef(fit)[i]))
    cat(sprintf("%d s %.17g\n%d r2 %.17g\n", degree, summary(fit)$sigma, degree, summary(fit)$r.squared))
    p <- predict(fit, data.frame(x = at), interval = "prediction")
    for (i in seq_along(at))
        cat(sprintf("%d low %d %.17g\n%d high %d %.17g\n", degree, i, p[i, "lwr"], degree, i, p[i, "upr"]))
}
