# SPDX-License-Identifier: GPL-3.0-or-later
# Makes the demo's attempts.csv: the squad's other tests on the days of make_sample.R, with the gaps
# that the flood and a sore knee leave. The committed file is the truth; this documents how it came
# about.
#
#   Rscript --vanilla sample_db/make_battery.R sample_db
#
# Known values, a shift from day to day, scatter from attempt to attempt; fixed seed. Every name is
# invented.
folder <- commandArgs(trailingOnly = TRUE)[1]
set.seed(20251202, kind = "Mersenne-Twister", normal.kind = "Inversion", sample.kind = "Rejection")

days <- as.Date(c("2025-09-22", "2025-09-25", "2025-12-01", "2026-02-16", "2026-05-04"))
squad <- data.frame(
  athlete = c("Ada", "Bela", "Cora", "Dov", "Edda", "Finn"),
  later = c(0, 1, 0, 1, 0, 1),
  jump = c(0.31, 0.38, 0.33, 0.40, 0.29, 0.37),      # m, by flight time
  contact = c(0.21, 0.20, 0.19, 0.20, 0.22, 0.21),   # s
  hop = c(1.62, 1.95, 1.70, 2.02, 1.55, 1.90),       # m, the better leg
  triple = c(5.05, 6.10, 5.30, 6.25, 4.80, 5.95),
  weaker = c("left", "right", "left", "left", "left", "right"),
  deficit = c(0.03, 0.05, 0.02, 0.08, 0.06, 0.04),
  throw = c(4.1, 5.6, 4.3, 5.4, 3.9, 5.7),
  pull = c(1650, 2480, 1760, 2390, 1580, 2550))      # N, gross
share <- c(0, 0, 0.3, 0.8, 1)                        # of each gain that is there at each test
gain <- list(jump = c(0.01, 0.02, 0.045, 0.00, 0.02, -0.01),
             hop = c(0.05, 0.02, 0.20, 0.05, 0.10, 0.00),
             throw = c(0.1, 0.2, 0.7, 0.0, 0.2, -0.1),
             pull = c(40, -80, 60, 10, 90, -150))
# What each test is measured with and how it is done; hops and throws by a tape.
mat <- c("Countermovement jump", "Drop jump, reactive strength")
how <- function(test) {
  if (startsWith(test, "Isometric")) return("bar at mid thigh")
  if (startsWith(test, "Seated")) return("back to the wall")
  if (test == "") "" else "hands on hips"
}
with <- function(test, t, i) {
  if (startsWith(test, "Isometric")) return("load cell")
  if (!test %in% mat) return("")
  if (t == 5 && i == 6) "contact mat 2" else "contact mat 1"
}
surface <- c("rubber floor", "rubber floor", "rubber floor", "concrete of the boat bay",
             "rubber floor")

rows <- list()
row <- function(i, t, test = "", value = NA, side = "", contact = NA, missing = "", lift = "",
                excluded = "", note = "", digits = 2) {
  rows[[length(rows) + 1]] <<- data.frame(
    date = format(days[t] + squad$later[i]), athlete = squad$athlete[i], test = test,
    value = if (is.na(value)) "" else sprintf("%.*f", digits, value), lift = lift, side = side,
    contact_s = if (is.na(contact)) "" else sprintf("%.3f", contact), not_possible = missing,
    excluded = excluded, attempt_note = note,
    surface = if (t == 5 && startsWith(test, "Seated")) "grass behind the boathouse" else surface[t],
    test_device = with(test, t, i), footwear = "court shoes", technique = how(test),
    place = if (t == 4) "Boat bay, dry end" else "Boathouse weights room")
}
flight <- function(height) sqrt(8 * height / 9.80665)

for (t in seq_along(days)) for (i in seq_len(nrow(squad))) {
  s <- squad[i, ]
  now <- function(what) s[[what]] + share[t] * gain[[what]][i]
  day <- rnorm(1, 0, 0.006)
  for (k in 1:3)
    row(i, t, "Countermovement jump", flight(now("jump") + day + rnorm(1, 0, 0.006)), digits = 3)
  sore <- s$athlete == "Edda" && t == 4
  if (sore) {
    row(i, t, "Drop jump, reactive strength", missing = "sore left knee")
  } else {
    day <- rnorm(1, 0, 0.006)
    for (k in 1:3)
      row(i, t, "Drop jump, reactive strength",
          flight(0.9 * now("jump") + day + rnorm(1, 0, 0.006)),
          contact = s$contact + rnorm(1, 0, 0.006), note = if (k == 1) "box 30 cm" else "",
          digits = 3)
  }
  for (hop in c("Single hop for distance", "Triple hop for distance")) {
    scale <- if (hop == "Single hop for distance") 1 else s$triple / s$hop
    for (side in c("left", "right")) {
      if (sore && side == "left") {
        row(i, t, hop, side = side, missing = "sore left knee")
        next
      }
      day <- rnorm(1, 0, 0.03)
      for (k in 1:3) {
        v <- scale * (now("hop") * (if (side == s$weaker) 1 - s$deficit else 1) + day +
                        rnorm(1, 0, 0.03))
        step <- s$athlete == "Dov" && t == 3 && k == 2 && side == "right" && scale == 1
        row(i, t, hop, v, side = side, excluded = if (step) "landing not held" else "")
      }
    }
  }
  day <- rnorm(1, 0, 0.08)
  for (k in 1:3) row(i, t, "Seated medicine-ball throw", now("throw") + day + rnorm(1, 0, 0.1))
  if (sore) row(i, t, lift = "Jump squat", missing = "sore left knee")
  if (t == 4) {
    row(i, t, "Isometric pull, peak force", missing = "rig under water")
    row(i, t, "Isometric pull, peak force per body mass", missing = "rig under water")
  } else {
    day <- rnorm(1, 0, 25)
    force <- now("pull") + day + rnorm(3, 0, 30)
    for (f in force) row(i, t, "Isometric pull, peak force", f, digits = 0)
    for (f in force) row(i, t, "Isometric pull, peak force per body mass", f, digits = 0)
  }
}

cell <- function(x) {
  text <- ifelse(is.na(x), "", as.character(x))
  ifelse(grepl('[",]', text), paste0('"', gsub('"', '""', text), '"'), text)
}
table <- do.call(rbind, rows)
lines <- do.call(paste, c(lapply(table, cell), sep = ","))
writeLines(c(paste(names(table), collapse = ","), lines), file.path(folder, "attempts.csv"),
           sep = "\n")
