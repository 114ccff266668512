# SPDX-License-Identifier: GPL-3.0-or-later
# Random intercept and slope by nlme::lme (REML), on data from standard input (rows "id group x y")
# and on R's own Orange and ChickWeight (ids Orange, ChickWeight; their data are printed as well).
# Prediction variances by plain matrix algebra from lme's estimates. Output: "id.figure value".
suppressMessages(library(nlme))
put <- function(id, name, v) cat(sprintf("%s.%s %.17g\n", id, name, v), sep = "")
fit <- function(d, opt) tryCatch(suppressWarnings(
  lme(y ~ x, random = ~ x | g, data = d, method = "REML",
      control = lmeControl(opt = opt, maxIter = 500, msMaxIter = 1000, msMaxEval = 4000,
                           tolerance = 1e-10, msTol = 1e-12, niterEM = 60, returnObject = TRUE))),
  error = function(e) NULL)
figures <- function(id, d) {
  fits <- Filter(Negate(is.null), list(fit(d, "nlminb"), fit(d, "optim")))
  put(id, "fits", length(fits))
  if (length(fits) == 0) return(invisible())
  m <- fits[[which.max(sapply(fits, logLik))]]
  put(id, "logLik", logLik(m))
  V <- matrix(as.numeric(getVarCov(m)), 2); s2 <- m$sigma^2
  put(id, "a", fixef(m)[1]); put(id, "b", fixef(m)[2])
  put(id, "aVar", vcov(m)[1, 1]); put(id, "abVar", vcov(m)[1, 2]); put(id, "bVar", vcov(m)[2, 2])
  put(id, "G11", V[1, 1]); put(id, "G12", V[1, 2]); put(id, "G22", V[2, 2]); put(id, "s2", s2)
  co <- coef(m)
  P <- vcov(m)
  for (k in rownames(co)) {
    put(id, paste0("line.", k, ".a"), co[k, 1]); put(id, paste0("line.", k, ".b"), co[k, 2])
    Z <- cbind(1, d$x[d$g == k])
    W <- solve(Z %*% V %*% t(Z) + s2 * diag(nrow(Z)))
    C <- V - V %*% t(Z) %*% W %*% Z %*% V
    T <- diag(2) - V %*% t(Z) %*% W %*% Z
    E <- C + T %*% P %*% t(T)
    put(id, paste0("line.", k, ".condA"), C[1, 1]); put(id, paste0("line.", k, ".condB"), C[2, 2])
    put(id, paste0("line.", k, ".errA"), E[1, 1]); put(id, paste0("line.", k, ".errAB"), E[1, 2])
    put(id, paste0("line.", k, ".errB"), E[2, 2])
  }
}
d <- read.table(file("stdin"), colClasses = c("character", "character", "numeric", "numeric"),
                col.names = c("id", "g", "x", "y"))
for (id in unique(d$id)) figures(id, d[d$id == id, ])
own <- list(Orange = data.frame(g = as.character(Orange$Tree), x = Orange$age,
                                y = Orange$circumference),
            ChickWeight = data.frame(g = as.character(ChickWeight$Chick), x = ChickWeight$Time,
                                     y = ChickWeight$weight))
for (id in names(own)) {
  e <- own[[id]]
  put(id, "points", nrow(e))
  for (i in seq_len(nrow(e))) {
    put(id, paste0("g", i), as.numeric(e$g[i])); put(id, paste0("x", i), e$x[i])
    put(id, paste0("y", i), e$y[i])
  }
  figures(id, e)
}
