# Variances and fixed effects of independent families and plants, by lme4.
# Takes a table with the columns value, weight, season, marked, family, plant.
suppressPackageStartupMessages(library(lme4))
fruits <- read.csv(commandArgs(trailingOnly = TRUE)[1], colClasses = c(season = "factor", family = "factor",
  plant = "factor"))
fit <- lmer(value ~ season + marked + (1 | family) + (1 | plant), data = fruits, weights = weight, REML = TRUE,
  control = lmerControl(optimizer = "bobyqa", optCtrl = list(rhoend = 1e-10, maxfun = 1e5)))
parts <- as.data.frame(VarCorr(fit))
tell <- function(name, value) cat(name, format(value, digits = 15), "\n")
tell("family", parts$vcov[parts$grp == "family"])
tell("plant", parts$vcov[parts$grp == "plant"])
tell("residual", parts$vcov[parts$grp == "Residual"])
for (i in seq_along(fixef(fit))) tell(paste0("fixed", i), fixef(fit)[[i]])
for (i in seq_along(fixef(fit))) tell(paste0("error", i), sqrt(diag(as.matrix(vcov(fit))))[[i]])
tell("likelihood", as.numeric(logLik(fit)))
