# SPDX-License-Identifier: GPL-3.0-or-later
# The chance that a group's shrunken line at x lies under y, over all covariances between groups,
# by brute force: a fine even grid over the shares of error S = (I + H^1/2 G H^1/2)^-1 (uniform on
# 0 < S < I, Natarajan and Kass 2000, from memory), dense matrices, Student's t about each.
# Arguments: the group, the grid's steps. Standard input: rows "g x y", then rows "at x y".
# Output: "p.K value" for the K-th of the latter.
arguments <- commandArgs(trailingOnly = TRUE)
lines <- strsplit(readLines(file("stdin")), " ")
ask <- Filter(function(l) l[1] == "at", lines)
rows <- Filter(function(l) l[1] != "at", lines)
g <- sapply(rows, `[`, 1)
x <- as.numeric(sapply(rows, `[`, 2)); y <- as.numeric(sapply(rows, `[`, 3))
centre <- mean(x); scale <- sqrt(mean((x - centre)^2)); u <- (x - centre) / scale
X <- cbind(1, u); n <- length(y); groups <- unique(g)
H <- t(X) %*% X / length(groups)
e <- eigen(H); root <- e$vectors %*% diag(sqrt(e$values)) %*% t(e$vectors); back <- solve(root)
same <- outer(g, g, "==")
mine <- g == arguments[1]; Z <- X[mine, , drop = FALSE]
k <- as.numeric(arguments[2])
s <- (seq_len(k) - 0.5) / k; off <- (seq_len(k) - 0.5) / k - 0.5
weight <- numeric(0); means <- list(); errors <- list()
for (s1 in s) for (s2 in s) for (s12 in off) {
  if (s1 * s2 - s12^2 <= 1e-5 || (1 - s1) * (1 - s2) <= s12^2) next # all but singular: no weight
  G <- back %*% (solve(matrix(c(s1, s12, s12, s2), 2), tol = 0) - diag(2)) %*% back
  V <- diag(n) + same * (X %*% G %*% t(X))
  W <- solve(V, tol = 0); A <- t(X) %*% W %*% X; P <- solve(A, tol = 0)
  beta <- P %*% t(X) %*% W %*% y; left <- y - X %*% beta
  ssr <- c(t(left) %*% W %*% left)
  weight <- c(weight, -0.5 * (c(determinant(V)$modulus) + c(determinant(A)$modulus) +
                                (n - 2) * log(ssr)))
  K <- solve(diag(nrow(Z)) + Z %*% G %*% t(Z), tol = 0)
  line <- beta + G %*% t(Z) %*% K %*% left[mine]
  T <- diag(2) - G %*% t(Z) %*% K %*% Z
  error <- ssr / (n - 2) * (G - G %*% t(Z) %*% K %*% Z %*% G + T %*% P %*% t(T))
  means <- c(means, list(line)); errors <- c(errors, list(error))
}
weight <- exp(weight - max(weight)); weight <- weight / sum(weight)
for (i in seq_along(ask)) {
  a <- c(1, (as.numeric(ask[[i]][2]) - centre) / scale); at <- as.numeric(ask[[i]][3])
  p <- mapply(function(m, E) pt((at - sum(a * m)) / sqrt(c(t(a) %*% E %*% a)), n - 2),
              means, errors)
  cat(sprintf("p.%d %.10g\n", i, sum(weight * p)))
}
