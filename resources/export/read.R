# Fits every line of the export anew with R, and says how far that is from estimates.csv.
# Rscript read.R [FOLDER]; dictionary.csv says what each column is.
folder <- c(commandArgs(trailingOnly = TRUE), ".")[1]
points <- read.csv(file.path(folder, "points.csv"))
told <- read.csv(file.path(folder, "estimates.csv"))
told <- told[!is.na(told$v0_m_s), ]
lines <- do.call(rbind, lapply(seq_len(nrow(told)), function(i) {
  line <- lm(point_velocity_m_s ~ line_load_kg, merge(points, told[i, c("athlete", "lift", "date", "session")]))
  data.frame(told[i, c("athlete", "lift", "date")], v0 = coef(line)[[1]], slope = coef(line)[[2]])
}))
lines$one_rm <- (told$mvt_m_s - lines$v0) / lines$slope
cat("lines:", nrow(lines), "farthest 1RM:", max(abs(lines$one_rm - told$one_rm_kg), na.rm = TRUE), "kg\n")
