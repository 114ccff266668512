# SPDX-License-Identifier: GPL-3.0-or-later
# Day-to-day variance of a whole line from repeat tests, by moments: mean D^2 at the load where D is
# known best, less what the scatter about the lines explains, halved. Also the typical error by load
# (Hopkins 2000).
# Standard input: "PAIR SESSION(1|2) LOAD VELOCITY" a line. Standard output: "name value".
d <- read.table(file("stdin"), col.names = c("P", "S", "L", "v"))
say <- function(name, value) cat(name, " ", sprintf("%.17g", value), "\n", sep = "")
parts <- t(sapply(split(d, d$P), function(one) {
    one$G <- as.numeric(one$S == 2)
    m <- lm(v ~ L * G, data = one)
    V <- vcov(m)
    x <- -V["G", "L:G"] / V["L:G", "L:G"] # Var D(x) is least here
    k <- summary(lm(v ~ G * I(L - x), data = one))$coefficients["G", ]
    c(squared = k[[1]]^2, within = k[[2]]^2, df = df.residual(m))
}))
n <- nrow(parts)
M <- mean(parts[, "squared"]); W <- mean(parts[, "within"])
say("variance", max(0, (M - W) / 2))
# df: 2 mean^2 / variance of the estimate (Satterthwaite 1946).
spread <- 2 * M^2 / n + sum(2 * parts[, "within"]^2 / parts[, "df"]) / n^2
say("df", if (M > W) 2 * (M - W)^2 / spread else n)
for (load in sort(unique(d$L))) {
    at <- d[d$L == load, ]
    first <- tapply(at$v[at$S == 1], at$P[at$S == 1], mean)
    second <- tapply(at$v[at$S == 2], at$P[at$S == 2], mean)
    both <- intersect(names(first), names(second))
    if (length(both) < 2) next
    change <- second[both] - first[both]
    te <- sd(change) / sqrt(2); df <- length(both) - 1
    at_load <- function(name) paste0("at", load, ".", name)
    say(at_load("te"), te)
    say(at_load("df"), df)
    say(at_load("low"), te * sqrt(df / qchisq(0.975, df)))
    say(at_load("high"), te * sqrt(df / qchisq(0.025, df)))
    say(at_load("cv"), 100 * te / mean(c(first[both], second[both])))
}
