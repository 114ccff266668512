# SPDX-License-Identifier: GPL-3.0-or-later
# A tidy CSV, read by R itself: makes the points of its two sessions and hands them to
# profile_compare.R, whose figures it prints: "all" of the fastest of all counting reps, "x" of the
# fastest of the first k, k the fewest that the other session has at that load, or at its nearest.
#   Rscript unseen.R FILE.csv ROOT ATHLETE LIFT FROM TO MVT CHECK_LOADS(comma)
arguments <- commandArgs(trailingOnly = TRUE)
d <- read.csv(arguments[1], colClasses = "character", na.strings = NULL, check.names = FALSE,
              strip.white = TRUE)
root <- arguments[2]
d <- d[d$athlete == arguments[3] & d$lift == arguments[4] & d$excluded == "" &
       d$set_excluded == "", ]
d$v <- as.numeric(d$velocity)
published <- read.csv(file.path(root, "resources", "published.csv"), colClasses = "character")
day_noise <- published$day_noise[published$lift == "*" & published$kind == "mean"]

# A published SD is a prior: 0.84 of it on 4 df, the slope's CV 2.5 % where days are as published.
records <- paste("log", c("all", "x"), "0.95", arguments[7], "0", 0.84 * as.numeric(day_noise),
                 "4 pooled 0 0 Inf", 0.84 * 0.025)
counts <- lapply(1:2, function(side) {
    mine <- d[d$date == arguments[4 + side], ]
    reps <- tapply(mine$v, as.numeric(mine$set), length)
    loads <- as.numeric(tapply(mine$load_kg, as.numeric(mine$set), `[`, 1))
    tapply(reps, loads, min) # by load, ascending
})
for (id in c("all", "x")) for (side in 1:2) {
    mine <- d[d$date == arguments[4 + side], ]
    mine <- mine[order(as.numeric(mine$set), as.numeric(mine$rep)), ]
    load <- tapply(mine$load_kg, as.numeric(mine$set), `[`, 1)
    others <- counts[[3 - side]]
    best <- sapply(names(load), function(set) {
        v <- mine$v[as.numeric(mine$set) == as.numeric(set)]
        nearest <- which.min(abs(as.numeric(names(others)) - as.numeric(load[[set]])))
        max(if (id == "x") head(v, others[[nearest]]) else v)
    })
    records <- c(records, paste("point", id, side, load, sprintf("%.17g", best)))
}
for (load in strsplit(arguments[8], ",")[[1]]) records <- c(records, paste("at x", load))
input <- tempfile()
writeLines(records, input)
script <- file.path(root, "tests", "reference", "profile_compare.R")
status <- system2(file.path(R.home("bin"), "Rscript"), c("--vanilla", shQuote(script)),
                  stdin = input)
quit(status = status)
