# SPDX-License-Identifier: GPL-3.0-or-later
# kappa from an athlete's own ladders by lm: velocity on session, session x load, and the published
# curve less its chord (the lines of its sessions take up any chord). Input: "mvt 0 VALUE", then
# "session load velocity" a point; output: the 95 % interval.
rows <- strsplit(readLines(file("stdin")), " ")
mvt <- as.numeric(rows[[1]][3])
d <- as.data.frame(do.call(rbind, lapply(rows[-1], as.numeric))); names(d) <- c("s", "L", "v")
curve <- function(p) {
    sapply(p, function(one) uniroot(function(v) 147.94 - 104.182 * v + 18.5797 * v^2 - one,
                                    c(0, 2.6), tol = 1e-14)$root)
}
d$q <- NA
for (s in unique(d$s)) {
    own <- d$s == s
    co <- coef(lm(v ~ L, data = d[own, ]))
    p <- 100 * d$L[own] / ((mvt - co[[1]]) / co[[2]])
    d$q[own] <- curve(p) - (curve(30) + (curve(100) - curve(30)) * (p - 30) / 70)
}
ci <- confint(lm(v ~ 0 + factor(s) + factor(s):L + q, data = d))["q", ]
cat(sprintf("low %.17g\nhigh %.17g\n", ci[[1]], ci[[2]]))
