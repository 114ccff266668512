# SPDX-License-Identifier: GPL-3.0-or-later
# The figures of the sample log, worked out by R from the committed CSV alone: what
# tests/system/tst_sample.cpp holds the built sample log against.
#
# To approve a change of sample_db, after looking at what changed:
#   Rscript --vanilla tests/reference/sample.R . > tests/reference/sample_figures.txt
#
# One line a figure: "athlete|lift|date|name value".
root <- commandArgs(trailingOnly = TRUE)[1]
read <- function(...) read.csv(file.path(root, ...), colClasses = "character", na.strings = NULL)
reps <- read("sample_db", "reps.csv")
lifts <- read("sample_db", "lifts.csv")
published <- read("resources", "published.csv")

reps$v <- as.numeric(reps$velocity)
reps$L <- as.numeric(reps$load_kg)
counting <- reps[reps$excluded == "" & reps$set_excluded == "" & reps$velocity != "", ]
key <- paste(counting$athlete, counting$lift, counting$date, counting$set, sep = "|")
points <- counting[order(key, -counting$v), ]
points <- points[!duplicated(paste(points$athlete, points$lift, points$date, points$set)), ]
points <- points[order(points$athlete, points$lift, points$date, as.numeric(points$set)), ]
singles <- names(which(table(key) == 1))

mvt_of <- function(athlete, lift) {
    own <- counting[counting$athlete == athlete & counting$lift == lift & counting$maximum == "1" &
                    key %in% singles, ]
    row <- lifts[lifts$lift == lift, ]
    lifts_own <- if (row$mvt != "") as.numeric(row$mvt) else
        as.numeric(published$mvt[published$lift == lift & published$kind == row$velocity_kind])
    k <- nrow(own)
    if (k == 0) return(lifts_own)
    if (length(lifts_own) == 0) return(mean(own$v))
    # k maxima are k draws: moderated towards the lift's own by k ICC / (1 + (k - 1) ICC).
    icc <- if (grepl("eadlift", lift)) 0.63 else 0.5
    share <- k * icc / (1 + (k - 1) * icc)
    share * mean(own$v) + (1 - share) * lifts_own
}

for (group in split(points, list(points$athlete, points$lift, points$date), drop = TRUE)) {
    say <- function(name, value)
        cat(group$athlete[1], "|", group$lift[1], "|", group$date[1], "|", name, " ",
            sprintf("%.15g", value), "\n", sep = "")
    m <- lm(v ~ L, data = group)
    say("n", nrow(group))
    say("v0", coef(m)[[1]])
    say("slope", coef(m)[[2]])
    say("r2", summary(m)$r.squared)
    if (lifts$ballistic[lifts$lift == group$lift[1]] == "1") next # no 1RM
    mvt <- mvt_of(group$athlete[1], group$lift[1])
    say("one_rm", (mvt - coef(m)[[1]]) / coef(m)[[2]])
    # Fieller's ends: where |line - mvt| is t of its standard error.
    t <- qt(0.975, df.residual(m))
    off <- function(x) {
        p <- predict(m, data.frame(L = x), se.fit = TRUE)
        p$fit - mvt + c(-1, 1) * t * p$se.fit
    }
    estimate <- (mvt - coef(m)[[1]]) / coef(m)[[2]]
    end <- function(i, from, to)
        tryCatch(uniroot(function(x) off(x)[i], c(from, to), tol = 1e-12)$root,
                 error = function(e) NA)
    say("low", end(1, estimate - 400, estimate))
    say("high", end(2, estimate, estimate + 2000))
}

# What two tests of the bench pull came to, from the parts of section 'When the world is not the
# model': the larger of pooled and own scatter, days that move and tilt as repeat tests and the
# published figure have it. Both days hold the same loads, so the bend of a line cancels; where reps
# differ, the fastest of as many. One line a figure: "compare|athlete|load or max|name value".
lift <- "Bench pull"; published_day <- 0.031; matters <- 0.05; matters_max <- 5
stopifnot(published$day_noise[published$lift == "*" & published$kind == "propulsive"] == "0.031")
sets_of <- function(athlete, date)
    counting[counting$athlete == athlete & counting$lift == lift & counting$date == date, ]
first_reps <- function(sets, k) { # fastest of the first k of each load
    d <- sets[order(sets$L, as.numeric(sets$rep)), ]
    at <- as.character(unique(d$L))
    data.frame(L = as.numeric(at), v = sapply(at, function(l) {
        v <- d$v[d$L == as.numeric(l)]
        max(v[seq_len(min(length(v), k[[l]]))])
    }))
}
all_reps <- function(sets) first_reps(sets, table(sets$L))
scatter <- function(m) sum(residuals(m)^2)
h <- function(d, x) 1 / nrow(d) + (x - mean(d$L))^2 / sum((d$L - mean(d$L))^2)
pair_of <- function(athlete, first, second) {
    a <- all_reps(sets_of(athlete, first)); b <- all_reps(sets_of(athlete, second))
    ma <- lm(v ~ L, a); mb <- lm(v ~ L, b)
    x <- optimize(function(x) h(a, x) + h(b, x), c(0, 300), tol = 1e-12)$minimum
    s2 <- (scatter(ma) + scatter(mb)) / (nrow(a) + nrow(b) - 4)
    D <- predict(mb, data.frame(L = x)) - predict(ma, data.frame(L = x))
    data.frame(athlete = athlete, half = D^2 / 2, within = s2 * (h(a, x) + h(b, x)) / 2)
}
repeated <- unique(reps[reps$lift == lift & reps$repeat_of != "",
                        c("athlete", "date", "repeat_of", "device")])
before <- unique(reps[reps$lift == lift, c("athlete", "date", "device")])
repeated <- merge(repeated, before, by.x = c("athlete", "repeat_of", "device"),
                  by.y = c("athlete", "date", "device")) # on one device
pairs <- do.call(rbind, Map(pair_of, repeated$athlete, repeated$repeat_of, repeated$date))
day_noise <- function(athlete) { # as 'day' of uncertainty.R
    own <- pairs[pairs$athlete == athlete, ]; others <- pairs[pairs$athlete != athlete, ]
    ko <- nrow(others); k <- nrow(own)
    of_others <- max(0, mean(others$half - others$within))
    centre <- (4 * (0.84 * published_day)^2 + 0.7 * ko * of_others) / (4 + ko)
    ke <- k * (centre / (centre + mean(own$within)))^2
    p <- approx(c(0, 6, 14), c(4, 4, 0), ke, rule = 2)$y
    s2 <- max(centre * max(p, 1) / 16,
              weighted.mean(c(centre, mean(own$half - own$within)), c(p, ke)))
    list(s2 = s2, df = p + ke)
}
said <- function(ends, equivalence, m)
    if (ends[1] > 0 || ends[2] < 0) "clear" else
        if (equivalence[1] > -m && equivalence[2] < m) "held" else "unclear"
for (athlete in c("Ada", "Cora", "Edda")) {
    say <- function(what, value)
        cat("compare|", athlete, "|", what, " ", sprintf("%.15g", value), "\n", sep = "")
    sets <- lapply(c("2025-12-01", "2026-05-04"), function(date) sets_of(athlete, date))
    count <- lapply(sets, function(s) table(s$L))
    stopifnot(identical(names(count[[1]]), names(count[[2]])))
    k <- setNames(pmin(count[[1]], count[[2]]), names(count[[1]]))
    d <- lapply(sets, first_reps, k)
    m <- lapply(d, function(one) lm(v ~ L, one))
    df <- sum(sapply(d, nrow)) - 4
    pooled <- sum(sapply(m, scatter)) / df
    s2 <- sapply(m, function(one) max(pooled, scatter(one) / df.residual(one)))
    mvt <- mvt_of(athlete, lift); noise <- day_noise(athlete)
    root <- sapply(m, function(one) (mvt - coef(one)[[1]]) / coef(one)[[2]])
    slope <- mean(abs(sapply(m, function(one) coef(one)[[2]])))
    cv <- 0.025 * sqrt(noise$s2) / published_day
    day <- function(x) noise$s2 + (cv * slope)^2 * (x - 0.6 * root[1])^2
    D <- function(x) predict(m[[2]], data.frame(L = x)) - predict(m[[1]], data.frame(L = x))
    ends <- function(x, level) {
        t <- function(df) qt((1 + level) / 2, df)^2
        D(x) + c(-1, 1) * sqrt(t(df) * (s2[1] * h(d[[1]], x) + s2[2] * h(d[[2]], x)) +
                               t(noise$df) * 2 * day(x))
    }
    max_ends <- function(level) {
        t <- function(df) qt((1 + level) / 2, df)^2
        side <- lapply(1:2, function(j) {
            off <- function(x) (predict(m[[j]], data.frame(L = x)) - mvt)^2 -
                t(df) * s2[j] * h(d[[j]], x) - t(noise$df) * day(x)
            c(uniroot(off, c(root[j] - 60, root[j]), tol = 1e-12)$root,
              uniroot(off, c(root[j], root[j] + 60), tol = 1e-12)$root)
        })
        change <- root[2] - root[1]
        change + c(-sqrt((root[2] - side[[2]][1])^2 + (side[[1]][2] - root[1])^2),
                   sqrt((side[[2]][2] - root[2])^2 + (root[1] - side[[1]][1])^2))
    }
    unclear <- 0
    for (load in d[[1]]$L) {
        at <- ends(load, 0.95)
        say(paste0(load, "|change"), D(load))
        say(paste0(load, "|reading_low"), at[1])
        say(paste0(load, "|reading_high"), at[2])
        unclear <- unclear + (said(at, ends(load, 0.90), matters) == "unclear")
    }
    say("loads|unclear", unclear)
    at <- max_ends(0.95)
    say("max|change", root[2] - root[1])
    say("max|reading_low", at[1])
    say("max|reading_high", at[2])
    say("max|unclear", said(at, max_ends(0.90), matters_max) == "unclear")
}
