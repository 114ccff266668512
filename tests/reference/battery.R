# SPDX-License-Identifier: GPL-3.0-or-later
# A test before and after with repeat tests: level; standard input: lines "first second" of repeats, then
# "before after".
d <- as.matrix(read.table(file("stdin")))
level <- as.numeric(commandArgs(TRUE)[1])
n <- nrow(d)
r <- d[-n, , drop = FALSE]
te <- sd(r[, 2] - r[, 1]) / sqrt(2)
df <- nrow(r) - 1
change <- d[n, 2] - d[n, 1]
half <- qt((1 + level) / 2, df) * sqrt(2) * te
cat(sprintf("te %.17g\ndf %.17g\nlow %.17g\nhigh %.17g\npercent %.17g\n", te, df, change - half,
            change + half, 100 * change / d[n, 1]))
