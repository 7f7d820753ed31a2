# An invented field of arrival years on 10 km squares, each visited every year, and the smooth surface that mgcv::gam draws through the years of first finds.
# Run here: Rscript arrival-field.R. Written with R 4.2.2 and mgcv 1.8-41.
library(mgcv)
set.seed(41)
squares <- expand.grid(x = seq(5, 235, 10), y = seq(5, 235, 10))
# Lands in the middle of the south side; slower over a ridge in the west, faster along a valley in the east; single squares differ by a year.
away <- sqrt((squares$x - 120)^2 + squares$y^2)
squares$mean <- 2000 + away / 6 + 5 * exp(-((squares$x - 60)^2 + (squares$y - 150)^2) / 2 / 45^2) - 4 * exp(-((squares$x - 190)^2 + (squares$y - 110)^2) / 2 / 50^2)
squares$found <- round(squares$mean + rnorm(nrow(squares), 0, 1))
squares$away <- away
fit <- gam(found ~ away + s(x, y, bs = "gp", k = 60), data = squares, method = "REML")
squares$surface <- as.numeric(fitted(fit))
cat("residual deviation", sqrt(fit$sig2), " mean distance from the truth", mean(abs(squares$surface - squares$mean)), "\n")
write.csv(format(squares[, c("x", "y", "mean", "found", "surface")], digits = 10, trim = TRUE), "arrival-field.csv", row.names = FALSE, quote = FALSE)
