# SPDX-License-Identifier: GPL-3.0-or-later
# Best designs by trying every multiset; for tst_design. Written from the formulas of Fieller 1954
# and of simple regression, apart from the program's own source.
multisets <- function(m, k) { # k of 1..m with repeats, one a row
    if (k == 1) return(matrix(seq_len(m), ncol = 1))
    do.call(rbind, lapply(seq_len(m), function(first) {
        rest <- multisets(m - first + 1, k - 1) + first - 1
        cbind(first, rest)
    }))
}
c4 <- function(df) sqrt(2 / df) * gamma((df + 1) / 2) / gamma(df / 2)
fieller <- function(x, a, b, y, u, s, df, shrink) {
    if (length(unique(x)) < 2) return(Inf)
    t <- qt(0.975, df); s <- s * shrink
    n <- length(x); m <- mean(x); S <- sum((x - m)^2)
    g <- t^2 * s^2 / (b^2 * S)
    if (g >= 1) return(Inf)
    d <- (y - (a + b * m)) / b
    (t / abs(b)) * sqrt((1 - g) * (s^2 / n + u^2) + s^2 * d^2 / S) / (1 - g)
}
change <- function(x, at, x1, s, df, shrink) {
    if (length(unique(x)) < 2) return(Inf)
    se <- function(z, at) 1 / length(z) + (at - mean(z))^2 / sum((z - mean(z))^2)
    max(sapply(at, function(l) qt(0.975, df) * s * shrink * sqrt(se(x, l) + se(x1, l))))
}
cases <- list(gym = seq(40, 100, by = 10), odd = c(20, 22.5, 31, 47, 60.8, 61, 88), light = c(20, 22.5, 25))
for (name in names(cases)) for (k in 2:6) {
    x <- cases[[name]]
    all <- multisets(length(x), k)
    sets <- matrix(x[all], ncol = k)
    known <- apply(sets, 1, fieller, a = 1.6, b = -0.011, y = 0.17, u = 0, s = 0.02, df = Inf, shrink = 1)
    cat(sprintf("%s known %d %.17g\n", name, k, min(known)))
    if (k > 2) {
        own <- apply(sets, 1, fieller, a = 1.6, b = -0.011, y = 0.17, u = 0.02, s = 0.01,
                     df = k - 2, shrink = c4(k - 2))
        cat(sprintf("%s own %d %.17g\n", name, k, min(own)))
    }
    x1 <- c(40, 50, 60, 70, 80)
    ch <- apply(sets, 1, change, at = c(45, 70), x1 = x1, s = 0.02, df = Inf, shrink = 1)
    cat(sprintf("%s change %d %.17g\n", name, k, min(ch)))
}
# expected sqrt((nu + chi2_m)/(nu + m)) by integrate()
for (nu in c(3, 12)) for (m in c(1, 4))
    cat(sprintf("ratio %d %d %.17g\n", nu, m,
                integrate(function(q) sqrt((nu + q) / (nu + m)) * dchisq(q, m), 0, Inf, rel.tol = 1e-10)$value))
