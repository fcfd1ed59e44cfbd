# What R's data.table needs to read the same file as bench_audit and to test five simple conditions a row, in seconds by
# the clock. Readings that bear their units must first be taken from their texts, each different text once.
#   Rscript audit.R CSV
library(data.table)
started <- proc.time()[["elapsed"]]
visits <- fread(commandArgs(trailingOnly = TRUE)[1])
read <- proc.time()[["elapsed"]] - started
number <- function(column) {
  x <- visits[[column]]
  if (!is.character(x)) return(x)
  texts <- unique(x)
  as.numeric(sub(" .*", "", texts, perl = TRUE))[match(x, texts)]
}
doubtful <- number(5) > 40 | number(6) < -2 | number(8) > 300 | number(9) > 100 | number(10) < number(11)
tested <- proc.time()[["elapsed"]] - started
cat(sprintf("data.table %s, %d thread(s): read in %.2f s, five conditions tested after %.2f s; %d rows doubtful\n",
            packageVersion("data.table"), getDTthreads(), read, tested, sum(doubtful)))
