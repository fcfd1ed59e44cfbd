# The same season as bench_summary's, summed up by R with the package survival: sizes, a line of logarithms and a line of
# depths for every pool, the curve of pools still wet for interval-censored data, and its median by bootstrap.
#   Rscript summary.R CSV [DRAWS]     prints seconds; DRAWS fits of the curve, scaled up to 2,000
library(survival)
words <- commandArgs(trailingOnly = TRUE)
draws <- if (length(words) > 1) as.integer(words[2]) else 20L
visits <- read.csv(words[1])
seconds <- function(what) system.time(what)[["user.self"]]

of_pools <- seconds({
  figures <- lapply(split(visits, visits$pool), function(v) {
    w <- v[v$wet == 1, ]
    basin <- if (nrow(w) > 1) coef(summary(lm(log(area) ~ log(depth), w)))
    fall <- if (nrow(w) > 1) predict(lm(depth ~ day, w), data.frame(day = max(w$day)), interval = "prediction")
    c(range(w$area), mean(w$area), range(w$depth), range(w$temperature), basin, fall)
  })
  size <- tapply(visits$area, visits$pool, max, na.rm = TRUE)
  c(summary(size), sd(size), t.test(size)$conf.int)
  means <- replicate(2000, mean(sample(size, replace = TRUE)))
})
spells <- do.call(rbind, lapply(split(visits, visits$pool), function(v) {
  wet <- v$day[v$wet == 1]
  dry <- v$day[v$wet == 0]
  c(max(wet), if (length(dry) > 0) min(dry) else NA)
}))
curve <- function(rows) survfit(Surv(spells[rows, 1], spells[rows, 2], type = "interval2") ~ 1)
once <- seconds(curve(seq_len(nrow(spells))))
drawn <- seconds(for (i in seq_len(draws)) median(curve(sample(nrow(spells), replace = TRUE))))
cat(sprintf("R %s, survival %s: pools and programme %.2f s, curve %.2f s, %d draws of its median %.2f s; 2,000 would take %.0f s\n",
            getRversion(), packageVersion("survival"), of_pools, once, draws, drawn, 2000 * drawn / draws))
cat(sprintf("whole: %.1f s\n", of_pools + once + 2000 * drawn / draws))
