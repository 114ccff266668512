# SPDX-License-Identifier: GPL-3.0-or-later
# Shrunken lines of one athlete's sessions by nlme::lme, for tst_history. Standard input: session
# load velocity. Argument: the MVT.
suppressPackageStartupMessages(library(nlme))
data <- read.table(file("stdin"), col.names = c("session", "load", "velocity"))
mvt <- as.numeric(commandArgs(trailingOnly = TRUE)[1])
fit <- lme(velocity ~ load, random = ~ load | session, data = data, method = "REML",
           control = lmeControl(msMaxIter = 500, maxIter = 500, msTol = 1e-10, tolerance = 1e-10))
lines <- coef(fit)
for (s in rownames(lines)) {
    a <- lines[s, 1]; b <- lines[s, 2]
    cat(sprintf("%s intercept %.17g\n%s slope %.17g\n%s onerm %.17g\n", s, a, s, b, s, (mvt - a) / b))
}
