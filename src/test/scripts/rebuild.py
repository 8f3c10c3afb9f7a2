"""Rebuilds the numbers of a farm of two paddocks from the method pages and the tables' likely values alone.

    python3 src/test/scripts/rebuild.py

Reads src/test/resources/farms/two-paddocks and tables/, writes src/test/resources/rebuild/two-paddocks.csv, which RebuildTest
compares with the program at likely inputs. Python 3, standard library only. No number here was taken from the program,
but who wrote it had read the program too: agreement says that the pages hold the equations, not that every stranger reads them so.

Not rebuilt: actions but spray-fallow, further ewes, nitrogen, waterlogged ground, leaf tests, figures
observed on these paddocks, several mobs and other stock, selling dry ewes, grazing in order, draws, the search.
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

DISTRICT = next(row for row in rows(ROOT / "tables/districts.csv") if row["name"] == WRITTEN["growth"])
WINTER = [MONTHS[p // 2] in DISTRICT["winter_months"].split(";") for p in range(24)]
USUAL = [float(DISTRICT[f"{MONTHS[p // 2].lower()}_kg_dm_per_ha_day"]) for p in range(24)]
CHANCE = {season: LIKELY[f"default.chance-{season}-season"] for season in SEASONS}
QUALITY = {row["month"]: row for row in rows(ROOT / "tables/pasture-quality.csv")
           if row["profile"] == DISTRICT["quality_profile"]}


# The break: docs/method/feed-budget.md, "The break moves".


def usual_break():
    first = WINTER.index(True)
    while USUAL[(first - 1) % 24] > max(USUAL) / 20:
        first -= 1
    return first


BREAK = usual_break()
TO_END = 24 - WINTER[::-1].index(True) - BREAK
LATER = {
    "poor": float(DISTRICT["break_later_in_poor_likely_half_months"]), "average": 0.0,
    "good": -float(DISTRICT["break_earlier_in_good_likely_half_months"]),
}


def moved(usual, later):
    """Means over half-months of a year whose break comes later; a year is 24 rates."""
    speed = TO_END / (TO_END - later)

    def since_break(time):
        whole = int(time)
        part = (time - whole) * usual[(BREAK + whole) % 24] if time > whole else 0
        return sum(usual[(BREAK + k) % 24] for k in range(whole)) + part

    first = min(0, math.floor(later))
    before = usual[(BREAK + (-1 if later > 0 else first)) % 24]

    def until(time):
        return before * (min(time, later) - first) + (since_break((time - later) * speed) / speed if time > later else 0)

    year = list(usual)
    for k in range(first, TO_END):
        year[(BREAK + k) % 24] = until(k + 1) - until(k)
    return year


def season_growth(season):
    as_moved = moved(USUAL, LATER[season])
    if season == "average":
        return as_moved
    left = sum(g * d for g, d in zip(as_moved, DAYS)) / sum(g * d for g, d in zip(USUAL, DAYS))
    return [g * LIKELY[f"default.{season}-season-growth"] / left for g in as_moved]


PER_DAY = {season: season_growth(season) for season in SEASONS}


def season_quality(season, column):
    """A column of the quality profile, per cent, as shares by half-month."""
    return moved([float(QUALITY[MONTHS[p // 2]][column]) / 100 for p in range(24)], LATER[season])


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


def leaf(shares):
    return sum(share * of_table(c, "formononetin_likely_percent_dm") for c, share in shares.items())


# Winter growth: cultivars and thin stands.

MEAN_GROWTH = [sum(CHANCE[s] * PER_DAY[s][p] for s in SEASONS) * DAYS[p] for p in range(24)]
WINTER_GROWTH = sum(g for p, g in enumerate(MEAN_GROWTH) if WINTER[p])
YEAR_GROWTH = sum(MEAN_GROWTH)
WINTER_SHARE = WINTER_GROWTH / YEAR_GROWTH
EARLY = sum(
    MEAN_GROWTH[p] * (1 - (k + 0.5) / sum(WINTER)) for k, p in enumerate(p for p in range(24) if WINTER[p])
) / WINTER_GROWTH


def cultivar_factor(clover, shares):
    return 1 - clover * (1 - sum(share * of_table(c, "relative_winter_yield_likely") for c, share in shares.items()))


def plants_per_m2(kg):
    return 100 * kg / LIKELY["density.seed-weight"]


STEADY_PLANTS = plants_per_m2(LIKELY["seed.yield.hot"] * LIKELY["seed.emergence"])
PLANTS = {row["paddock"]: float(row["seedlings_per_m2"] or STEADY_PLANTS) for row in PADDOCKS}


def density_factor(clover, plants):
    k, reference = LIKELY["density.half-growth"], LIKELY["density.reference"]

    def r(p):
        return p / (p + k)

    relative = r(min(plants, reference)) / r(reference)
    return 1 - clover * EARLY * (1 - LIKELY["density.rest-fills"]) * (1 - relative)


CULTIVAR_FACTOR = {name: cultivar_factor(CLOVER[name], SHARES[name]) for name in AREA}
WINTER_FACTOR = {name: CULTIVAR_FACTOR[name] * density_factor(CLOVER[name], PLANTS[name]) for name in AREA}
FEED = {name: AREA[name] * INDEX * (WINTER_SHARE * WINTER_FACTOR[name] + 1 - WINTER_SHARE) for name in AREA}
FEED_OF_FARM = sum(FEED.values())
FARM_WINTER = sum(AREA[n] * INDEX * WINTER_FACTOR[n] for n in AREA) / sum(AREA[n] * INDEX for n in AREA)
CLOVER_EATEN = sum(FEED[n] * CLOVER[n] for n in AREA) / FEED_OF_FARM

# Dose.

STRENGTH = {name: CLOVER[name] * LIKELY["dose.leaf-share"] * leaf(SHARES[name]) for name in AREA}
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


def quality(digestibility, clover):
    return max(0, 1 - 1.7 * (0.8 - digestibility) + 0.17 * clover)


def energy(digestibility):
    return max(0, 0.172 * 100 * digestibility - 1.707)


def half_months(season, in_lamb, winter, other, clover):
    """What each half-month grows at most, lets be eaten, loses and needs, per ha of farm."""
    greens = season_quality(season, "green_digestibility_percent")
    dries = season_quality(season, "dry_digestibility_percent")
    dyings = season_quality(season, "green_dying_percent_per_month")
    losses = season_quality(season, "dry_lost_percent_per_month")
    for p in range(24):
        green = greens[p] + LIKELY["feed.green-digestibility"]
        dry = dries[p] + LIKELY["feed.dry-selection"]
        lost = losses[p] * LIKELY["feed.dry-loss-multiplier"]
        ewes = EWES * DAYS[p] / FARM_HA
        yield {
            "growth": PER_DAY[season][p] * DAYS[p] * INDEX * LIKELY["feed.growth-multiplier"]
            * (winter if WINTER[p] else other),
            "appetite": ewes * (EMPTY_KG + in_lamb * MORE_KG[p]) * LIKELY["feed.intake-multiplier"],
            "need": ewes * (EMPTY_MJ + in_lamb * MORE_MJ[p]) * LIKELY["feed.demand-multiplier"],
            "green quality": quality(green, clover), "dry quality": quality(dry, clover),
            "green energy": energy(green), "dry energy": energy(dry),
            "dies": 1 - (1 - dyings[p]) ** (LIKELY["feed.green-dying-multiplier"] / 2),
            "decays": 1 - math.sqrt(1 - min(1, lost)),
        }


def feed_year(season, in_lamb, winter=FARM_WINTER, other=1.0, clover=CLOVER_EATEN):
    """Half-months of a year that repeats itself."""
    rates = list(half_months(season, in_lamb, winter, other, clover))
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

# Supplement where growth, ewes in lamb or clover differ from now: between nodes of growth, and by slopes of the others.


def bought(season, in_lamb=IN_LAMB, winter=FARM_WINTER, other=1.0, clover=CLOVER_EATEN):
    return sum(h["bought"] for h in feed_year(season, in_lamb, winter, other, clover))


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
        u * v * bought(season, winter=w, other=o)
        for w, u in ends(WINTER_NODES, winter) for o, v in ends(OTHER_NODES, other)
    )


BOUGHT_NOW = {season: bought(season) for season in SEASONS}
RISE = TOLD_IN_LAMB / IN_LAMB - 1
BY_EWES = sorted((BOUGHT_NOW[s], (bought(s, in_lamb=TOLD_IN_LAMB) - BOUGHT_NOW[s]) / RISE) for s in SEASONS)
BY_CLOVER = sorted((BOUGHT_NOW[s], (BOUGHT_NOW[s] - bought(s, clover=CLOVER_EATEN - 0.1)) / 0.1) for s in SEASONS)


def slope(by_season, mj):
    if mj <= by_season[0][0]:
        return by_season[0][1]
    for (low, at_low), (high, at_high) in zip(by_season, by_season[1:]):
        if mj < high:
            return at_low + (mj - low) / (high - low) * (at_high - at_low)
    return by_season[-1][1]


def supplement_saved(in_lamb, winter, other, clover):
    saved = 0
    for season in SEASONS:
        then = bought_by_growth(season, winter, other)
        more = slope(BY_EWES, then) * (in_lamb / IN_LAMB - 1) + slope(BY_CLOVER, then) * (clover - CLOVER_EATEN)
        saved += CHANCE[season] * (BOUGHT_NOW[season] - max(0, then + more))
    return saved * FARM_HA / MJ_PER_TONNE * told("price_per_tonne")


# A plan, year by year: strengths outside and inside the held weeks, growth, clover eaten, costs.

YEARS = int(LIKELY["default.horizon-years"])
INDEXED_HA = sum(AREA.values()) * INDEX


def plan(years):
    """Adds what each year brings, and returns the net present value."""
    spared, npv = [], 0
    for t, year in enumerate(years):
        whole_share = 0
        for joinings, share in enumerate(AGES):
            lived = [spared[u] if u >= 0 else SPARED for u in range(t - joinings - 1, t)]
            whole_share += share * math.prod(lived)
        in_lamb = whole_share * fertile(year["strength"], year["held"])
        spared.append(sound(year["strength"], year["held"]))
        year["in lamb"] = in_lamb - IN_LAMB
        year["lambs"] = (in_lamb - IN_LAMB) * EWES * VALUE_PER_EWE
        year["feed"] = supplement_saved(in_lamb, year["winter"], year["other"], year["clover"])
        npv += (year["lambs"] + year["feed"] - year["paid"] - year["labour"]) / (
            1 + LIKELY["default.discount-rate"]
        ) ** t
    return npv


# Keep all ewes off the old paddock before joining, from the coming year: only the clean one is grazed in the held weeks.

CLOSED = FEED["Old"] / INDEXED_HA
UNEATEN = CLOSED * sum(g for p, g in enumerate(MEAN_GROWTH) if p in HELD) / YEAR_GROWTH
RULE = [
    {"strength": NOW, "held": STRENGTH["Clean"], "winter": FARM_WINTER - UNEATEN, "other": 1 - UNEATEN,
     "clover": CLOVER_EATEN, "paid": 0, "labour": AREA["Old"] * LIKELY["default.use-rule-per-ha"]}
    for _ in range(YEARS)
]

# Spray-fallow the old paddock in the coming year and resow it in the next: seed bank, stand, growth, costs.

SOWING = 1
SOWN = "current cultivar"
TAKES = ACTION["spray-fallow", "establishment chance"]


def retention(cultivar):
    hard = CULTIVARS[cultivar]["hard_seed"] or "moderate"
    return [LIKELY[f"seed.retention.hot.{hard}.age-{age}"] for age in (1, 2, 3, 4)]


def crowding(cultivar):
    return LIKELY.get("seed.crowding." + cultivar.lower().replace(" ", "-"), LIKELY["seed.crowding.default"])


def seed_bank(name):
    """Share of each cultivar in the clover, seedlings from the ground and sown ones, kg/ha, year by year."""
    cultivars = [*SHARES[name], SOWN]
    ages, weights = {}, {}
    for c in cultivars:
        r = retention(c)
        ages[c] = [1, r[0], r[0] * r[1], r[0] * r[1] * r[2] / (1 - r[3])]
        weights[c] = SHARES[name].get(c, 0) / crowding(c)
    set_in_year = LIKELY["seed.yield.hot"]
    bank = {c: [set_in_year * weights[c] / sum(weights.values()) * age for age in ages[c]] for c in cultivars}
    years = []
    for k in range(YEARS):
        seedlings = {}
        for c in cultivars:
            r, s = retention(c), bank[c]
            kept = [s[0] * r[0], s[1] * r[1], s[2] * r[2] + s[3] * r[3]]
            seedlings[c] = LIKELY["seed.emergence"] * (sum(s) - sum(kept))
            bank[c] = [0, *kept]
        seed, sown = set_in_year, 0
        if k < SOWING:
            seed *= ACTION["spray-fallow", "seed set"]
        if k == SOWING:
            seedlings = {c: kg * (1 - ACTION["spray-fallow", "seedling kill"]) for c, kg in seedlings.items()}
            sown = ACTION["spray-fallow", "sown seed"] * LIKELY["seed.good-seed-share"]
            seed *= LIKELY["seed.sowing-year-yield"]
        ground = sum(seedlings.values())
        seedlings[SOWN] += sown
        crowd = sum(crowding(c) * kg for c, kg in seedlings.items())
        shares = {c: crowding(c) * kg / crowd for c, kg in seedlings.items()}
        for c in cultivars:
            bank[c][0] = seed * shares[c]
        years.append((shares, ground, sown))
    return years


def part_open(of_winter):
    months = float(next(row["months_ungrazed"] for row in rows(ROOT / "tables/actions.csv") if row["key"] == "spray-fallow"))
    shut = sum(MEAN_GROWTH[p % 24] for p in range(BREAK, BREAK + round(2 * months)) if WINTER[p % 24] == of_winter)
    return 1 - shut / sum(g for p, g in enumerate(MEAN_GROWTH) if WINTER[p] == of_winter)


def stand(name, k):
    """The stand of a sowing that took, in year k."""
    shares, ground, sown = seed_bank(name)[k]
    target = min(1, CLOVER[name] * (1 + LIKELY["sowing.clover-share"] - 1))
    first, years = LIKELY["sowing.clover-year-one"], LIKELY["sowing.clover-years"]
    clover = CLOVER[name] if k < SOWING else target * (1 - (1 - first) * math.exp(-(k - SOWING) / years))
    standing = SHARES[name] if k < SOWING else shares
    up = PLANTS[name] / STEADY_PLANTS
    new = shares[SOWN] if k >= SOWING else 0
    up += max(0, 1 - up) * LIKELY["density.newcomer"] * new
    density = density_factor(clover, plants_per_m2(ground * up + sown))
    return {
        "clover": clover, "factor": cultivar_factor(clover, standing) * density,
        "strength": clover * LIKELY["dose.leaf-share"] * leaf(standing),
        "old": sum(share for c, share in standing.items() if CULTIVARS[c]["era"] == "old"),
    }


COST_LINES = [row for row in rows(ROOT / "tables/action-costs.csv") if row["action"] == "spray-fallow"]


def lines(phase, labour):
    return sum(float(row["likely_per_ha"]) for row in COST_LINES
               if row["phase"] == phase and row["own_labour"] == labour)


def resown_path(name, k, failures):
    """Year k if the sowing fails so often."""
    if k < SOWING:
        left = ACTION["spray-fallow", "run-down growth"]
        year = stand(name, k)
        return {**year, "winter": left * year["factor"], "other": left,
                "paid": lines("run-down year", "no"), "labour": lines("run-down year", "yes")}
    age = max(SOWING, k - failures)
    shut = k <= SOWING + failures
    growths = [ACTION["spray-fallow", "growth year one"], ACTION["spray-fallow", "growth year two"]]
    growth = (growths + [1] * YEARS)[age - SOWING]
    year = stand(name, age)
    return {**year, "winter": growth * (part_open(True) if shut else 1) * year["factor"],
            "other": growth * (part_open(False) if shut else 1),
            "paid": shut * lines("sowing year", "no"), "labour": shut * lines("sowing year", "yes")}


def resown_paddock(name):
    """Year by year, mean of a sowing that takes and one that fails once."""
    for k in range(YEARS):
        took, failed = resown_path(name, k, 0), resown_path(name, k, 1)
        yield {key: TAKES * took[key] + (1 - TAKES) * failed[key] for key in took}


def resown_farm(name):
    for of in resown_paddock(name):
        winter, other = {**WINTER_FACTOR, name: of["winter"]}, {n: of["other"] if n == name else 1 for n in AREA}
        feed = {n: AREA[n] * INDEX * (WINTER_SHARE * winter[n] + (1 - WINTER_SHARE) * other[n]) for n in AREA}
        of_farm = sum(feed.values())
        strength = sum(feed[n] * {**STRENGTH, name: of["strength"]}[n] for n in AREA) / of_farm
        yield {
            "strength": strength, "held": strength,
            "winter": sum(AREA[n] * INDEX * winter[n] for n in AREA) / INDEXED_HA,
            "other": sum(AREA[n] * INDEX * other[n] for n in AREA) / INDEXED_HA,
            "clover": sum(feed[n] * {**CLOVER, name: of["clover"]}[n] for n in AREA) / of_farm,
            "paid": AREA[name] * of["paid"], "labour": AREA[name] * of["labour"],
        }


RESOWN = list(resown_farm("Old"))
RULE_NPV, RESOWN_NPV = plan(RULE), plan(RESOWN)


def results():
    for name in AREA:
        for cultivar, share in SHARES[name].items():
            yield "share of clover", f"{name}/{cultivar}", share
        profile = INDEX * WINTER_GROWTH
        yield "winter growth lost, kg DM/ha", name, (1 - WINTER_FACTOR[name]) * profile
        yield "lost for thin stand, kg DM/ha", name, (CULTIVAR_FACTOR[name] - WINTER_FACTOR[name]) * profile
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
    for of, years, npv in (("rule", RULE, RULE_NPV), ("resown", RESOWN, RESOWN_NPV)):
        for t, year in enumerate(years):
            yield f"{of}: ewes more in lamb", t, year["in lamb"] * EWES
            yield f"{of}: lambs more", t, year["in lamb"] * EWES * LAMBS_PER_EWE
            yield f"{of}: money of lambs", t, year["lambs"]
            yield f"{of}: supplement saved, money", t, year["feed"]
            yield f"{of}: costs paid", t, year["paid"]
            yield f"{of}: own time, money", t, year["labour"]
        yield f"{of}: net present value", "", npv
    for t, year in enumerate(resown_paddock("Old")):
        yield "resown: clover share", t, year["clover"]
        yield "resown: old cultivars, share of clover", t, year["old"]
        yield "resown: strength, % of green intake", t, year["strength"]


def main():
    path = ROOT / "src/test/resources/rebuild/two-paddocks.csv"
    with open(path, "w", encoding="utf-8", newline="") as file:
        out = csv.writer(file, lineterminator="\n")
        out.writerow(["what", "of", "value"])
        out.writerows((what, of, f"{value:.12g}") for what, of, value in results())


main()
