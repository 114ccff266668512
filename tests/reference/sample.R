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
counting <- reps[reps$excluded == "" & reps$set_excluded == "", ]
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
