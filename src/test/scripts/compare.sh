#!/bin/sh
# Compares the program with numpy, in one run: equal results, times, ratios. Needs Debian's python3-numpy 1.24.2.
# From the top of the tree:
#
#     sh src/test/scripts/compare.sh [demonstration farm, large-farm] [draws, 1000]
#
# Files are left in target/comparison. docs/performance.md says what is compared.
set -eu
farm=${1:-large-farm}
draws=${2:-1000}
folder=target/comparison
rm -rf "$folder"
mvn -q -o -Pbench test-compile exec:exec -Dbench.main=swardcase.draws.Comparison -Dbenchmarks="$farm,$draws,$folder"
/usr/bin/python3 -B src/test/scripts/compare_numpy.py "$folder"
