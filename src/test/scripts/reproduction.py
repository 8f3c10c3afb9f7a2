"""Ewes in lamb on oestrogenic clover and ewes barren for good: docs/method/reproduction.md."""

import random
from math import ceil

import checkfile

MONTHS = (31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)
HALF_OF_DAY = []
for month, length in enumerate(MONTHS):
    HALF_OF_DAY += [2 * month] * (length // 2) + [2 * month + 1] * (length - length // 2)
CYCLE = 17


def held(dose, d50, n):
    return 1 / (1 + (dose / d50) ** n)


def cycle_multipliers(doses, start, days, d50, n, ramp, lag, half_life):
    """The walk by days; lag in whole days."""
    first = start - 120
    target = [1 - held(doses[HALF_OF_DAY[day % 365]], d50, n) for day in range(first, start + days)]
    effect = [target[0]]
    for t in range(1, len(target)):
        before = effect[-1]
        rising = min(target[t], before + target[t] / ramp)
        floor = max(target[max(0, t - lag) : t + 1])
        falling = before if before <= floor else floor + (before - floor) * 2 ** (-1 / half_life)
        effect.append(max(rising, falling))
    joined = [1 - e for e in effect[120:]]
    return [sum(part) / len(part) for part in (joined[i : i + CYCLE] for i in range(0, days, CYCLE))]


def in_lamb(unaffected, days, multipliers, barren):
    cycles = days / CYCLE
    p0 = 1 - (1 - unaffected) ** (1 / cycles)
    empty = 1.0
    for j, m in enumerate(multipliers):
        empty *= (1 - p0 * m) ** min(1, cycles - j)
    return (1 - barren) * (1 - empty)


def unaffected_from_seen(seen, days, multipliers, barren):
    """False position on the equation in R0, held to 0.99."""
    low, high = seen, 0.99
    if in_lamb(high, days, multipliers, barren) <= seen:
        return high
    for _ in range(5000):
        f_low = in_lamb(low, days, multipliers, barren) - seen
        f_high = in_lamb(high, days, multipliers, barren) - seen
        middle = (low * f_high - high * f_low) / (f_high - f_low)
        miss = in_lamb(middle, days, multipliers, barren) - seen
        if abs(miss) < 1e-14:
            return middle
        if miss < 0:
            low = middle
        else:
            high = middle
    return middle


def barren_share(doses, d50, n, seasons, q):
    exposure = sum((1 - held(d, d50, n)) / (1 - held(0.5, d50, n)) * MONTHS[p // 2] / 2 for p, d in enumerate(doses)) / 180
    return 1 - (1 - q) ** (exposure * seasons)


def main():
    draw = random.Random(7)
    rows = []
    for case in range(40):
        doses = [round(draw.choice((0, 0, draw.uniform(0, 0.7))), 3) for _ in range(24)]
        start = draw.randrange(365)
        weeks = draw.choice((3, 5, 6, 8, 9))
        days = 7 * weeks
        d50, n = draw.choice(((0.41, 3.0), (0.30, 2.0), (0.55, 4.0)))
        lag, half_life = draw.choice(((17, 7.0), (10, 4.0), (17, 12.0)))
        multipliers = cycle_multipliers(doses, start, days, d50, n, 14, lag, half_life)
        assert len(multipliers) == ceil(days / CYCLE)
        barren = barren_share(doses, d50, n, draw.choice((1, 2.5)), draw.choice((0.05, 0.12, 0.25)))
        unaffected = round(draw.uniform(0.6, 0.97), 3)
        seen = round(draw.uniform(0.5, 0.85), 3)
        rows.append(
            [
                doses,
                start,
                weeks,
                d50,
                n,
                lag,
                half_life,
                multipliers,
                barren,
                unaffected,
                in_lamb(unaffected, days, multipliers, barren),
                seen,
                max(seen, unaffected_from_seen(seen, days, multipliers, barren)),
            ]
        )
    checkfile.write(
        "joining.csv",
        "reproduction.py",
        "docs/method/reproduction.md",
        "doses,start,weeks,d50,n,lag,half_life,multipliers,barren,unaffected,in_lamb,seen,unaffected_from_seen".split(","),
        rows,
    )
    rows = []
    for dose in (0.05, 0.12, 0.2, 0.33, 0.5, 0.6, 0.9):
        for d50, n in ((0.41, 3.0), (0.30, 2.0), (0.55, 4.0)):
            year = [dose if 8 <= p < 20 else 0 for p in range(24)]
            for q in (0.05, 0.12, 0.25):
                rows.append([dose, d50, n, q, held(dose, d50, n), barren_share(year, d50, n, 3, q)])
    checkfile.write(
        "dose.csv",
        "reproduction.py",
        "docs/method/reproduction.md; barren after three seasons at the dose from May to October",
        ["dose", "d50", "n", "q", "multiplier", "barren"],
        rows,
    )


if __name__ == "__main__":
    main()
