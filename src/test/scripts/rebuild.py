"""Rebuilds the numbers of a farm of two paddocks from the method pages and the tables' likely values alone.

    python3 src/test/scripts/rebuild.py

Reads src/test/resources/farms/two-paddocks and tables/, writes src/test/resources/rebuild/two-paddocks.csv, which RebuildTest
compares with the program at likely inputs. Python 3, standard library only. No number here was taken from the program.

Not rebuilt: further ewes, the seed bank after a sowing and so growth and dose then, seasons whose break moves, several mobs, selling
dry ewes, grazing in order, draws, the search.
"""

import csv
import math
import re
from pathlib import Path

ROOT = Path(__file__).resolve().parents[3]
FARM = ROOT / "src/test/resources/farms/two-paddocks"
MONTHS = "January February March April May June July August September October November December".split()
MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]
SEASONS = ["poor", "average", "good"]


def rows(path):
    with open(path, encoding="utf-8", newline="") as file:
        return list(csv.DictReader(line for line in file if not line.startswith("# ")))


LIKELY = {
    row["key"]: float(row["likely"])
    for table in ("stand-parameters", "feed-parameters", "dose-response", "farm-defaults")
    for row in rows(ROOT / f"tables/{table}.csv")
}
CULTIVARS = {row["name"]: row for row in rows(ROOT / "tables/cultivars.csv")}
ACTION = {(row["action"], row["value"]): float(row["likely"]) for row in rows(ROOT / "tables/action-values.csv")}
WRITTEN = dict(re.findall(r"^[ -]*(\w+): +(.*)$", (FARM / "farm.yaml").read_text(encoding="utf-8"), re.M))


def told(key):
    return float(WRITTEN[key])


def listed(key):
    return [part.strip() for part in WRITTEN[key].strip("[]").split(",")]


# The year: docs/method/feed-budget.md, "The calendar".

DAYS = [MONTH_DAYS[p // 2] / 2 for p in range(24)]
HALF_MONTH_OF = [
    2 * month + (day >= MONTH_DAYS[month] // 2) for month in range(12) for day in range(MONTH_DAYS[month])
]


def day_of(date):
    day, month = date.split()
    return sum(MONTH_DAYS[: MONTHS.index(month)]) + int(day) - 1


def half_month(day):
    return HALF_MONTH_OF[day % 365]


# The farm.

WINTER = [MONTHS[p // 2] in listed("winter_months") for p in range(24)]
PER_DAY = {season: [float(x) for x in listed(season)] for season in SEASONS}
CHANCE = {season: LIKELY[f"default.chance-{season}-season"] for season in SEASONS}
QUALITY = {row["month"]: row for row in rows(ROOT / "tables/pasture-quality.csv")
           if row["profile"] == WRITTEN["pasture_quality"]}
EWES = int(WRITTEN["ewes"])
AGES = [int(x) / EWES for x in listed("ages")]
WEIGHT = told("liveweight_kg")
JOINING = day_of(WRITTEN["joining_start"])
WEEKS = told("joining_weeks")
PADDOCKS = rows(FARM / "paddocks.csv")
AREA = {row["paddock"]: float(row["area_ha"]) for row in PADDOCKS}
CLOVER = {row["paddock"]: float(row["clover_percent"]) / 100 for row in PADDOCKS}
FARM_HA = sum(AREA.values())
INDEX = LIKELY["default.growth-index"]

# Composition: likely share = plants / all plants.

SHARES = {}
for name in AREA:
    plants = {row["cultivar"]: int(row["plants"]) for row in rows(FARM / "plants.csv") if row["paddock"] == name}
    SHARES[name] = {cultivar: n / sum(plants.values()) for cultivar, n in plants.items()}


def of_table(cultivar, column):
    return float(CULTIVARS[cultivar][column])


def leaf(name):
    return sum(share * of_table(c, "formononetin_likely_percent_dm") for c, share in SHARES[name].items())


# Winter growth: cultivars and thin stands.

MEAN_GROWTH = [sum(CHANCE[s] * PER_DAY[s][p // 2] for s in SEASONS) * DAYS[p] for p in range(24)]
WINTER_GROWTH = sum(g for p, g in enumerate(MEAN_GROWTH) if WINTER[p])
YEAR_GROWTH = sum(MEAN_GROWTH)
WINTER_SHARE = WINTER_GROWTH / YEAR_GROWTH
EARLY = sum(
    MEAN_GROWTH[p] * (1 - (k + 0.5) / sum(WINTER)) for k, p in enumerate(p for p in range(24) if WINTER[p])
) / WINTER_GROWTH


def cultivar_factor(name):
    mean = sum(share * of_table(c, "relative_winter_yield_likely") for c, share in SHARES[name].items())
    return 1 - CLOVER[name] * (1 - mean)


def density_factor(name):
    counted = next(row["seedlings_per_m2"] for row in PADDOCKS if row["paddock"] == name)
    kg = LIKELY["seed.yield.hot"] * LIKELY["seed.emergence"]
    plants = float(counted) if counted else 100 * kg / LIKELY["density.seed-weight"]
    k, reference = LIKELY["density.half-growth"], LIKELY["density.reference"]

    def r(p):
        return p / (p + k)

    relative = r(min(plants, reference)) / r(reference)
    return 1 - CLOVER[name] * EARLY * (1 - LIKELY["density.rest-fills"]) * (1 - relative)


WINTER_FACTOR = {name: cultivar_factor(name) * density_factor(name) for name in AREA}
FEED = {name: AREA[name] * INDEX * (WINTER_SHARE * WINTER_FACTOR[name] + 1 - WINTER_SHARE) for name in AREA}
FEED_OF_FARM = sum(FEED.values())
FARM_WINTER = sum(AREA[n] * INDEX * WINTER_FACTOR[n] for n in AREA) / sum(AREA[n] * INDEX for n in AREA)
CLOVER_EATEN = sum(FEED[n] * CLOVER[n] for n in AREA) / FEED_OF_FARM

# Dose.

STRENGTH = {name: CLOVER[name] * LIKELY["dose.leaf-share"] * leaf(name) for name in AREA}
STRONGEST = max(
    CLOVER[name] * LIKELY["dose.leaf-share"]
    * max(of_table(c, "formononetin_likely_percent_dm") for c in [*SHARES[name], "current cultivar"])
    for name in AREA
)

# Energy: SCA 1990.

MD = 10


def dry_mj():
    km = 0.02 * MD + 0.5
    maintenance = 0.28 * WEIGHT**0.75 * math.exp(-0.03 * 4)
    grazing = (0.05 * 0.02 * WEIGHT * (0.9 - 0.68) + 0.05 * 1 / (1.5 + 3)) * WEIGHT
    return (maintenance + grazing) / km


def in_lamb_mj(t, lambs):
    litter = WEIGHT * (0.09 if lambs == 1 else 2 * 0.076)
    energy = 10 ** (3.322 - 4.979 * math.exp(-0.00643 * t))
    per_day = math.log(10) * 4.979 * 0.00643 * math.exp(-0.00643 * t) * energy
    return 1.1 * litter / 4 * per_day / 0.133


def milk_mj(day, lambs):
    kg = {1: (1.36, 0.67), 2: (2.06, 0.78)}[lambs][day >= 30] * (WEIGHT / 50) ** 0.75
    return 1.1 * kg * 4.7 / (0.02 * MD + 0.4)


def milk_appetite(day, lambs):
    m = day / 28
    return {1: 0.577, 2: 0.9}[lambs] * m**1.4 * math.exp(1.4 * (1 - m))


EMPTY_MJ = dry_mj()
EMPTY_KG = 0.04 * WEIGHT * (1.7 - 1)
TWINS = min(1, told("scanning_percent") / told("pregnant_percent") - 1)
ALIVE = told("marking_percent") / told("scanning_percent")
REARS = {1: (1 - TWINS) * ALIVE + TWINS * 2 * ALIVE * (1 - ALIVE), 2: TWINS * ALIVE**2}
MORE_MJ, MORE_KG = [0.0] * 24, [0.0] * 24
for day in range(365):
    p = half_month(day)
    t = (day - JOINING - 17) % 365
    mj = kg = 0.0
    if t < 148:
        mj = (1 - TWINS) * in_lamb_mj(t, 1) + TWINS * in_lamb_mj(t, 2)
    elif t < 148 + 7 * LIKELY["default.weaning-weeks"]:
        mj = sum(REARS[n] * milk_mj(t - 148, n) for n in (1, 2))
        kg = sum(REARS[n] * EMPTY_KG * milk_appetite(t - 148, n) for n in (1, 2))
    days_there = HALF_MONTH_OF.count(p)
    MORE_MJ[p] += mj / days_there
    MORE_KG[p] += kg / days_there

# Feed budget.


def availability(kg):
    b = 0.00112 * kg
    return (1 - math.exp(-b)) * (1 + 0.6 * math.exp(-b * b))


def quality(digestibility):
    return max(0, 1 - 1.7 * (0.8 - digestibility) + 0.17 * CLOVER_EATEN)


def energy(digestibility):
    return max(0, 0.172 * 100 * digestibility - 1.707)


def half_months(season, in_lamb, winter, other):
    """What each half-month grows at most, lets be eaten, loses and needs, per ha of farm."""
    for p in range(24):
        row = QUALITY[MONTHS[p // 2]]
        green = float(row["green_digestibility_percent"]) / 100 + LIKELY["feed.green-digestibility"]
        dry = float(row["dry_digestibility_percent"]) / 100 + LIKELY["feed.dry-selection"]
        dying = float(row["green_dying_percent_per_month"]) / 100
        lost = float(row["dry_lost_percent_per_month"]) / 100 * LIKELY["feed.dry-loss-multiplier"]
        ewes = EWES * DAYS[p] / FARM_HA
        yield {
            "growth": PER_DAY[season][p // 2] * DAYS[p] * INDEX * LIKELY["feed.growth-multiplier"]
            * (winter if WINTER[p] else other),
            "appetite": ewes * (EMPTY_KG + in_lamb * MORE_KG[p]) * LIKELY["feed.intake-multiplier"],
            "need": ewes * (EMPTY_MJ + in_lamb * MORE_MJ[p]) * LIKELY["feed.demand-multiplier"],
            "green quality": quality(green), "dry quality": quality(dry),
            "green energy": energy(green), "dry energy": energy(dry),
            "dies": 1 - (1 - dying) ** (LIKELY["feed.green-dying-multiplier"] / 2),
            "decays": 1 - math.sqrt(1 - min(1, lost)),
        }


def feed_year(season, in_lamb, winter=FARM_WINTER, other=1.0):
    """Half-months of a year that repeats itself."""
    rates = list(half_months(season, in_lamb, winter, other))
    bound, penalty = LIKELY["feed.leaf-area-bound"], LIKELY["feed.leaf-area-penalty"]
    green, dry = 0.0, 2000.0
    while True:
        begun = (green, dry)
        year = []
        for rate in rates:
            grown = rate["growth"] * (1 - penalty * (1 - green / bound) if green < bound else 1)
            filled = availability(green + grown / 2)
            there = green + grown
            eaten_green = min(there, rate["appetite"] * filled * rate["green quality"])
            eaten_dry = min(dry, rate["appetite"] * (1 - filled) * availability(dry) * rate["dry quality"])
            died = (there - eaten_green) * rate["dies"]
            decayed = (dry - eaten_dry) * rate["decays"]
            green = there - eaten_green - died
            dry = dry - eaten_dry - decayed + died
            mj = eaten_green * rate["green energy"] + eaten_dry * rate["dry energy"]
            bought = max(0, rate["need"] * (1 - LIKELY["default.condition-deficit"]) - mj)
            year.append({"growth": grown, "green": green, "dry": dry, "eaten green": eaten_green,
                         "eaten dry": eaten_dry, "bought": bought})
        if abs(green - begun[0]) < 1e-10 and abs(dry - begun[1]) < 1e-10:
            return year


def green_share(year):
    return [(h["eaten green"] + LIKELY["dose.dry-factor"] * h["eaten dry"]) / (h["eaten green"] + h["eaten dry"])
            for h in year]


TOLD_IN_LAMB = told("pregnant_percent") / 100
BY_SEASON = {season: green_share(feed_year(season, TOLD_IN_LAMB)) for season in SEASONS}
GREEN = [sum(CHANCE[s] * BY_SEASON[s][p] for s in SEASONS) for p in range(24)]

# Reproduction.

D50, STEEPNESS = LIKELY["oestrogen.d50"], LIKELY["oestrogen.steepness"]
CYCLES = max(1, math.ceil(7 * WEEKS / 17))
HELD = {half_month(day) for day in range(JOINING - 56, JOINING + math.ceil(7 * WEEKS) + 1)}


def effect_of(dose):
    return 1 - 1 / (1 + (dose / D50) ** STEEPNESS)


def effects(strength, held):
    return [effect_of(GREEN[p] * (held if p in HELD else strength)) for p in range(24)]


def multipliers(effect):
    """Mean of 1 - e over the days of each cycle."""
    lag, half_life = int(LIKELY["oestrogen.lag-days"]), LIKELY["oestrogen.half-life-days"]
    first = JOINING - 120
    joined = math.ceil(7 * WEEKS)
    target = [effect[half_month(day)] for day in range(first, JOINING + joined)]
    carried = target[0]
    left = [[] for _ in range(CYCLES)]
    for n in range(1, len(target)):
        rising = min(target[n], carried + target[n] / LIKELY["oestrogen.ramp-days"])
        floor = max(target[max(0, n - lag) : n + 1])
        wearing = floor + (carried - floor) * 2 ** (-1 / half_life) if carried > floor else carried
        carried = max(rising, wearing)
        if n >= 120:
            left[(n - 120) // 17].append(1 - carried)
    return [sum(cycle) / len(cycle) for cycle in left]


def fertile_at(strength, held):
    multiplier = multipliers(effects(strength, held))
    per_cycle = 1 - (1 - TOLD_IN_LAMB) ** (17 / (7 * WEEKS))
    empty = 1.0
    for j, m in enumerate(multiplier):
        empty *= (1 - per_cycle * m) ** min(1, 7 * WEEKS / 17 - j)
    return 1 - empty


def decay_at(strength, inside):
    """-ln of the share that the half-months inside the held weeks, or those outside, leave sound."""
    days = sum(e * DAYS[p] for p, e in enumerate(effects(strength, strength)) if (p in HELD) == inside)
    season = days / 180 / effect_of(LIKELY["oestrogen.sterility-reference-dose"])
    return -season * math.log(1 - LIKELY["oestrogen.sterility-q"])


SPACING = STRONGEST / 48


def node(strength):
    at = min(47, int(strength / SPACING))
    return at, strength / SPACING - at


def fertile(strength, held):
    a, along = node(strength)
    b, across = node(held)
    corner = [[fertile_at((a + i) * SPACING, (b + j) * SPACING) for j in (0, 1)] for i in (0, 1)]
    low = corner[0][0] * (1 - across) + corner[0][1] * across
    high = corner[1][0] * (1 - across) + corner[1][1] * across
    return low * (1 - along) + high * along


def sound(strength, held):
    def between(of, inside):
        at, along = node(of)
        return decay_at(at * SPACING, inside) * (1 - along) + decay_at((at + 1) * SPACING, inside) * along

    return math.exp(-between(strength, False) - between(held, True))


def whole(spared):
    return sum(share * spared ** (joinings + 1) for joinings, share in enumerate(AGES))


NOW = sum(FEED[n] * STRENGTH[n] for n in AREA) / FEED_OF_FARM
SPARED = sound(NOW, NOW)
IN_LAMB = whole(SPARED) * fertile(NOW, NOW)

# Money.

LAMBS_PER_EWE = told("marking_percent") / told("pregnant_percent")
VALUE_PER_EWE = LAMBS_PER_EWE * told("net_value_per_lamb") + told("cost_per_dry_ewe")
MJ_PER_TONNE = (
    1000 * told("dry_matter_percent") / 100 * told("energy_mj_per_kg_dm") * (1 - told("waste_percent") / 100)
)

# Supplement where growth or ewes in lamb differ from now: between nodes of growth, and by the slope of ewes in lamb.


def bought(season, in_lamb, winter, other):
    return sum(h["bought"] for h in feed_year(season, in_lamb, winter, other))


LOW = min(FARM_WINTER, 1)
WINTER_NODES = [part * LOW for part in (0.35, 0.6, 0.75, 0.87, 0.94, 0.97, 1)]
WINTER_NODES += [(LOW + 1) / 2, 1, max(1.05, FARM_WINTER + 0.05)]
OTHER_NODES = [0.4, 0.7, 0.85, 0.9, 0.95, 0.975, 1.0, 1.05]


def ends(nodes, at):
    """The two nodes about a value, with their weights."""
    k = max(k for k in range(len(nodes) - 1) if nodes[k] <= at)
    share = (at - nodes[k]) / (nodes[k + 1] - nodes[k])
    return [(node, weight) for node, weight in ((nodes[k], 1 - share), (nodes[k + 1], share)) if weight > 0]


def bought_by_growth(season, winter, other):
    return sum(
        u * v * bought(season, IN_LAMB, w, o) for w, u in ends(WINTER_NODES, winter) for o, v in ends(OTHER_NODES, other)
    )


BOUGHT_NOW = {season: bought(season, IN_LAMB, FARM_WINTER, 1.0) for season in SEASONS}
RISE = TOLD_IN_LAMB / IN_LAMB - 1
MORE_BOUGHT = sorted(
    (BOUGHT_NOW[s], (bought(s, TOLD_IN_LAMB, FARM_WINTER, 1.0) - BOUGHT_NOW[s]) / RISE) for s in SEASONS
)


def slope(mj):
    if mj <= MORE_BOUGHT[0][0]:
        return MORE_BOUGHT[0][1]
    for (low, at_low), (high, at_high) in zip(MORE_BOUGHT, MORE_BOUGHT[1:]):
        if mj < high:
            return at_low + (mj - low) / (high - low) * (at_high - at_low)
    return MORE_BOUGHT[-1][1]


def supplement_saved(in_lamb, winter, other):
    saved = 0
    for season in SEASONS:
        by_growth = bought_by_growth(season, winter, other)
        then = max(0, by_growth + slope(by_growth) * (in_lamb / IN_LAMB - 1))
        saved += CHANCE[season] * (BOUGHT_NOW[season] - then)
    return saved * FARM_HA / MJ_PER_TONNE * told("price_per_tonne")


# Keep all ewes off the old paddock before joining, from the coming year: only the clean one is grazed in the held weeks.

YEARS = int(LIKELY["default.horizon-years"])
RULE_SPARED = sound(NOW, STRENGTH["Clean"])
CLOSED = FEED["Old"] / sum(AREA[n] * INDEX for n in AREA)
UNEATEN = CLOSED * sum(g for p, g in enumerate(MEAN_GROWTH) if p in HELD) / YEAR_GROWTH


def rule_in_lamb(year):
    sound_share = 0
    for joinings, share in enumerate(AGES):
        ruled = min(year, joinings + 1)
        sound_share += share * RULE_SPARED**ruled * SPARED ** (joinings + 1 - ruled)
    return sound_share * fertile(NOW, STRENGTH["Clean"])


RULE_TIME = AREA["Old"] * LIKELY["default.use-rule-per-ha"]
RULE_LAMBS = [(rule_in_lamb(t) - IN_LAMB) * EWES * VALUE_PER_EWE for t in range(YEARS)]
RULE_FEED = [supplement_saved(rule_in_lamb(t), FARM_WINTER - UNEATEN, 1 - UNEATEN) for t in range(YEARS)]
RULE_NPV = sum(
    (lambs + feed - RULE_TIME) / (1 + LIKELY["default.discount-rate"]) ** t
    for t, (lambs, feed) in enumerate(zip(RULE_LAMBS, RULE_FEED))
)

# Spray-fallow and resow: clover share printed, mean of a sowing that takes and one that fails.


def resown_clover(name):
    taken = ACTION["spray-fallow", "establishment chance"]
    target = min(1, CLOVER[name] * (1 + LIKELY["sowing.clover-share"] - 1))
    first, years = LIKELY["sowing.clover-year-one"], LIKELY["sowing.clover-years"]

    def settled(k):
        return target * (1 - (1 - first) * math.exp(-k / years))

    return [CLOVER[name]] + [taken * settled(k) + (1 - taken) * settled(max(0, k - 1)) for k in range(5)]


def results():
    for name in AREA:
        for cultivar, share in SHARES[name].items():
            yield "share of clover", f"{name}/{cultivar}", share
        profile = INDEX * WINTER_GROWTH
        yield "winter growth lost, kg DM/ha", name, (1 - WINTER_FACTOR[name]) * profile
        yield "lost for thin stand, kg DM/ha", name, (cultivar_factor(name) - WINTER_FACTOR[name]) * profile
        yield "strength, % of green intake", name, STRENGTH[name]
        yield "feed, ha of ordinary growth", name, FEED[name]
    yield "winter growth of farm", "", FARM_WINTER
    yield "clover of what is eaten", "", CLOVER_EATEN
    for p in range(24):
        yield "dose, % of intake", p, GREEN[p] * NOW
    yield "ewes in lamb, unaffected", "", TOLD_IN_LAMB
    yield "ewes in lamb now", "", IN_LAMB
    yield "ewes barren for good", "", 1 - whole(SPARED)
    lost = TOLD_IN_LAMB - IN_LAMB
    yield "lambs lost", "", lost * EWES * LAMBS_PER_EWE
    yield "money lost with lambs", "", lost * EWES * VALUE_PER_EWE
    for season in SEASONS:
        year = feed_year(season, IN_LAMB)
        bought = sum(h["bought"] for h in year)
        yield "supplement, MJ/ha", season, bought
        yield "supplement, t of farm", season, bought * FARM_HA / MJ_PER_TONNE
        yield "supplement, money of farm", season, bought * FARM_HA / MJ_PER_TONNE * told("price_per_tonne")
        if season == "average":
            for p, h in enumerate(year):
                yield "green at end, kg DM/ha", p, h["green"]
                yield "dry at end, kg DM/ha", p, h["dry"]
                yield "bought, MJ/ha", p, h["bought"]
    for t in range(YEARS):
        more = rule_in_lamb(t) - IN_LAMB
        yield "rule: ewes more in lamb", t, more * EWES
        yield "rule: lambs more", t, more * EWES * LAMBS_PER_EWE
        yield "rule: money of lambs", t, RULE_LAMBS[t]
        yield "rule: supplement saved, money", t, RULE_FEED[t]
        yield "rule: own time, money", t, RULE_TIME
    yield "rule: net present value", "", RULE_NPV
    for year, share in enumerate(resown_clover("Old")):
        yield "resown: clover share", year, share


def main():
    path = ROOT / "src/test/resources/rebuild/two-paddocks.csv"
    with open(path, "w", encoding="utf-8", newline="") as file:
        out = csv.writer(file, lineterminator="\n")
        out.writerow(["what", "of", "value"])
        out.writerows((what, of, f"{value:.12g}") for what, of, value in results())


main()
