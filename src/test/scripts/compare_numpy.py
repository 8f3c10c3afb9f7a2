"""Values what the program valued, in numpy: largest difference, processor time, and the ratio.

    /usr/bin/python3 src/test/scripts/compare_numpy.py FOLDER

Python 3.11.2 and numpy 1.24.2, both Debian's (python3-numpy). FOLDER is filled by compare.sh.
"""

import multiprocessing
import sys
import time

import farm_numpy
import numpy as np

BLOCKS = (25, 50, 100, 200)
ROUNDS = 3


def value(farm, work, first, end, block):
    base = getattr(farm, work + "_base").astype(int)
    choices = getattr(farm, work + "_choices").astype(int)
    values = []
    for start in range(first, end, block):
        of = slice(start, min(end, start + block))
        x = np.ascontiguousarray(farm.drawn[of].T)
        shares = np.ascontiguousarray(farm.shares[of].transpose(1, 2, 0))
        seasons = np.ascontiguousarray(farm.seasons[of].T)
        values.append(farm_numpy.npv(farm, x, shares, seasons, base, choices))
    return np.concatenate(values, 1)


def report(farm, work):
    """The best of several block sizes, so that the draws at once are those that suit this machine's caches."""
    draws = len(farm.drawn)
    expected = getattr(farm, work + "_npv").T
    spent = {}
    for block in BLOCKS:
        value(farm, work, 0, min(draws, block), block)
        seconds = []
        for _ in range(ROUNDS):
            start = time.process_time()
            values = value(farm, work, 0, draws, block)
            seconds.append(time.process_time() - start)
        spent[block] = min(seconds)
    block = min(spent, key=spent.get)
    parts = [(farm, work, 0, draws // 2, block), (farm, work, draws // 2, draws, block)]
    clock = []
    with multiprocessing.Pool(2) as pool:
        for _ in range(ROUNDS):
            start = time.perf_counter()
            pool.starmap(value, parts)
            clock.append(time.perf_counter() - start)
    scale = np.abs(expected).max()
    far = np.abs(values - expected).max()
    java, java_both = getattr(farm, work + "_seconds")
    print(
        f"numpy, {work}: {draws} draws, {block} at once, {len(expected)} choices,"
        f" {1000 * spent[block] / draws:.3f} ms of processor time a draw, {draws / spent[block]:.0f} draws/s in one"
        f" process; {draws / min(clock):.0f} draws/s by the clock in two"
    )
    print(
        f"largest difference {far:.1e} of values up to {scale:.3g}, relative {far / scale:.1e};"
        f" numpy / Java {spent[block] / java:.2f} by processor time, {min(clock) / java_both:.2f} by the clock"
    )
    if far > 1e-9 * scale:
        sys.exit("numpy and Java differ by more than rounding")


if __name__ == "__main__":
    loaded = farm_numpy.load(sys.argv[1])
    for name in ("options", "starts"):
        report(loaded, name)
