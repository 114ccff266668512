# SPDX-License-Identifier: GPL-3.0-or-later
# A tidy CSV, read by R itself: makes the points of its two sessions and hands them to
# profile_compare.R, whose figures it prints.
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

records <- paste("log x 0.95", arguments[7], "0", day_noise, "Inf pooled 0 0 Inf")
for (side in 1:2) {
    mine <- d[d$date == arguments[4 + side], ]
    best <- tapply(mine$v, as.numeric(mine$set), max)
    load <- tapply(mine$load_kg, as.numeric(mine$set), `[`, 1)
    records <- c(records, paste("point x", side, load, sprintf("%.17g", best)))
}
for (load in strsplit(arguments[8], ",")[[1]]) records <- c(records, paste("at x", load))
input <- tempfile()
writeLines(records, input)
script <- file.path(root, "tests", "reference", "profile_compare.R")
status <- system2(file.path(R.home("bin"), "Rscript"), c("--vanilla", shQuote(script)),
                  stdin = input)
quit(status = status)
