"""Quantiles of PERT distributions, by integrating the beta density."""

from math import exp, lgamma

import checkfile
import numpy

NODES, WEIGHTS = numpy.polynomial.legendre.leggauss(400)


def integral(f, a, b):
    x = (b - a) / 2 * NODES + (a + b) / 2
    return float((b - a) / 2 * numpy.sum(WEIGHTS * f(x)))


def beta(low, likely, high):
    """The density whose mode is the likely value."""
    alpha = 1 + 4 * (likely - low) / (high - low)
    other = 1 + 4 * (high - likely) / (high - low)
    scale = exp(lgamma(alpha + other) - lgamma(alpha) - lgamma(other))
    return lambda x: scale * x ** (alpha - 1) * (1 - x) ** (other - 1)


def quantile(density, p):
    low, high = 0.0, 1.0
    for _ in range(60):
        middle = (low + high) / 2
        if integral(density, 0, middle) < p:
            low = middle
        else:
            high = middle
    return (low + high) / 2


def main():
    rows = []
    for low, likely, high in ((0, 0.5, 0.8), (0.30, 0.41, 0.55), (300, 600, 1000), (-2, -2, 3), (10, 17, 17), (0.85, 1, 1.15)):
        density = beta(low, likely, high)
        width = high - low
        points = [low + width * quantile(density, p) for p in (0.01, 0.05, 0.25, 0.5, 0.75, 0.95, 0.99)]
        rows.append([low, likely, high, points])
    checkfile.write(
        "pert.csv",
        "pert.py",
        "the PERT distribution; quantiles at 0.01 0.05 0.25 0.5 0.75 0.95 0.99",
        ["low", "likely", "high", "quantiles"],
        rows,
    )


if __name__ == "__main__":
    main()
