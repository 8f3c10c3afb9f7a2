"""Fits how much better than the standing dry feed the diet of sheep is: feed.dry-selection in tables/feed-parameters.csv.

Data: src/test/resources/published/grain-on-dry-pasture.csv, 24 cells of grain (kg as fed a day, 13 MJ/kg DM, 90 % dry
matter) that holds a ewe on dry pasture. Equations: docs/method/energy.md and docs/method/feed-budget.md, written out here.
Plain Python 3, from the top of the tree: python3 src/test/scripts/intake_fit.py
"""

import csv
import math

with open("src/test/resources/published/grain-on-dry-pasture.csv") as file:
    CELLS = [
        (float(r["weightKg"]), float(r["kgDmPerHa"]), float(r["digestibilityPercent"]) / 100, float(r["grainKgPerDay"]))
        for r in csv.DictReader(file)
    ]
COLUMNS = sorted({(kg, d) for _, kg, d, _ in CELLS})


def need(w):
    """A dry grazing ewe of four years by SCA 1990, MJ ME a day; M/D 10, level ground, 0.02 of liveweight eaten."""
    km = 0.02 * 10 + 0.5
    return (0.28 * w**0.75 * math.exp(-0.03 * 4) + (0.05 * 0.02 * w * (0.9 - 0.68) + 0.05 / (1.5 + 3)) * w) / km


def grain(w, kg, d, selection=0.0, full=0.8, slope=1.7, intake=1.0, needed=1.0):
    b = 0.00112 * kg
    available = (1 - math.exp(-b)) * (1 + 0.6 * math.exp(-b * b))
    d += selection
    eaten_kg = intake * 0.04 * (1.7 - 1) * w * available * max(0, 1 - slope * (full - d))
    return max(0, needed * need(w) - eaten_kg * (17.2 * d - 1.707)) / (13 * 0.9)


def errors(cells, **changed):
    return [grain(w, kg, d, **changed) - g for w, kg, d, g in cells]


def rms(values):
    return math.sqrt(sum(v * v for v in values) / len(values))


def fit(cells, name, low, high):
    steps = [low + (high - low) * i / 2000 for i in range(2001)]
    return min(steps, key=lambda value: rms(errors(cells, **{name: value})))


def line(what, value, found):
    mean = sum(found) / len(found)
    print(f"{what:42s} {value:6.3f}  mean {mean:+.3f}  rms {rms(found):.3f}  worst {max(found, key=abs):+.2f} kg")


print("One number at a time, all 24 cells")
line("none: the equation as remembered", 0, errors(CELLS))
for name, low, high in (
    ("selection", 0, 0.2),
    ("full", 0.6, 0.9),
    ("slope", 0.5, 2.5),
    ("intake", 0.5, 2),
    ("needed", 0.5, 1.5),
):
    value = fit(CELLS, name, low, high)
    line(name, value, errors(CELLS, **{name: value}))

print("\nSelection, column by column")
by_column = []
for kg, d in COLUMNS:
    cells = [c for c in CELLS if c[1:3] == (kg, d)]
    value = fit(cells, "selection", 0, 0.2)
    by_column.append(value)
    line(f"{kg:.0f} kg DM/ha of {100 * d:.0f} %", value, errors(cells, selection=value))

likely = round(fit(CELLS, "selection", 0, 0.2), 2)
low, high = math.floor(100 * min(by_column) / 5) / 20, math.ceil(100 * max(by_column) / 5) / 20
print(f"\nfeed.dry-selection: low {low:g}, likely {likely:g}, high {high:g}   (ends outwards to 0.05)")

print("\nWhat is left at the likely value, kg a day (published / ours)")
for kg, d in COLUMNS:
    row = [f"{w:.0f} kg {g:.2f} / {grain(w, kg, d, likely):.2f}" for w, k, q, g in CELLS if (k, q) == (kg, d)]
    print(f"{kg:5.0f} kg DM/ha of {100 * d:.0f} %: " + ", ".join(row))
line("all", likely, errors(CELLS, selection=likely))
