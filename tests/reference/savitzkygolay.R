# SPDX-License-Identifier: GPL-3.0-or-later
# Weights of a local polynomial by the normal equations: points order derivative position.
a <- as.integer(commandArgs(TRUE))
half <- a[1] %/% 2
t <- -half:half
X <- outer(t, 0:a[2], "^")
q <- qr(X)
C <- qr.coef(q, diag(a[1]))            # polynomial coefficients from values
k <- 0:a[2]
d <- a[3]
f <- sapply(k, function(j) if (j < d) 0 else prod(if (d > 0) j - 0:(d - 1) else 1) * a[4]^(j - d))
w <- drop(f %*% C)
cat(sprintf("w%d %.17g\n", seq_along(w), w), sep = "")
