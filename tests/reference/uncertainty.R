# SPDX-License-Identifier: GPL-3.0-or-later
# The parts of section 'When the world is not the model' by other means than the program's: roots by
# polyroot and uniroot, Dunnett's integral by integrate(), chances by a plain sum.
# Standard input, one record a line, ID first of its figures:
#   moving ID y s2 s2_df level tilt pivot day_df y_var y_df level load1 v1 load2 v2 ...
#   imbens ID span level
#   dunnett ID df level l1 l2 ...
#   chance ID effect scatter scatter_df prior prior_df expected span
#   day ID published others_pairs half within own_pairs half within
#   likely ID mean own_pairs half within days square within days square within ...
# Standard output: "ID.name value".
say <- function(id, name, v) cat(sprintf("%s.%s %.17g\n", id, name, v))
# Dunnett's integrals by integrate(), cut where a load's probability steps from 1 to 0.
pieces <- function(f, at, tol = 1e-12) {
    at <- sort(unique(at))
    sum(mapply(function(a, b) integrate(f, a, b, rel.tol = tol, abs.tol = 1e-13,
                                        subdivisions = 2000L)$value, head(at, -1), tail(at, -1)))
}
given <- function(d, l) {
    steps <- unlist(lapply(unique(l), function(k) {
        w <- sqrt(1 - k^2) / k
        c(d / k - 6 * w, d / k - 2 * w, d / k, d / k + 2 * w, d / k + 6 * w)
    }))
    steps <- steps[is.finite(steps) & abs(steps) < 9]
    f <- function(u) {
        p <- dnorm(u)
        for (k in l) p <- p * (pnorm((d + k * u) / sqrt(1 - k^2)) - pnorm((-d + k * u) / sqrt(1 - k^2)))
        p
    }
    pieces(f, c(-9, -steps, 0, steps, 9))
}
inside <- function(d, l, nu) {
    if (is.infinite(nu)) return(given(d, l))
    q <- qchisq(c(1e-13, 0.01, 0.5, 0.99), nu)
    s <- sqrt(c(q, qchisq(1e-13, nu, lower.tail = FALSE)) / nu)
    pieces(function(s) dchisq(nu * s^2, nu) * 2 * nu * s * sapply(d * s, given, l = l), s, 1e-10)
}
imbens <- function(span, level) {
    z <- qnorm((1 + level) / 2)
    uniroot(function(f) pnorm(z * f + z * span) - pnorm(-z * f) - level, c(0.3, 1.1),
            tol = 1e-15)$root
}
for (row in strsplit(readLines(file("stdin")), " ")) {
    id <- row[2]; v <- as.numeric(row[-(1:2)])
    if (row[1] == "moving") {
        p <- matrix(v[-(1:10)], 2); x <- p[1, ] - mean(p[1, ]); m <- lm(p[2, ] ~ x)
        a <- coef(m)[[1]]; b <- coef(m)[[2]]; t <- function(df) qt((1 + v[10]) / 2, df)^2
        e <- v[6] - mean(p[1, ]); Y <- v[1] - a
        constant <- Y^2 - t(v[3]) * v[2] / length(x) - t(v[7]) * (v[4] + v[5] * e^2) -
            (if (v[8] > 0) t(v[9]) * v[8] else 0)
        A <- b^2 - t(v[3]) * v[2] / sum(x^2) - t(v[7]) * v[5]
        r <- sort(Re(polyroot(c(constant, -2 * b * Y + 2 * t(v[7]) * v[5] * e, A))))
        say(id, "a", A); say(id, "low", r[1] + mean(p[1, ])); say(id, "high", r[2] + mean(p[1, ]))
    } else if (row[1] == "imbens") {
        say(id, "f", imbens(v[1], v[2]))
    } else if (row[1] == "dunnett") {
        say(id, "d", uniroot(function(d) inside(d, v[-(1:2)], v[1]) - v[2], c(1.5, 12),
                             tol = 1e-11)$root)
    } else if (row[1] == "chance") {
        half <- function(s2, level) sqrt(qt((1 + level) / 2, v[3])^2 * s2 +
                                         qt((1 + level) / 2, v[5])^2 * v[4])
        s2 <- if (is.infinite(v[3])) v[2] else v[2] * qchisq((1:15 - 0.5) / 15, v[3]) / v[3]
        se <- sqrt(v[2] + v[6])
        reach <- sapply(half(s2, 0.95), function(h) h * (if (v[7] > 0) imbens(v[7] / h, 0.95) else 1) +
                                                     v[7] / 2)
        room <- v[1] - half(s2, 0.90) - v[7] / 2
        say(id, "change", mean(pnorm((v[1] - reach) / se) + pnorm((-v[1] - reach) / se)))
        say(id, "held", mean(ifelse(room > 0, pnorm(room / se) - pnorm(-room / se), 0)))
    } else if (row[1] == "day") {
        others <- if (v[2] > 0) max(0, (v[3] - v[4]) / v[2]) else 0
        centre <- (4 * (0.84 * v[1])^2 + 0.7 * v[2] * others) / (4 + v[2])
        expected <- (4 * v[1]^2 + v[2] * others) / (4 + v[2])
        M <- if (v[5] > 0) v[6] / v[5] else 0; w <- if (v[5] > 0) v[7] / v[5] else 0
        ke <- if (v[5] > 0) v[5] * (centre / (centre + w))^2 else 0
        p <- approx(c(0, 6, 14), c(4, 4, 0), ke, rule = 2)$y # df of the prior
        floor <- centre * max(p, 1) / 16
        with <- function(c2) max(floor, weighted.mean(c(c2, M - w), c(p, ke)))
        say(id, "variance", with(centre)); say(id, "df", p + ke); say(id, "expected", with(expected))
    } else if (row[1] == "likely") {
        # log SD normal, times chi^2 densities of the sums of squares, by integrate()
        spreads <- if (length(v) > 4) matrix(v[-(1:4)], 3) else matrix(0, 3, 0)
        nearly <- function(q, m, f) log(f / m) + dchisq(q * f / m, f, log = TRUE)
        height <- function(u) {
            s2 <- exp(2 * u)
            h <- dnorm(u, log(v[1]) - 0.45^2 / 2, 0.45, log = TRUE)
            if (v[2] > 0) h <- h + nearly(v[3], v[2] * s2 + v[4], v[2])
            for (j in seq_len(ncol(spreads))) {
                K <- spreads[1, j]; w <- spreads[3, j]
                P <- diag(K) - 1 / K
                S <- P %*% (s2 * 0.5^abs(outer(1:K, 1:K, "-")) + w * diag(K))
                m <- sum(diag(S))
                h <- h + nearly((K - 1) * spreads[2, j], m, m^2 / sum(diag(S %*% S)))
            }
            h
        }
        at <- optimize(height, log(v[1]) + c(-2.5, 2.5), maximum = TRUE)
        moment <- function(k) {
            pieces(function(u) sapply(u, function(u) u^k * exp(height(u) - at$objective)),
                   c(-3.2, -1, -0.5, 0, 0.5, 2.6) + log(v[1]), 1e-10)
        }
        all <- moment(0); mean <- moment(1) / all
        say(id, "median", exp(mean)); say(id, "sd", sqrt(moment(2) / all - mean^2))
    }
}
