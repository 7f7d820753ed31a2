# Intervals of arrival drawn at random, and what survival::survreg makes of them. Run here: Rscript arrivals.R
# Written with R 4.2.2 and survival 3.5-3.
library(survival)
set.seed(20)
rows <- NULL
answers <- NULL
for (set in 1:6) {
  n <- c(25, 60, 60, 150, 400, 60)[set]
  speed <- c(5, 5, 12, 3, 8, 6)[set]
  d <- round(runif(n, 0, 150), 3)
  arrival <- 1990 + d / speed + c(1.5, 3, 1, 2, 5, 0.4)[set] * (if (set %% 2) rnorm(n) else rlogis(n))
  a <- rep(-Inf, n)
  b <- rep(Inf, n)
  for (year in 1985:2020) {
    visited <- runif(n) < c(0.5, 0.3, 0.2, 0.4, 0.1, 0.8)[set]
    a <- ifelse(visited & year < arrival, pmax(a, year), a)
    b <- ifelse(visited & year >= arrival, pmin(b, year), b)
  }
  known <- is.finite(a) | is.finite(b)
  d <- d[known]; a <- a[known]; b <- b[known]
  rows <- rbind(rows, data.frame(set = set, distance = d, after = a, by = b))
  for (shape in c("gaussian", "logistic")) {
    fit <- survreg(Surv(ifelse(is.finite(a), a, NA), ifelse(is.finite(b), b, NA), type = "interval2") ~ d, dist = shape,
                   control = survreg.control(rel.tolerance = 1e-12, maxiter = 200))
    answers <- rbind(answers, data.frame(set = set, shape = shape, intercept = coef(fit)[1], slope = coef(fit)[2], error = sqrt(vcov(fit)[2, 2]),
                                         scale = fit$scale, logLikelihood = fit$loglik[2]))
  }
}
numbers <- function(table) format(table, digits = 12, trim = TRUE)
rows$after <- ifelse(is.finite(rows$after), rows$after, "")
rows$by <- ifelse(is.finite(rows$by), rows$by, "")
write.csv(rows, "arrivals.csv", row.names = FALSE, quote = FALSE)
write.csv(format(answers, digits = 10, trim = TRUE), "arrivals-survreg.csv", row.names = FALSE, quote = FALSE)
