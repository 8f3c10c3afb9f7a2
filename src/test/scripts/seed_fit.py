"""One fit of seed set, hard seed, emergence and crowding to trials and surveys: docs/method/seed-fit.md.

Least squares on unbounded scales (logits of shares, logarithms of amounts) with a wide prior on each parameter, by Gauss and
Newton's method. Ranges hold 9 of 10 paddocks or cultivars: the doubt of the fit, enlarged where it misses its data by more than
their own spread, and the spread between them.
"""

import csv
import math
import pathlib

import checkfile
import numpy as np

ROOT = pathlib.Path(__file__).resolve().parents[3]
CLIMATES, CLASSES = ("hot", "cool"), ("soft", "moderate", "hard")
GOOD_SEED = 0.85
# Likely value before any datum, its spread on the fit's scale, and the spread between paddocks or cultivars: all judged.
RETENTION = {
    "hot": ((0.40, 0.8, 0.35), (0.35, 0.8, 0.35), (0.70, 0.4, 0.35), (0.75, 0.4, 0.2)),
    "cool": ((0.75, 0.8, 0.35), (0.75, 0.2, 0.2), (0.75, 0.1, 0.2), (0.75, 0.1, 0.2)),
}
SET = {"hot": (250.0, 1.0, 0.5), "cool": (150.0, 1.0, 0.4)}
EMERGENCE = (0.6, 1.0, 0.5)
CROWDING = (1.0, 0.2, 0.2)


def rows(path):
    with open(ROOT / path, encoding="utf-8") as file:
        return list(csv.DictReader(line for line in file if not line.startswith("#")))


DATA = rows("src/test/resources/published/seed-fit.csv")
HARDNESS = {row["name"]: row["hard_seed"] or "moderate" for row in rows("tables/cultivars.csv")}
CULTIVARS = sorted({row[side] for row in DATA for side in ("first", "second")} - {"", "unidentified"})


def parameters():
    """Key, whether it is a share, and its prior."""
    for climate in CLIMATES:
        yield f"seed.yield.{climate}", False, SET[climate]
        for hard in CLASSES:
            for age in range(4):
                yield f"seed.retention.{climate}.{hard}.age-{age + 1}", True, RETENTION[climate][age]
    yield "seed.emergence", True, EMERGENCE
    for name in CULTIVARS:
        yield "seed.crowding." + name.lower().replace(" ", "-"), False, CROWDING


PARAMETERS = list(parameters())


def values(theta):
    """Each parameter on its own scale, by key."""
    return {
        key: 1 / (1 + math.exp(-t)) if share else math.exp(t) for (key, share, _), t in zip(PARAMETERS, theta)
    }


def retention(p, climate, hard):
    return [p[f"seed.retention.{climate}.{hard}.age-{age}"] for age in (1, 2, 3, 4)]


def left(r, summers):
    return math.prod(r[min(age, 3)] for age in range(summers))


def years_of_set(r):
    """Seed in the ground under a stand in balance, in years of its seed set."""
    return 1 + r[0] * (1 + r[1] * (1 + r[2] / (1 - r[3])))


def strength(p, name):
    return p.get("seed.crowding." + name.lower().replace(" ", "-"), 1.0)


def mixture(p, row, years):
    """Share of the second cultivar in the clover of each year."""
    names = row["first"], row["second"]
    r = [retention(p, row["climate"], HARDNESS[name]) for name in names]
    k = [strength(p, name) for name in names]
    own = p[f"seed.yield.{row['climate']}"]
    crop = float(row["set"] or own)
    bank = [[0.0] * 4, [0.0] * 4]
    shares = []
    if row["ground"] == "balance":
        bank[0] = [own, own * r[0][0], own * r[0][0] * r[0][1], own * r[0][0] * r[0][1] * r[0][2] / (1 - r[0][3])]
    run_down = int(row["run_down"] or 0)
    for year in range(run_down + years):
        plants = []
        for c in (0, 1):
            stays = [bank[c][age] * r[c][age] for age in range(4)]
            plants.append(p["seed.emergence"] * (sum(bank[c]) - sum(stays)))
            bank[c] = [0.0, stays[0], stays[1], stays[2] + stays[3]]
        if year < run_down:
            continue
        if year == run_down and row["ground"] == "bare":
            share = float(row["start"])
        else:
            if year == run_down:
                plants[0] *= 1 - float(row["kill"])
                plants[1] += float(row["sown"]) * GOOD_SEED
            share = k[1] * plants[1] / (k[0] * plants[0] + k[1] * plants[1])
        shares.append(share)
        bank[0][0], bank[1][0] = crop * (1 - share), crop * share
    return shares


def predict(p, row):
    climate, year = row["climate"], int(row["year"] or 0)
    kind = row["calculation"]
    if kind == "left":
        return left(retention(p, climate, row["seed"]), year)
    if kind.startswith("left-"):
        soft, moderate, hard = (left(retention(p, climate, one), year) for one in CLASSES)
        if kind == "left-middle":
            return moderate - (soft + hard) / 2
        return hard - soft if kind == "left-apart" else (2 * soft + 2 * moderate + 3 * hard) / 7
    if kind in ("bank", "carried", "emerged"):
        times = years_of_set(retention(p, climate, row["seed"]))
        if kind == "emerged":
            return p["seed.emergence"] / times
        return p[f"seed.yield.{climate}"] * (times if kind == "bank" else times - 1)
    if kind == "set":
        return p[f"seed.yield.{climate}"]
    if kind == "emergence":
        return p["seed.emergence"]
    if kind == "strength":
        return strength(p, row["second"]) / strength(p, row["first"])
    shares = mixture(p, row, year)
    return shares[year - 1] if kind == "mixture" else shares[int(row["from"]) - 1] - shares[year - 1]


def on_scale(row, value):
    return math.log(value) if row["scale"] == "ln" else value


def scaled(share, value):
    return math.log(value / (1 - value)) if share else math.log(value)


def misses(theta):
    """Data less fit in units of their spread, then parameters less prior."""
    p = values(theta)
    data = [(on_scale(row, float(row["value"])) - on_scale(row, predict(p, row))) / float(row["sd"]) for row in DATA]
    prior = [(scaled(share, likely) - t) / sd for (_, share, (likely, sd, _)), t in zip(PARAMETERS, theta)]
    return np.array(data + prior)


def slopes(theta):
    step = 1e-5
    return np.array([(misses(theta + step * e) - misses(theta - step * e)) / (2 * step) for e in np.eye(len(theta))]).T


def fit():
    theta = np.array([scaled(share, likely) for _, share, (likely, _, _) in PARAMETERS])
    for _ in range(100):
        j, now = slopes(theta), misses(theta)
        move = -np.linalg.lstsq(j, now, rcond=None)[0]
        while (misses(theta + move) ** 2).sum() > (now**2).sum() + 1e-12:
            move /= 2
        theta = theta + move
        if abs(move).max() < 1e-9:
            break
    return theta, np.linalg.inv(slopes(theta).T @ slopes(theta))


def rounded(key, value):
    if key.startswith("seed.yield"):
        return round(value, -1)
    return round(value, 2)


def main():
    theta, covariance = fit()
    data = misses(theta)[: len(DATA)]
    enlarged = max(1.0, math.sqrt((data**2).mean()))
    table = []
    for i, (key, share, (_, _, between)) in enumerate(PARAMETERS):
        reach = 1.645 * math.hypot(enlarged * math.sqrt(covariance[i, i]), between)
        back = (lambda t: 1 / (1 + math.exp(-t))) if share else math.exp
        table.append([key] + [rounded(key, back(theta[i] + d)) for d in (-reach, 0, reach)])
    spread = CROWDING[1]
    table.append(["seed.crowding.default"] + [round(math.exp(d * spread), 2) for d in (-1.645, 0, 1.645)])
    checkfile.write("seed-fit.csv", "seed_fit.py", "docs/method/seed-fit.md", ["key", "low", "likely", "high"], table)
    leftovers(values(theta), data)


def leftovers(p, data):
    lines = []
    for row, miss in zip(DATA, data):
        ours = predict(p, row)
        digits = (lambda v: f"{v:.0f}") if ours > 10 else (lambda v: f"{v:.2f}")
        lines.append(f"| {row['key']} | {row['what']} | {row['source']} | {row['mark']} | {digits(float(row['value']))} | {digits(ours)} | {miss:+.1f} |")
    path = ROOT / "docs/method/seed-fit.md"
    text = path.read_text(encoding="utf-8")
    before, rest = text.split("<!-- data -->\n")
    after = rest.split("<!-- end -->")[1]
    head = "| datum | what | source | value | datum's value | fit | left over, in spreads |\n|---|---|---|---|---|---|---|\n"
    path.write_text(before + "<!-- data -->\n" + head + "\n".join(lines) + "\n<!-- end -->" + after, encoding="utf-8", newline="\n")
    print("\n".join(lines))


if __name__ == "__main__":
    main()
