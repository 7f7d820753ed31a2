# Points drawn at random, and the lines that quantreg::rq puts through them. Run here: Rscript quantiles.R
# Written with R 4.2.2 and quantreg 5.94. tau times the number of points is never whole, so that one line is best.
library(quantreg)
set.seed(31)
rows <- NULL
lines <- NULL
for (set in 1:8) {
  n <- c(31, 47, 83, 101, 149, 211, 337, 503)[set]
  t <- if (set %% 2) sample(1970:2020, n, replace = TRUE) else round(runif(n, 1970, 2020), 2)
  y <- round(c(3, 8, 5, 0, -2, 12, 6, 20)[set] * (t - 1970) + switch(1 + set %% 4, rnorm(n, 0, 20), rexp(n, 1 / 40), -rexp(n, 1 / 60), rt(n, 2) * 15), 3)
  rows <- rbind(rows, data.frame(set = set, t = t, y = y))
  for (tau in c(0.1, 0.5, 0.75, 0.9, 0.95)) {
    fit <- rq(y ~ t, tau = tau, method = "br")
    u <- residuals(fit)
    lines <- rbind(lines, data.frame(set = set, tau = tau, intercept = coef(fit)[1], slope = coef(fit)[2], objective = sum(u * (tau - (u < 0)))))
  }
}
write.csv(rows, "quantile-points.csv", row.names = FALSE, quote = FALSE)
write.csv(format(lines, digits = 12, trim = TRUE), "quantile-lines.csv", row.names = FALSE, quote = FALSE)
