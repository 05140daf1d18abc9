# Variances and fixed effects where plants are related, from the restricted likelihood written out in full:
# V = a A + p I(plant) + e diag(1 / weight). Base R only.
# Takes a table with the columns value, weight, season, marked, plant (counted from 1), and one of relationships.
files <- commandArgs(trailingOnly = TRUE)
fruits <- read.csv(files[1], colClasses = c(season = "factor"))
kin <- as.matrix(read.csv(files[2], header = FALSE))
x <- model.matrix(~ season + marked, fruits)
y <- fruits$value
same <- outer(fruits$plant, fruits$plant, "==") * 1
kin <- kin[fruits$plant, fruits$plant]

whole <- function(v) v[1] * kin + v[2] * same + v[3] * diag(1 / fruits$weight)
estimates <- function(v) {
  half <- chol(whole(v))
  xs <- backsolve(half, x, transpose = TRUE)
  ys <- backsolve(half, y, transpose = TRUE)
  square <- crossprod(xs)
  b <- solve(square, crossprod(xs, ys))
  left <- ys - xs %*% b
  minus2 <- (length(y) - ncol(x)) * log(2 * pi) + 2 * sum(log(diag(half))) +
    as.numeric(determinant(square)$modulus) + sum(left^2)
  list(b = b, error = sqrt(diag(solve(square))), likelihood = -minus2 / 2)
}
height <- function(logs) -estimates(exp(logs))$likelihood
start <- rep(log(var(y) / 3), 3)
best <- nlminb(start, height, control = list(rel.tol = 1e-14, x.tol = 1e-10, iter.max = 1000, eval.max = 2000))
best <- optim(best$par, height, method = "Nelder-Mead", control = list(reltol = 1e-15, maxit = 5000))
v <- exp(best$par)
found <- estimates(v)
tell <- function(name, value) cat(name, format(value, digits = 15), "\n")
tell("genetic", v[1])
tell("plant", v[2])
tell("residual", v[3])
for (i in seq_along(found$b)) tell(paste0("fixed", i), found$b[i])
for (i in seq_along(found$b)) tell(paste0("error", i), found$error[[i]])
tell("likelihood", found$likelihood)
u <- v[1] * kin %*% solve(whole(v), y - x %*% found$b)
for (i in unique(fruits$plant)) tell(paste0("value", i), u[match(i, fruits$plant)])
