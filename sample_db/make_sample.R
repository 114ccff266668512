# SPDX-License-Identifier: GPL-3.0-or-later
# Makes the demo's CSV files: a rowing squad whose boathouse weights room lost its heavy plates to a
# flood for a winter block. The committed files are the truth; this documents how they came about.
#
#   Rscript --vanilla sample_db/make_sample.R sample_db
#
# Known lines (V0, 1RM and the speed there), scatter from set to set and from rep to rep, and days as
# noisy as the published ones: the level of a line moves by the SD of resources/published.csv, and its
# slope by 2.5 % about 60 % of the 1RM. So the squad is tested as the help advises: two test days a
# block, the second a repeat of the first, with ladders up to 95 % where there are plates. Fixed seed.
# Every name is invented.
folder <- commandArgs(trailingOnly = TRUE)[1]
set.seed(23, kind = "Mersenne-Twister", normal.kind = "Inversion", sample.kind = "Rejection")

day_sd <- c("Bench pull" = 0.031, "Back squat" = 0.028, "Hex-bar deadlift" = 0.028,
            "Jump squat" = 0.051) # m/s, of a whole line from day to day: propulsive, mean, mean, peak
tilt_cv <- 0.025 # of the slope, from day to day, about 60 % of the 1RM
set_sd <- 0.010 # m/s, of a set about its line
rep_sd <- 0.008 # m/s, of a rep about its set
ceiling_kg <- 70

flood <- "Flood: only the small plates are left"
tests <- data.frame(
  date = as.Date(c("2025-09-22", "2025-09-25", "2025-11-27", "2025-12-01", "2026-02-12",
                   "2026-02-16", "2026-04-30", "2026-05-04")),
  block = rep(c("Autumn", "Winter flood", "Spring"), c(4, 2, 2)),
  place = rep(c("Boathouse weights room", "Boat bay, dry end", "Boathouse weights room"), c(4, 2, 2)),
  note = rep(c("", flood, "Heavy plates are back"), c(4, 2, 2)),
  repeats = c(NA, 1, NA, 3, NA, 5, NA, 7))

squad <- data.frame(
  athlete = c("Ada", "Bela", "Cora", "Dov", "Edda", "Finn"),
  mass = c(71.4, 92.6, 74.8, 88.1, 68.9, 95.3),
  later = c(0, 1, 0, 1, 0, 1)) # days: the second crew tests a day later

# Per athlete and lift: V0 and 1RM in the autumn, the speed at the 1RM, and the change of V0 and of
# the 1RM over the season. Cora's bench pull is the story: V0 up, the 1RM as it was; and Edda, new to
# the weights room, whose pull became stronger.
plan <- rbind(
  data.frame(lift = "Bench pull", v_max = 0.52, athlete = squad$athlete,
             v0 = c(1.42, 1.48, 1.40, 1.45, 1.38, 1.50), max = c(72, 101, 82, 95, 70, 104),
             v0_gain = c(0.02, 0.03, 0.20, 0.01, 0.04, -0.03), max_gain = c(1.5, 2, 0, 1, 13, -3)),
  data.frame(lift = "Back squat", v_max = 0.26, athlete = squad$athlete,
             v0 = c(1.30, 1.36, 1.28, 1.33, 1.26, 1.38), max = c(98, 148, 108, 140, 94, 155),
             v0_gain = c(0.03, -0.02, 0.05, 0.02, 0.06, 0.00), max_gain = c(0, -6, 2, -2, 4, -5)),
  data.frame(lift = "Hex-bar deadlift", v_max = 0.25, athlete = squad$athlete,
             v0 = c(1.18, 1.24, 1.16, 1.22, 1.15, 1.26), max = c(132, 188, 142, 180, 128, 196),
             v0_gain = c(0.02, 0.01, 0.06, 0.03, 0.05, -0.04), max_gain = c(2, -4, 1, 0, 5, -8)))
share <- c(0, 0, 0, 0, 0.7, 0.7, 1, 1) # of the gain that is there at each test

# Round loads up to 95 % of the 1RM; light loads only, evenly up to the ceiling, where there is one.
ladder_for <- function(lift, max, ceiling) {
  if (is.finite(ceiling)) return(seq(30, ceiling, by = 10))
  step <- if (max > 110) 20 else 10
  start <- switch(lift, "Bench pull" = if (max > 90) 40 else 30, "Back squat" = step / 2 + 40, 50)
  start <- 10 * floor(start / 10)
  loads <- c(seq(start, 0.84 * max, by = step), 5 * round(max * c(0.89, 0.95) / 5))
  unique(loads)
}

reps_at <- function(fraction) if (fraction < 0.6) 3 else if (fraction < 0.85) 2 else 1

# (athlete, lift, test) in which a successful true maximum was lifted after the ladder.
maxima <- list(c("Bela", "Back squat", 1), c("Bela", "Back squat", 8), c("Dov", "Back squat", 4),
               c("Dov", "Bench pull", 8), c("Finn", "Hex-bar deadlift", 4),
               c("Finn", "Hex-bar deadlift", 8), c("Ada", "Hex-bar deadlift", 4))
has_max <- function(a, l, t) any(vapply(maxima, function(m) all(m == c(a, l, t)), TRUE))

# Reps and sets that do not count, with the coach's reason.
bad_reps <- list(list("Ada", "Bench pull", 1, 2, 3, -0.17, "missed the groove"),
                 list("Dov", "Back squat", 2, 3, 1, -0.22, "stepped back under the bar"),
                 list("Edda", "Hex-bar deadlift", 4, 1, 2, 0.31, "string slipped off the bar"),
                 list("Finn", "Bench pull", 6, 2, 1, -0.14, "hip off the bench"),
                 list("Cora", "Back squat", 8, 4, 2, -0.19, "cut short of depth"))
bad_sets <- list(list("Bela", "Bench pull", 2, 4, "15 kg plate on one side only"),
                 list("Edda", "Back squat", 6, 5, "sore knee, stopped"))
find_bad <- function(list_of, key) {
  for (bad in list_of) if (all(unlist(bad[seq_along(key)]) == unlist(key))) return(bad)
  NULL
}

rows <- list()
for (t in seq_len(nrow(tests))) for (i in seq_len(nrow(squad))) {
  who <- squad$athlete[i]
  date <- tests$date[t] + squad$later[i]
  body <- round(squad$mass[i] + rnorm(1, 0, 0.5), 1)
  for (p in which(plan$athlete == who)) {
    lift <- plan$lift[p]
    v0 <- plan$v0[p] + share[t] * plan$v0_gain[p]
    max <- plan$max[p] + share[t] * plan$max_gain[p]
    ceiling <- if (tests$block[t] == "Winter flood") ceiling_kg else Inf
    loads <- ladder_for(lift, plan$max[p], ceiling)
    kinds <- rep(FALSE, length(loads))
    if (has_max(who, lift, t)) {
      loads <- c(loads, 2.5 * floor(max / 2.5))
      kinds <- c(kinds, TRUE)
    }
    day <- rnorm(1, 0, day_sd[lift])
    tilt <- rnorm(1, 0, tilt_cv)
    for (s in seq_along(loads)) {
      slope <- (v0 - plan$v_max[p]) / max
      middle <- v0 - slope * loads[s] + day + tilt * slope * (loads[s] - 0.6 * max) +
        rnorm(1, 0, set_sd)
      n <- if (kinds[s]) 1 else reps_at(loads[s] / max)
      out_set <- find_bad(bad_sets, list(who, lift, t, s))
      for (r in seq_len(n)) {
        v <- middle + rnorm(1, 0, rep_sd) - 0.004 * (r - 1)
        out_rep <- find_bad(bad_reps, list(who, lift, t, s, r))
        if (!is.null(out_rep)) v <- v + out_rep[[6]]
        rows[[length(rows) + 1]] <- data.frame(
          date = format(date), athlete = who, lift = lift, set = s, load_kg = loads[s], rep = r,
          velocity = sprintf("%.2f", v),
          device = if (who == "Finn" && t == nrow(tests)) "Encoder 2" else "Encoder 1",
          place = tests$place[t], block = tests$block[t], body_mass_kg = body,
          maximum = if (kinds[s]) "1" else "",
          excluded = if (is.null(out_rep)) "" else out_rep[[7]],
          set_excluded = if (is.null(out_set)) "" else out_set[[5]],
          session_note = tests$note[t],
          repeat_of = if (is.na(tests$repeats[t])) "" else
            format(tests$date[tests$repeats[t]] + squad$later[i]))
      }
    }
  }
}

# Further true maxima at the last test, so that the squad has a relation of %1RM to speed: drawn
# after all else, so that what stands above stays as it is.
set.seed(29, kind = "Mersenne-Twister", normal.kind = "Inversion", sample.kind = "Rejection")
more_maxima <- list(c("Ada", "Back squat"), c("Edda", "Back squat"), c("Bela", "Bench pull"),
                    c("Finn", "Bench pull"))
written <- do.call(rbind, rows)
last <- nrow(tests)
for (m in more_maxima) {
  p <- which(plan$athlete == m[1] & plan$lift == m[2])
  max <- plan$max[p] + share[last] * plan$max_gain[p]
  v0 <- plan$v0[p] + share[last] * plan$v0_gain[p]
  date <- format(tests$date[last] + squad$later[squad$athlete == m[1]])
  before <- written[written$athlete == m[1] & written$lift == m[2] & written$date == date, ]
  load <- 2.5 * floor(max / 2.5)
  v <- v0 - (v0 - plan$v_max[p]) / max * load + rnorm(1, 0, set_sd)
  rows[[length(rows) + 1]] <- transform(
    before[nrow(before), ], set = max(before$set) + 1, load_kg = load, rep = 1,
    velocity = sprintf("%.2f", v), maximum = "1", excluded = "", set_excluded = "")
}

# A thrown lift, followed by its peak speed at load; it has no 1RM. Not with a sore knee. On the last
# day the second crew throws at a rack of its own, with the other encoder.
jump <- data.frame(athlete = squad$athlete, v0 = c(2.74, 2.95, 2.70, 2.92, 2.66, 2.98),
                   slope = c(-0.0165, -0.0125, -0.0150, -0.0130, -0.0170, -0.0128),
                   v0_gain = c(0.03, 0.02, 0.16, 0.00, 0.06, -0.04))
for (t in seq_len(nrow(tests))) for (i in seq_len(nrow(jump))) {
  if (jump$athlete[i] == "Edda" && t == 6) next
  day <- rnorm(1, 0, day_sd["Jump squat"])
  loads <- if (squad$mass[i] > 80) c(20, 40, 60, 70) else c(20, 30, 40, 50)
  for (s in seq_along(loads)) for (r in 1:3) {
    v <- jump$v0[i] + share[t] * jump$v0_gain[i] + day + jump$slope[i] * loads[s] +
      rnorm(1, 0, 0.02)
    rows[[length(rows) + 1]] <- data.frame(
      date = format(tests$date[t] + squad$later[i]), athlete = jump$athlete[i], lift = "Jump squat",
      set = s, load_kg = loads[s], rep = r, velocity = sprintf("%.2f", v),
      device = if (squad$later[i] == 1 && t == nrow(tests)) "Encoder 2" else "Encoder 1",
      place = tests$place[t], block = tests$block[t], body_mass_kg = "", maximum = "",
      excluded = "", set_excluded = "", session_note = tests$note[t],
      repeat_of = if (is.na(tests$repeats[t])) "" else
        format(tests$date[tests$repeats[t]] + squad$later[i]))
  }
}

save_csv <- function(table, name) {
  cell <- function(x) {
    text <- ifelse(is.na(x), "", as.character(x))
    ifelse(grepl('[",]', text), paste0('"', gsub('"', '""', text), '"'), text)
  }
  lines <- do.call(paste, c(lapply(table, cell), sep = ","))
  writeLines(c(paste(names(table), collapse = ","), lines), file.path(folder, name), sep = "\n")
}

# How sets felt (RPE, in halves), written down from the winter on: reps in reserve by the load's share
# of the maximum, and what a feeling varies.
set.seed(31, kind = "Mersenne-Twister", normal.kind = "Inversion", sample.kind = "Rejection")
reps <- do.call(rbind, rows)
reps$rpe <- ""
felt <- reps$lift %in% c("Bench pull", "Back squat") & reps$date >= "2025-12-01"
a_set <- paste(reps$date, reps$athlete, reps$lift, reps$set)
for (one in unique(a_set[felt])) {
  here <- a_set == one
  first <- reps[which(here)[1], ]
  max <- plan$max[plan$athlete == first$athlete & plan$lift == first$lift]
  in_reserve <- 30 * (max / first$load_kg - 1) - sum(here)
  effort <- 9.5 - 0.35 * in_reserve + rnorm(1, 0, 0.4)
  reps$rpe[here] <- format(min(10, max(4, round(2 * effort) / 2)))
}

# What was tried and not lifted, and what was not possible: rows without a velocity.
reps$outcome <- ""
reps$reason <- ""
without <- function(like, set, load, outcome, reason) {
  row <- like[1, ]
  row[c("rep", "velocity", "maximum", "excluded", "set_excluded", "rpe")] <- ""
  row[c("set", "load_kg", "outcome", "reason")] <- list(set, load, outcome, reason)
  if (outcome == "not lifted") row$rpe <- "10"
  row
}
of <- function(athlete, lift, date)
  reps[reps$athlete == athlete & reps$lift == lift & reps$date == date, ]
tried <- function(athlete, lift, date, load, reason) {
  there <- of(athlete, lift, date)
  without(there, max(there$set) + 1, load, "not lifted", reason)
}
reps <- rbind(
  reps,
  tried("Bela", "Back squat", "2026-05-05", 147.5, "stuck half way up"),
  tried("Dov", "Bench pull", "2026-05-05", 100, "did not reach the bench"),
  without(of("Finn", "Back squat", "2026-02-17"), "", 90, "not possible", "only the small plates are left"),
  without(of("Ada", "Hex-bar deadlift", "2026-05-04"), "", 130, "not possible",
          "a collar was missing"))
group <- paste(reps$date, reps$athlete, reps$lift)
reps <- reps[order(match(group, unique(group))), ] # each after the sets that it belongs to

save_csv(reps, "reps.csv")

# The stations of the last test days, and who was there in which turn.
station <- function(station, lift = "", test = "", ladder = "", sets = "", device = "",
                    surface = "", footwear = "", technique = "", note = "")
  data.frame(station, lift, test, ladder_kg = ladder, sets, rotates = 1, device,
             place = if (lift == "") "" else tests$place[nrow(tests)], surface, footwear, technique,
             station_note = note)
save_csv(rbind(
  station("Pull bench", "Bench pull", device = "Encoder 1", note = "Bar to the underside"),
  station("Jump rack", "Jump squat", ladder = "20 40 60 70", device = "Encoder 2"),
  station("Hop lane", test = "Single hop for distance", sets = 3, surface = "rubber floor",
          footwear = "court shoes", technique = "hands on hips"),
  station("Hop lane", test = "Triple hop for distance", sets = 3, surface = "rubber floor",
          footwear = "court shoes", technique = "hands on hips")), "stations.csv")
here <- function(station, day, athletes)
  data.frame(station, date = day, turn = seq_along(athletes), athlete = athletes)
crews <- split(squad$athlete, squad$later)
save_csv(rbind(
  here("Pull bench", "2026-05-04", crews[["0"]]), here("Hop lane", "2026-05-04", crews[["0"]]),
  here("Pull bench", "2026-05-05", crews[["1"]]), here("Jump rack", "2026-05-05", crews[["1"]]),
  here("Hop lane", "2026-05-05", crews[["1"]])), "rosters.csv")

save_csv(data.frame(
  block = c("Autumn", "Winter flood", "Spring"),
  first_day = c("2025-09-15", "2025-12-08", "2026-02-23"),
  last_day = c("2025-12-07", "2026-02-22", "2026-05-17"),
  ceiling_kg = c(NA, ceiling_kg, NA),
  trained = c("Heavy sets of five", "Light bars lifted as fast as they go, jumps",
              "Heavy sets of five"),
  sessions_a_week_fewest = c(2, 2, 1), sessions_a_week_most = c(2, 3, 2),
  block_note = c("All plates, with the whole squad",
                 "Flood in the weights room: nothing above 70 kg, lifted fast",
                 "Heavy plates back, racing season begins")), "blocks.csv")

save_csv(data.frame(
  lift = c("Bench pull", "Back squat", "Hex-bar deadlift", "Jump squat"),
  point_rule = "fastest", velocity_kind = c("propulsive", "mean", "mean", "peak"),
  ballistic = c(0, 0, 0, 1),
  mvt = c(NA, NA, 0.25, NA), mvt_sd = c(NA, NA, 0.03, NA),
  mvt_origin = c("published", "published", "coach", ""),
  mvt_source = c("", "", "own squad, singles of two seasons", ""),
  smallest_velocity = c(0.05, NA, NA, 0.10), smallest_1rm_kg = c(5, NA, NA, NA),
  lift_note = c("Chest on the bench, bar to the underside", "To the box at knee height",
                "High handles", "Bar across the shoulders, from a half squat, off the floor")),
  "lifts.csv")

loads <- list("Bench pull" = c(40, 60), "Back squat" = c(50, 70), "Hex-bar deadlift" = c(50, 70),
              "Jump squat" = c(20, 40))
save_csv(do.call(rbind, lapply(squad$athlete, function(a) do.call(rbind, lapply(
  names(loads), function(l) data.frame(athlete = a, lift = l, check_load_kg = loads[[l]]))))),
  "check_loads.csv")

# What can be lifted where: the weights room, the dry end of the boat bay, a bag for the road.
piece <- function(equipment, piece, mass, unit = "kg", pairs = NA, name = "", note = "")
  data.frame(equipment = equipment, piece = piece, mass = mass, unit = unit, pairs = pairs,
             piece_name = name, equipment_note = note)
room <- "Boathouse weights room"
bay <- "Dry end of the boat bay"
bag <- "Travel bag"
save_csv(rbind(
  piece(room, "bar", 20, name = "long bar", note = "As it was before the flood, and is again"),
  piece(room, "bar", 25, name = "hex bar"),
  piece(room, "plate", c(25, 20, 15, 10, 5, 2.5, 1.25), pairs = c(2, 2, 1, 1, 2, 1, 1)),
  piece(bay, "bar", 20, name = "long bar", note = "Through the winter: the small plates"),
  piece(bay, "plate", c(10, 5, 2.5, 1.25), pairs = c(2, 1, 1, 1)),
  piece(bay, "ceiling", ceiling_kg),
  piece(bag, "alone", 26, name = "bell", note = "For regattas away from home"),
  piece(bag, "alone", 35, "lb", name = "bell, the lighter"),
  piece(bag, "added", 10, name = "vest"),
  piece(bag, "added", 4.5, name = "band, at its measured pull")), "equipment.csv")
