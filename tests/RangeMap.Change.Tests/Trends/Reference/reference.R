# Reference values for the tests beside this folder. Base R only: glm for the logistic, optim and numerical derivatives for the occupancy
# models, all written from the published likelihoods and not from the C# code. Run in this folder: Rscript reference.R
set.seed(20)

# Lists of 40 invented squares: year in decades, ln length, whether the taxon is on the list.
n <- 400
lists <- data.frame(square = sample(0:39, n, TRUE), decades = round(runif(n, -1, 1), 1), loglength = log(sample(2:20, n, TRUE)))
pull <- rnorm(40, 0, 0.7)
lists$found <- rbinom(n, 1, plogis(-2.5 + 0.4 * lists$decades + 0.8 * lists$loglength + pull[lists$square + 1]))
write.csv(format(lists, digits = 17), "lists.csv", row.names = FALSE, quote = FALSE)
fit <- glm(found ~ decades + loglength, binomial, lists, control = glm.control(epsilon = 1e-14))
x <- model.matrix(fit)
score <- rowsum(x * (lists$found - fitted(fit)), lists$square)
squares <- nrow(score)
sandwich <- vcov(fit) %*% crossprod(score) %*% vcov(fit) * squares / (squares - 1)

out <- list()
put <- function(name, value) out[[length(out) + 1]] <<- data.frame(name = name, value = sprintf("%.10g", value))
put("logistic.b0", coef(fit)[1]); put("logistic.b1", coef(fit)[2]); put("logistic.b2", coef(fit)[3])
put("logistic.se1", sqrt(vcov(fit)[2, 2])); put("logistic.loglik", as.numeric(logLik(fit))); put("logistic.clustered1", sqrt(sandwich[2, 2]))

# Occupancy: 80 invented sites, two seasons, two classes of visit, visits k and finds d in columns season-class.
sites <- 80
z1 <- rbinom(sites, 1, 0.6); z2 <- ifelse(z1 == 1, rbinom(sites, 1, 0.75), rbinom(sites, 1, 0.15))
k <- matrix(rpois(sites * 4, 2), sites)
p <- plogis(c(-0.6, 0.4, -0.2, 0.8))
d <- sapply(1:4, function(j) rbinom(sites, k[, j], p[j]) * (if (j <= 2) z1 else z2))
write.csv(data.frame(k = k, d = d), "sites.csv", row.names = FALSE, quote = FALSE)
x <- c(-0.5, 0.5)

two <- function(t, prior) {  # logits of psi, colonisation, extinction, detection of both seasons, slope
  q <- plogis(t[1:3]); ll <- 0
  a <- sapply(1:2, function(s) exp(rowSums(sapply(1:2, function(j) {
    c <- 2 * (s - 1) + j; r <- plogis(t[3 + s] + t[6] * x[j]); d[, c] * log(r) + (k[, c] - d[, c]) * log(1 - r) }))))
  b <- cbind(rowSums(d[, 1:2]) == 0, rowSums(d[, 3:4]) == 0)
  sum(log(q[1] * a[, 1] * ((1 - q[3]) * a[, 2] + q[3] * b[, 2]) + (1 - q[1]) * b[, 1] * (q[2] * a[, 2] + (1 - q[2]) * b[, 2]))) +
    prior * sum(log(q) + log(1 - q)) / 2
}
one <- function(t) {  # logits of psi and detection in the first season, classes together
  K <- rowSums(k[, 1:2]); D <- rowSums(d[, 1:2]); psi <- plogis(t[1]); r <- plogis(t[2])
  sum(log(psi * r^D * (1 - r)^(K - D) + (1 - psi) * (D == 0)))
}
climb <- function(f, start) {
  best <- optim(start, f, method = "BFGS", control = list(fnscale = -1, reltol = 1e-15, maxit = 1000))
  best <- optim(best$par, f, method = "BFGS", control = list(fnscale = -1, reltol = 1e-15, maxit = 1000), hessian = TRUE)
  list(par = best$par, value = best$value, se = sqrt(diag(solve(-best$hessian))))
}
for (prior in 0:1) {
  m <- climb(function(t) two(t, prior), c(0, -1, -1, 0, 0, 0))
  for (i in 1:6) { put(sprintf("two%d.t%d", prior, i - 1), m$par[i]); put(sprintf("two%d.se%d", prior, i - 1), m$se[i]) }
  put(sprintf("two%d.loglik", prior), m$value)
}
m <- climb(one, c(0, 0))
put("one.psi", m$par[1]); put("one.p", m$par[2]); put("one.se.psi", m$se[1]); put("one.se.p", m$se[2]); put("one.loglik", m$value)
write.csv(do.call(rbind, out), "expected.csv", row.names = FALSE, quote = FALSE)
cat(R.version.string, "\n")
