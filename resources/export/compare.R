
# Reads the export and prints what the program says of the change: per load the change, its standard
# error and its interval by the lines alone, then the scatter, its df, and the change of the 1RM.
folder <- c(commandArgs(trailingOnly = TRUE), ".")[1]
reps <- read.csv(file.path(folder, "reps.csv"), na.strings = character(0),
                 colClasses = c(athlete = "character", lift = "character", excluded = "character", set_excluded = "character"))
reps <- reps[reps$athlete == athlete & reps$lift == lift & reps$excluded == "" & reps$set_excluded == "" &
             !is.na(reps$velocity_m_s), ]
reps$on_line <- reps$load_kg + if (moves_body) reps$body_mass_kg else 0
side <- function(which) reps[reps$date == which$date & reps$session == which$session, ]
# The best of five reps is faster than the best of one: of each set the first k alone, k the fewest
# that the other day has at that load, or at its nearest.
fewest <- function(r) { n <- table(r$set); tapply(n[as.character(r$set)], r$load_kg, min) }
points <- function(r, other) do.call(rbind, lapply(split(r, r$set), function(s) {
  s <- s[order(s$rep), ]
  n <- fewest(other)
  k <- if (fastest) min(nrow(s), n[[which.min(abs(as.numeric(names(n)) - s$load_kg[1]))]]) else nrow(s)
  data.frame(L = s$on_line[1], v = if (fastest) max(s$velocity_m_s[seq_len(k)]) else mean(s$velocity_m_s))
}))
one <- side(from); two <- side(to)
a <- points(one, two); b <- points(two, one)
b$v <- b$v - device_bias
d <- rbind(cbind(a, G = 0), cbind(b, G = 1))
joint <- lm(v ~ L * G, data = d)
t <- qt((1 + level) / 2, df.residual(joint))
for (load in loads) {
  x <- c(0, 0, 1, load)
  change <- sum(x * coef(joint))
  se <- sqrt(drop(x %*% vcov(joint) %*% x))
  cat(sprintf("at %.15g change %.15g se %.15g low %.15g high %.15g\n", load, change, se, change - t * se, change + t * se))
}
cat(sprintf("residual_sd %.15g df %.15g\n", sigma(joint), df.residual(joint)))
f <- anova(lm(v ~ L + G, data = d), joint)
cat(sprintf("parallel f %.15g p %.15g\n", f$F[2], f$`Pr(>F)`[2]))
max_of <- function(d) { m <- coef(lm(v ~ L, data = d)); (mvt - m[[1]]) / m[[2]] }
if (!is.na(mvt)) cat(sprintf("one_rm_change %.15g\n", max_of(b) - max_of(a)))
