# SPDX-License-Identifier: GPL-3.0-or-later
# Every figure of a profile and of a comparison, worked out anew with R's own functions (lm, vcov,
# confint, anova, hatvalues, rstudent, cooks.distance, var.test; roots by polyroot, or by uniroot
# where no polynomial is).
# Standard input, one record a line:
#   log ID level mvt mvt_sd te te_df variances bias bias_variance bias_df [slope_cv]
# slope_cv: SD from day to day of a slope as a share of it, about 60 % of the earlier 1RM.
#   point ID session(1|2) load velocity
#   at ID load
# Standard output: "ID.name value".
options(warn = -1)

say <- function(id, name, value) {
    if (length(value) == 0 || is.null(value) || is.na(value)) value <- NA
    cat(id, ".", name, " ", if (is.na(value)) "NA" else sprintf("%.17g", value), "\n", sep = "")
}

real_roots <- function(constant, linear, square) {
    z <- polyroot(c(constant, linear, square))
    if (any(abs(Im(z)) > 1e-6 * (1 + Mod(z)))) return(numeric(0))
    sort(Re(z))
}

# Variance and df of a sum of independent variances (Satterthwaite 1946).
add <- function(values, dfs) {
    keep <- values > 0
    if (!any(keep)) return(c(0, max(dfs)))
    v <- sum(values[keep])
    denominator <- sum(values[keep]^2 / dfs[keep])
    c(v, if (denominator > 0) v^2 / denominator else Inf)
}

# Loads at which |y - a - b (L - centre)| is within t of its standard error: Fieller's set for the
# load where the line reaches y. NULL where it is not an interval.
# tilt: squared half-width a squared kg away from the load pivot.
fieller <- function(a, b, V, y, extra, df, level, centre, tilt = 0, pivot = 0) {
    t2 <- qt((1 + level) / 2, df)^2
    A <- b^2 - t2 * V[2, 2] - tilt
    if (A <= 0) return(NULL)
    p <- pivot - centre
    r <- real_roots((y - a)^2 - t2 * (V[1, 1] + extra) - tilt * p^2,
                    -2 * b * (y - a) - 2 * t2 * V[1, 2] + 2 * tilt * p, A)
    if (length(r) == 0) r <- rep(b * (y - a) / A + t2 * V[1, 2] / A, 2)
    r + centre
}

one_profile <- function(id, which, d, level, mvt, mvt_sd) {
    put <- function(name, value) say(id, paste0(which, ".", name), value)
    m <- lm(v ~ L, data = d)
    s <- summary(m)
    put("n", nrow(d)); put("distinct", length(unique(d$L)))
    put("v0", coef(m)[[1]]); put("slope", coef(m)[[2]])
    put("v0_se", sqrt(vcov(m)[1, 1])); put("slope_se", sqrt(vcov(m)[2, 2]))
    put("residual_sd", sigma(m)); put("df", df.residual(m)); put("r2", s$r.squared)
    l0 <- -coef(m)[[1]] / coef(m)[[2]]
    put("l0", l0); put("area", integrate(function(x) coef(m)[[1]] + coef(m)[[2]] * x, 0, l0,
                                         rel.tol = 1e-13)$value)
    h <- hatvalues(m); st <- rstudent(m); ck <- cooks.distance(m); e <- resid(m)
    for (i in seq_len(nrow(d))) {
        at_end <- abs(1 - h[[i]]) < 1e-10
        put(paste0("point", i, ".residual"), if (at_end) 0 else e[[i]])
        put(paste0("point", i, ".leverage"), h[[i]])
        put(paste0("point", i, ".studentised"),
            if (at_end || df.residual(m) < 2 || !is.finite(st[[i]])) NA else st[[i]])
        put(paste0("point", i, ".cook"), if (at_end || !is.finite(ck[[i]])) NA else ck[[i]])
    }
    if (length(unique(d$L)) >= 4 && nrow(d) > 3) {
        q <- summary(lm(v ~ poly(L, 2), data = d))$coefficients
        put("curvature.t", q[3, 3]); put("curvature.p", q[3, 4])
    }
    if (coef(m)[[2]] < 0 && coef(m)[[1]] > mvt) {
        estimate <- (mvt - coef(m)[[1]]) / coef(m)[[2]]
        put("one_rm", estimate); put("reach", max(d$L) / estimate)
        put("g", qt((1 + level) / 2, df.residual(m))^2 / s$coefficients[2, 3]^2)
        centre <- mean(d$L)
        mc <- lm(v ~ I(L - centre), data = d)
        for (u in c(0, mvt_sd)) {
            f <- fieller(coef(mc)[[1]], coef(mc)[[2]], vcov(mc), mvt, u^2, df.residual(mc), level,
                         centre)
            name <- if (u == 0) "" else "with_mvt_"
            put(paste0(name, "low"), if (is.null(f)) NA else f[1])
            put(paste0(name, "high"), if (is.null(f)) NA else f[2])
        }
    }
}

# Pieces of the load axis on which the lines differ, each on its side of the common loads.
pieces <- function(id, cuts, breaks, holds, sign_at, low, high) {
    ends <- sort(unique(c(cuts, breaks[breaks > min(cuts) & breaks < max(cuts)])))
    n <- 0
    for (i in seq_along(ends)[-1]) {
        middle <- (ends[i - 1] + ends[i]) / 2
        if (!holds(middle)) next
        n <- n + 1
        say(id, paste0("differs", n, ".from"), ends[i - 1])
        say(id, paste0("differs", n, ".to"), ends[i])
        say(id, paste0("differs", n, ".sign"), sign_at(middle))
        say(id, paste0("differs", n, ".extrapolated"), as.numeric(middle < low || middle > high))
    }
    say(id, "differs", n)
}

compare <- function(id, d, p, checks) {
    level <- p$level; pooled <- p$variances == "pooled"
    d$v[d$S == 2] <- d$v[d$S == 2] - p$bias
    one <- d[d$S == 1, ]; two <- d[d$S == 2, ]
    d$G <- as.numeric(d$S == 2)
    joint <- lm(v ~ L * G, data = d)
    df <- df.residual(joint)
    m1 <- lm(v ~ L, data = one); m2 <- lm(v ~ L, data = two)
    V1 <- vcov(m1); V2 <- vcov(m2); df1 <- df.residual(m1); df2 <- df.residual(m2)
    say(id, "residual_sd", sigma(joint)); say(id, "df", df)
    a <- anova(lm(v ~ L + G, data = d), joint)
    say(id, "parallel.f", a$F[2]); say(id, "parallel.p", a$`Pr(>F)`[2])
    say(id, "parallel.df1", a$Df[2]); say(id, "parallel.df2", a$Res.Df[2])
    a <- anova(lm(v ~ L, data = d), joint)
    say(id, "coincident.f", a$F[2]); say(id, "coincident.p", a$`Pr(>F)`[2])
    say(id, "coincident.df1", a$Df[2]); say(id, "coincident.df2", a$Res.Df[2])
    larger <- if (sigma(m1) > sigma(m2)) list(m1, m2) else list(m2, m1)
    ratio <- var.test(larger[[1]], larger[[2]])
    say(id, "ratio.f", ratio$statistic[[1]]); say(id, "ratio.p", ratio$p.value)

    tilt <- (p$slope_cv * (abs(coef(m1)[[2]]) + abs(coef(m2)[[2]])) / 2)^2
    pivot <- 0.6 * (p$mvt - coef(m1)[[1]]) / coef(m1)[[2]]
    # D at x: the coefficient of G where the load is counted from x.
    D <- function(x) {
        if (pooled) {
            m <- summary(lm(v ~ G * I(L - x), data = d))$coefficients
            return(list(d = m["G", 1], se = m["G", 2], df = df, parts = NULL))
        }
        s1 <- summary(lm(v ~ I(L - x), data = one)); s2 <- summary(lm(v ~ I(L - x), data = two))
        v <- add(c(s1$coefficients[1, 2]^2, s2$coefficients[1, 2]^2), c(s1$df[2], s2$df[2]))
        list(d = s2$coefficients[1, 1] - s1$coefficients[1, 1], se = sqrt(v[1]), df = v[2],
             parts = list(c(s1$coefficients[1, 2]^2, s1$df[2]), c(s2$coefficients[1, 2]^2, s2$df[2])))
    }
    # Squared half-width by crit(df) times the variance; never less than one of two lines of separate
    # variances gives alone.
    squared <- function(r, crit) {
        all <- c(list(c(r$se^2, r$df)), r$parts)
        max(sapply(all, function(v) if (v[1] > 0) crit(v[2]) * v[1] else 0))
    }
    point <- function(level) function(df) qt((1 + level) / 2, df)^2
    band <- function(level) function(df) if (is.finite(df)) 2 * qf(level, 2, df) else qchisq(level, 2)
    t_of <- function(df, level) qt((1 + level) / 2, df)
    loads <- sort(unique(c(checks, intersect(one$L, two$L))))
    low <- max(min(one$L), min(two$L)); high <- min(max(one$L), max(two$L))
    say(id, "at", length(loads))
    for (i in seq_along(loads)) {
        put <- function(name, value) say(id, paste0("at", i, ".", name), value)
        x <- loads[i]; r <- D(x)
        put("load", x); put("change", r$d); put("se", r$se)
        w <- sqrt(squared(r, point(level)))
        put("low", r$d - w); put("high", r$d + w)
        w <- sqrt(squared(r, band(level)))
        put("band_low", r$d - w); put("band_high", r$d + w)
        # Banerjee: each part with the quantile of its own df; pooled, a session's scatter is the
        # pool's or, where larger, its own.
        reading <- function(crit) {
            lines <- if (pooled) crit(df) * sum(sapply(list(one, two), function(s) {
                own <- summary(lm(v ~ I(L - x), data = s))
                max(sigma(joint), own$sigma)^2 * own$cov.unscaled[1, 1]
            })) else squared(r, crit)
            sqrt(lines + crit(p$te_df) * 2 * (p$te^2 + tilt * (x - pivot)^2) + crit(p$bias_df) * p$bias_variance)
        }
        half <- reading(point(level))
        put("reading_low", r$d - half); put("reading_high", r$d + half)
        half <- reading(point(1 - 2 * (1 - level)))
        put("equivalence_low", r$d - half); put("equivalence_high", r$d + half)
        w <- reading(band(level))
        put("reading_band_low", r$d - w); put("reading_band_high", r$d + w)
        put("extrapolated", as.numeric(x < low || x > high))
    }

    # Johnson and Neyman's regions.
    cuts <- unique(sort(c(min(d$L), max(d$L), if (low <= high) c(low, high))))
    significance <- function(x) {
        if (pooled) { r <- D(x); return(abs(r$d) / r$se - t_of(r$df, level)) }
        one_x <- c(1, x)
        v <- c(one_x %*% V1 %*% one_x, one_x %*% V2 %*% one_x)
        r <- list(se = sqrt(sum(v)), df = add(v, c(df1, df2))[2],
                  parts = list(c(v[1], df1), c(v[2], df2)))
        abs(sum(one_x * (coef(m2) - coef(m1)))) / r$se - sqrt(squared(r, point(level))) / r$se
    }
    co <- coef(joint); V <- vcov(joint)[c("G", "L:G"), c("G", "L:G")]
    t2 <- qt((1 + level) / 2, df)^2
    A <- co[["L:G"]]^2 - t2 * V[2, 2]
    if (pooled) {
        roots <- real_roots(co[["G"]]^2 - t2 * V[1, 1],
                            2 * (co[["G"]] * co[["L:G"]] - t2 * V[1, 2]), A)
    } else {
        grid <- seq(min(d$L), max(d$L), length.out = 2001)
        f <- sapply(grid, significance)
        turns <- which(f[-1] * f[-length(f)] < 0)
        roots <- sapply(turns, function(i) uniroot(significance, grid[i + 0:1], tol = 1e-13)$root)
    }
    pieces(id, cuts, unlist(roots), function(x) significance(x) > 0,
           function(x) sign(D(x)$d), low, high)
    say(id, "crossing", -co[["G"]] / co[["L:G"]])
    if (pooled) {
        say(id, "crossing.low", if (A > 0) roots[1] else NA)
        say(id, "crossing.high", if (A > 0) roots[2] else NA)
    }

    # Change of the 1RM: each session's load where the joint model reaches the MVT.
    if (coef(m1)[[2]] < 0 && coef(m2)[[2]] < 0 && coef(m1)[[1]] > p$mvt &&
        coef(m2)[[1]] > p$mvt) {
        centre <- mean(d$L)
        d$F <- factor(d$S); d$K <- d$L - centre
        both <- lm(v ~ 0 + F + F:K, data = d)
        side <- function(k) {
            own <- if (k == 1) lm(v ~ I(L - centre), data = one) else
                lm(v ~ I(L - centre), data = two)
            V <- if (pooled) vcov(both)[c(k, k + 2), c(k, k + 2)] else vcov(own)
            a <- coef(own)[[1]]; b <- coef(own)[[2]]
            gradient <- c(-1 / b, -(p$mvt - a) / b^2)
            list(a = a, b = b, V = V, df = if (pooled) df else df.residual(own),
                 estimate = (p$mvt - a) / b + centre,
                 variance = c(t(gradient) %*% V %*% gradient),
                 te = p$te^2, bias = if (k == 2) p$bias_variance else 0)
        }
        s <- list(side(1), side(2))
        say(id, "one_rm_change", s[[2]]$estimate - s[[1]]$estimate)
        say(id, "residue", p$mvt_sd * abs(1 / s[[1]]$b - 1 / s[[2]]$b))
        recovered <- function(level, with_day) {
            q <- function(df) qt((1 + level) / 2, df)^2
            f <- lapply(1:2, function(k) {
                own <- s[[k]]; V <- own$V
                if (with_day && pooled) {
                    m <- summary(if (k == 1) m1 else m2)
                    V <- V * max(1, m$sigma^2 / sigma(joint)^2)
                }
                beyond <- own$te * q(p$te_df) + own$bias * q(p$bias_df)
                fieller(own$a, own$b, V, p$mvt, if (with_day) beyond / q(own$df) else 0, own$df,
                        level, centre, if (with_day) q(p$te_df) * tilt else 0, pivot)
            })
            if (is.null(f[[1]]) || is.null(f[[2]])) return(c(NA, NA))
            e1 <- s[[1]]$estimate; e2 <- s[[2]]$estimate
            c(e2 - e1 - sqrt((e2 - f[[2]][1])^2 + (f[[1]][2] - e1)^2),
              e2 - e1 + sqrt((f[[2]][2] - e2)^2 + (e1 - f[[1]][1])^2))
        }
        tell <- function(name, ends) {
            say(id, paste0(name, "low"), ends[1]); say(id, paste0(name, "high"), ends[2])
        }
        tell("one_rm_change.", recovered(level, FALSE))
        tell("one_rm_change.reading_", recovered(level, TRUE))
        tell("one_rm_change.equivalence_", recovered(1 - 2 * (1 - level), TRUE))
    }
}

rows <- strsplit(readLines(file("stdin")), " ")
kind <- sapply(rows, `[`, 1); ids <- sapply(rows, `[`, 2)
numbers <- function(row, i) as.numeric(row[i])
for (row in rows[kind == "log"]) {
    id <- row[2]
    p <- list(level = numbers(row, 3), mvt = numbers(row, 4), mvt_sd = numbers(row, 5),
              te = numbers(row, 6), te_df = numbers(row, 7), variances = row[8],
              bias = numbers(row, 9), bias_variance = numbers(row, 10), bias_df = numbers(row, 11),
              slope_cv = if (length(row) > 11) numbers(row, 12) else 0)
    mine <- rows[kind == "point" & ids == id]
    d <- data.frame(S = sapply(mine, numbers, 3), L = sapply(mine, numbers, 4),
                    v = sapply(mine, numbers, 5))
    checks <- sapply(rows[kind == "at" & ids == id], numbers, 3)
    one_profile(id, "from", d[d$S == 1, ], p$level, p$mvt, p$mvt_sd)
    # The later session is told with the device's bias taken off, as its change is made.
    later <- d[d$S == 2, ]
    later$v <- later$v - p$bias
    one_profile(id, "to", later, p$level, p$mvt, p$mvt_sd)
    compare(id, d, p, unlist(checks))
}
