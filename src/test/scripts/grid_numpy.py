"""Tables read between their nodes by straight lines, for many draws at once.

Python 3.11.2 and numpy 1.24.2, both Debian's (python3-numpy). Run by compare.sh; see docs/performance.md.
"""

import numpy as np


def between(a, b, u, v, size, fill):
    """Reads tables between their nodes by straight lines, filling just the nodes that have a weight.

    a, b are cells and u, v places in them, the last axis the draws; size [nodes a, nodes b, draws].
    """
    at = (a * size[1] + b) * size[2] + np.arange(size[2])
    corners = [
        (at, (1 - u) * (1 - v)),
        (at + size[2], (1 - u) * v),
        (at + size[1] * size[2], u * (1 - v)),
        (at + (size[1] + 1) * size[2], u * v),
    ]
    asked = np.zeros(size[0] * size[1] * size[2], dtype=bool)
    for places, share in corners:
        asked[places[share > 0]] = True
    needed = np.flatnonzero(asked)
    read = []
    for values in fill(needed):
        table = np.zeros(len(asked))
        table[needed] = values
        read.append(sum(table[places] * share for places, share in corners))
    return read
