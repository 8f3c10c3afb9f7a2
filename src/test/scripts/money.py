"""Net present value, internal and modified rates, payback and annuity: docs/method/money.md."""

import random
from fractions import Fraction

import checkfile
import numpy


def npv(rate, flows):
    r = Fraction(rate)
    return sum(Fraction(f) / (1 + r) ** t for t, f in enumerate(flows))


def internal_rates(flows):
    """Real roots x = 1/(1 + r) of the polynomial, r from -99 to 1,000 %."""
    found = []
    for root in numpy.roots(list(reversed(flows))):
        if abs(root.imag) < 1e-9 and root.real > 0:
            rate = 1 / root.real - 1
            if -0.99 < rate < 10:
                found.append(float(rate))
    return sorted(found)


def modified(flows, finance, reinvest):
    n = len(flows) - 1
    future = sum(f * (1 + reinvest) ** (n - t) for t, f in enumerate(flows) if f > 0)
    present = -sum(f / (1 + finance) ** t for t, f in enumerate(flows) if f < 0)
    return (future / present) ** (1 / n) - 1


def payback(rate, flows):
    """Last time the discounted sum, straight within each year, comes up to zero; -1 if it ends below."""
    sums = [float(npv(rate, flows[: t + 1])) for t in range(len(flows))]
    if sums[-1] < 0:
        return -1.0
    below = [t for t, s in enumerate(sums) if s < 0]
    if not below:
        return 0.0
    t = below[-1]
    return t + -sums[t] / (sums[t + 1] - sums[t])


def annuity(value, rate, years):
    """By summing the discount factors instead of the closed form."""
    factors = sum(1 / (1 + Fraction(rate)) ** t for t in range(1, years + 1))
    return value / factors


def main():
    draw = random.Random(20260101)
    rows = []
    for case in range(40):
        years = draw.randint(2, 20)
        flows = [draw.randint(-90, 30) * 100] + [draw.randint(-4, 14) * 100 for _ in range(years)]
        if case % 8 == 0:
            flows[years // 2] = -5000
        if not (min(flows) < 0 < max(flows)):
            flows[0], flows[1] = -1000, 400
        rate = draw.choice((0.03, 0.07, 0.11))
        reinvest = draw.choice((0.02, 0.05, 0.09))
        value = npv(rate, flows)
        rows.append(
            [
                flows,
                rate,
                reinvest,
                float(value),
                float(annuity(value, rate, years)),
                internal_rates(flows),
                modified(flows, rate, reinvest),
                payback(rate, flows),
            ]
        )
    checkfile.write(
        "money.csv",
        "money.py",
        "docs/method/money.md",
        ["flows", "rate", "reinvest", "npv", "annuity", "internal_rates", "modified_rate", "payback_years"],
        rows,
    )


if __name__ == "__main__":
    main()
