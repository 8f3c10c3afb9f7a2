"""Seed in the ground and shares of the cultivars, year by year: docs/method/seed-bank.md."""

import random

import checkfile

YEARS = 12
SUMMERS = 400


def kept(r, summers):
    """Share of a crop still hard after so many summers."""
    share = 1.0
    for summer in range(1, summers + 1):
        share *= r[min(summer, 4) - 1]
    return share


def run(case):
    """Crops of seed are kept apart by the year they were set; year -k is k years before the first autumn's crop."""
    names = range(len(case["initial"]))
    # A steady stand sets one unit a year; what lies in the ground, and what of it germinates, in those units.
    lying = [sum(kept(case["retention"][c], s) for s in range(SUMMERS)) for c in names]
    sprouting = [
        sum(kept(case["retention"][c], s) - kept(case["retention"][c], s + 1) for s in range(SUMMERS)) for c in names
    ]
    need = [case["initial"][c] / case["crowding"][c] / sprouting[c] * lying[c] for c in names]
    bank = [case["bank"] * need[c] / sum(need) for c in names]
    crops = [
        {-s: bank[c] / lying[c] * kept(case["retention"][c], s) * (1 - case["buried"]) for s in range(SUMMERS)} for c in names
    ]
    deep = [bank[c] * case["buried"] for c in names]
    shares, lying_by_year = [], []
    for year in range(YEARS):
        lying_by_year += [sum(crops[c].values()) + deep[c] for c in names]
        plants = []
        for c in names:
            up = 0.0
            for born, seed in crops[c].items():
                stay = case["retention"][c][min(year - born + 1, 4) - 1]
                up += seed * (1 - stay)
                crops[c][born] = seed * stay
            plants.append(up * case["emergence"])
            deep[c] *= case["buried_kept"]
        crop = case["yield"]
        if year < case["run_down"]:
            crop *= case["seed_set"]
        if year == case["run_down"]:
            plants = [p * (1 - case["kill"]) for p in plants]
            if case["sown"] > 0:
                plants[case["sown_cultivar"]] += case["sown"] * case["good"]
                crop *= case["first_year"]
        weight = [case["crowding"][c] * plants[c] for c in names]
        part = [w / sum(weight) for w in weight]
        shares += part
        for c in names:
            crops[c][year + 1] = crop * part[c]
    return shares, lying_by_year


def main():
    draw = random.Random(11)
    rows = []
    for number in range(16):
        cultivars = draw.choice((2, 3))
        cut = sorted(draw.random() for _ in range(cultivars - 1))
        initial = [round(b - a, 3) for a, b in zip([0] + cut, cut + [1])]
        initial[-1] = round(1 - sum(initial[:-1]), 3)
        case = {
            "initial": initial,
            "retention": [[round(draw.uniform(0.2, 0.9), 2) for _ in range(4)] for _ in range(cultivars)],
            "crowding": [round(draw.uniform(0.7, 1.8), 2) for _ in range(cultivars)],
            "bank": draw.choice((400.0, 1100.0, 1300.0)),
            "yield": draw.choice((300.0, 600.0, 1000.0)),
            "run_down": draw.choice((0, 1, 2, 3)),
            "seed_set": draw.choice((0.0, 0.1, 0.5)),
            "kill": draw.choice((0.0, 0.8, 0.95)),
            "sown": draw.choice((0.0, 10.0, 20.0)),
            "sown_cultivar": cultivars - 1,
            "emergence": draw.choice((0.4, 0.6, 1.0)),
            "good": 0.85,
            "first_year": draw.choice((0.3, 0.5)),
            "buried": draw.choice((0.0, 0.0, 0.8)),
            "buried_kept": 0.97,
        }
        shares, lying = run(case)
        flat = dict(case, retention=[r for one in case["retention"] for r in one])
        rows.append(list(flat.values()) + [shares, lying])
    checkfile.write("seed-bank.csv", "seed_bank.py", "docs/method/seed-bank.md", list(flat) + ["shares", "lying"], rows)


if __name__ == "__main__":
    main()
