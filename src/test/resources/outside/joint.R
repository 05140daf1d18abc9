# Breeding values of several traits by their whole covariances: V = G x A + P x I(plant) + E x I(fruit), written out in
# full. Base R only. Takes a table with the columns trait, plant, fruit (each counted from 1), value, weight, season; one
# of relationships; and one of a row for each trait: additive, permanent, residual variance, genetic correlations,
# environmental correlations.
files <- commandArgs(trailingOnly = TRUE)
d <- read.csv(files[1], colClasses = c(season = "factor"))
kin <- as.matrix(read.csv(files[2], header = FALSE))
s <- as.matrix(read.csv(files[3], header = FALSE))
n <- nrow(s)
genetic <- s[, 3 + 1:n] * sqrt(outer(s[, 1], s[, 1]))
permanent <- s[, 3 + n + 1:n] * sqrt(outer(s[, 2], s[, 2]))
residual <- s[, 3 + n + 1:n] * sqrt(outer(s[, 3], s[, 3]))
same <- function(column) outer(column, column, "==") * 1
t <- d$trait
v <- genetic[t, t] * kin[d$plant, d$plant] + permanent[t, t] * same(d$plant) +
  residual[t, t] * same(d$fruit) / outer(d$weight, d$weight, pmax)
x <- model.matrix(~ factor(trait):season - 1, d)
vi <- solve(v)
square <- solve(t(x) %*% vi %*% x)
b <- square %*% (t(x) %*% vi %*% d$value)
p <- vi - vi %*% x %*% square %*% t(x) %*% vi
tell <- function(name, value) cat(name, format(value, digits = 15), "\n")
for (trait in 1:n) {
  for (plant in seq_len(nrow(kin))) {
    cov <- genetic[trait, t] * kin[plant, d$plant]
    tell(paste0("value", trait, "of", plant), sum(cov * (vi %*% (d$value - x %*% b))))
    tell(paste0("error", trait, "of", plant), genetic[trait, trait] * kin[plant, plant] - sum(cov * (p %*% cov)))
  }
}
