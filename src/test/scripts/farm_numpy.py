"""The farm's outcome in vectorised numpy: docs/method/{feed-budget,dose,reproduction,seed-bank,actions,money}.md.

Python 3.11.2 and numpy 1.24.2, both Debian's (python3-numpy). Run by compare.sh; see docs/performance.md.

Every array has the draws on its last axis. What the program reads between by straight lines (feed bought by
growth, ewes in lamb and season's exposure by strength) is read from the same nodes here, and only nodes that
are asked for are worked out, for all draws of a block at once.
"""

import pathlib
from types import SimpleNamespace

import numpy as np

OTHER = np.array([0.4, 0.7, 0.85, 0.95, 1.0, 1.05])
BELOW = np.array([0.35, 0.6, 0.75, 0.87])
STRENGTHS = 65
SEASON_DAYS = 180
CYCLE = 17
RUN_UP_DAYS = 120
START_DRY_KG = 2000.0
TOLERANCE_KG = 1e-6
MOST_YEARS = 100


def load(folder):
    """Every array of a folder by its name; single numbers as such, places as whole numbers."""
    farm = SimpleNamespace()
    for file in sorted(pathlib.Path(folder).glob("*.npy")):
        values = np.load(file)
        if file.stem.startswith("at_"):
            values = values.astype(int)
        setattr(farm, file.stem, values.item() if values.ndim == 0 else values)
    farm.keep = int(farm.keep)
    farm.years = int(farm.years)
    farm.winter = farm.winter.astype(bool)
    farm.held = farm.held.astype(bool)
    return farm


def npv(farm, x, shares, base, choices):
    """Net present value of a plan, then of the plan with each choice put in: [1 + choices, draws].

    x [inputs, draws]; shares [paddocks, species, draws]; base [actions, starts]; choices [paddock, action, start].
    """
    paths = action_paths(farm, x, shares)
    weight = farm.area_ha[:, None] * x[farm.at_growth_index]
    weight_sum = weight.sum(0)
    now = (weight * paths.winter[farm.keep, :, 0]).sum(0) / weight_sum
    parts, names = year_parts(farm, weight, paths)
    sums = sums_of_plans(farm, parts, base, choices)
    kept = parts.reshape(len(names), -1, len(farm.area_ha), farm.years, x.shape[1])[:, farm.keep, :, 0].sum(1)
    sums = dict(zip(names, sums))
    kept = dict(zip(names, kept))

    feed = feed_settings(farm, x)
    lost = lost_where_held(farm, sums["held"] / weight_sum)
    w = np.concatenate([(sums["winter"] / weight_sum - lost).reshape(-1, x.shape[1]), now[None]])
    o = np.concatenate([(sums["other"] / weight_sum - lost).reshape(-1, x.shape[1]), np.ones_like(now)[None]])
    bought = read_feed(farm, feed, now, w, o)
    saved = (bought[-1] - bought[:-1]).reshape(sums["held"].shape)
    mj_per_tonne = (
        1000 * x[farm.at_supplement_dry_matter] * x[farm.at_supplement_energy] * (1 - x[farm.at_supplement_waste])
    )
    net = saved * (farm.area_ha.sum() * x[farm.at_supplement_price] / mj_per_tonne)
    net += sums["margin"]
    net -= sums["cost"]

    green = green_share(farm, x, feed, now)
    strongest = paths.strength.max((0, 1, 2))
    for g in range(len(farm.ewes)):
        value = farm.ewes[g] * (farm.lambs_per_pregnant[g] * x[farm.at_lamb_value] + x[farm.at_dry_ewe_cost])
        net += value * more_in_lamb(farm, x, g, green, strongest, kept, sums)

    rate = 1 + x[farm.at_discount_rate]
    factor = rate ** -np.arange(farm.years)[:, None]
    result = (net * factor).sum(1)
    end = (farm.area_ha[:, None] * farm.sows)[:, :, None] * (x[farm.at_end_value] * factor[-1])
    paddocks = np.arange(len(farm.area_ha))
    end_of_base = end[paddocks, base[0]]
    result += end_of_base.sum(0)
    i, a, _ = choices.T
    result[1:] += end[i, a] - end_of_base[i]
    return result


# What actions do.


def action_paths(farm, x, shares):
    """Growth in winter and otherwise, strength, cost and margin per ha: [action, paddock, year, draw]."""
    clover = x[farm.at_clover_share]
    yields = x[farm.at_winter_yield].transpose(1, 0, 2)
    leaf = x[farm.at_formononetin].transpose(1, 0, 2)
    standing = shares.transpose(1, 0, 2)
    stress = np.where(farm.waterlogged[:, None] == 1, x[farm.at_waterlogged_factor], 1.0) * x[farm.at_leaf_share]

    def growth(share, of):
        return 1 - share * (of * (1 - spread(yields, of))).sum(0)

    def strong(share, of):
        return stress * share * (of * spread(leaf, of)).sum(0)

    def spread(values, of):
        return values if of.ndim == 3 else values[:, None]

    cost = np.einsum("apj,jd->apd", farm.cost_lines, x)
    shape = (len(farm.sows), len(farm.area_ha), farm.years, x.shape[1])
    paths = SimpleNamespace(**{name: np.zeros(shape) for name in ("winter", "other", "strength", "cost", "margin")})
    paths.winter[:] = growth(clover, standing)[None, :, None]
    paths.other[:] = 1
    paths.strength[:] = strong(clover, standing)[None, :, None]
    paths.cost[:] = cost[:, 2][:, None, None]

    sown = np.flatnonzero(farm.sows)
    plants = seed_paths(farm, x, standing, sown)
    target = x[farm.at_target_clover_share[sown]][:, None]
    oversown = farm.oversows[sown][:, None, None]
    taken_growth, taken_strength = [], []
    for year in range(farm.years):
        of = plants[year]
        share = np.where(oversown == 1, clover + (target - clover) * of[-1], target)
        taken_growth.append(growth(share, of))
        taken_strength.append(strong(share, of))
    for n, a in enumerate(sown):
        first = int(farm.run_down_years[a])
        left = 0.0 if farm.cropped[a] else x[farm.at_run_down_growth[a]]
        chance = x[farm.at_establishment_chance[a]]
        one, two = x[farm.at_growth_year_one[a]], x[farm.at_growth_year_two[a]]
        for k in range(min(first, farm.years)):
            paths.winter[a, :, k] *= left
            paths.other[a, :, k] = left
            paths.cost[a, :, k] += cost[a, 0]
            paths.margin[a, :, k] = x[farm.at_crop_margin[a]] if farm.cropped[a] else 0.0
        for k in range(first, farm.years):
            before = max(first, k - 1)
            grown = (one, two, 1.0)[min(2, k - first)]
            again = (one, one, two, 1.0)[min(3, k - first)]
            shut = k == first
            shut_again = k <= first + 1
            paths.winter[a, :, k] = chance * taken_growth[k][n] * grown * (farm.winter_open[a] if shut else 1) + (
                1 - chance
            ) * taken_growth[before][n] * again * (farm.winter_open[a] if shut_again else 1)
            paths.other[a, :, k] = chance * grown * (farm.other_open[a] if shut else 1) + (1 - chance) * again * (
                farm.other_open[a] if shut_again else 1
            )
            paths.strength[a, :, k] = chance * taken_strength[k][n] + (1 - chance) * taken_strength[before][n]
            if k <= first + 1:
                paths.cost[a, :, k] += cost[a, 1] * (1 if shut else 1 - chance)
    paths.strength *= farm.allowed.T[:, :, None, None]
    return paths


def seed_paths(farm, x, standing, sown):
    """Share of each species in the clover, the sown one last: a list by year of [species, sowing, paddock, draw]."""
    r = x[farm.at_retention].transpose(2, 1, 0, 3)
    crowding = np.where(farm.at_crowding[:, :, None] < 0, 1.0, 1 / x[farm.at_crowding]).transpose(1, 0, 2)
    ages = 1 + r[0] * (1 + r[1] * (1 + r[2] / (1 - r[3])))
    first = standing / crowding
    youngest = x[farm.at_initial_bank] * first / (first * ages).sum(0)
    bank = [youngest, youngest * r[0], youngest * r[0] * r[1]]
    bank.append(bank[2] * r[2] / (1 - r[3]))
    bank = [np.repeat(of[:, None], len(sown), 1) for of in bank]
    r = r[:, :, None]
    crowding = crowding[:, None]
    years = []
    for year in range(farm.years):
        before = bank[0] + bank[1] + bank[2] + bank[3]
        bank[3] = bank[3] * r[3] + bank[2] * r[2]
        bank[2] = bank[1] * r[1]
        bank[1] = bank[0] * r[0]
        seedlings = before - bank[1] - bank[2] - bank[3]
        seed = np.repeat(x[farm.at_yield][None], len(sown), 0)
        for n, a in enumerate(sown):
            if year < farm.run_down_years[a]:
                seed[n] *= x[farm.at_seed_set[a]]
            elif year == farm.run_down_years[a]:
                seedlings[:, n] *= 1 - x[farm.at_seedling_kill[a]]
                seedlings[-1, n] += x[farm.at_sown_kg[a]] * x[farm.at_good_seed_share]
                seed[n] *= x[farm.at_sowing_year_yield]
        seedlings *= crowding
        seedlings /= seedlings.sum(0)
        years.append(seedlings)
        bank[0] = seedlings * seed[:, None]
    return years


# Sums over paddocks.


def year_parts(farm, weight, paths):
    """What a paddock in a year of an action adds to each sum: [sum, action x paddock x year, draw]."""
    per_year = weight[:, None]
    holds_off = farm.holds_off[:, None, None, None]
    taken = per_year * (farm.winter_share * paths.winter + (1 - farm.winter_share) * paths.other)
    strong = taken * paths.strength
    area = farm.area_ha[:, None, None]
    parts = {
        "winter": per_year * paths.winter,
        "other": per_year * paths.other,
        "held": holds_off * taken,
        "cost": area * paths.cost,
        "margin": area * paths.margin,
    }
    for g, grazes in enumerate(farm.grazes):
        there = grazes[:, None, None]
        parts[f"dose {g}"] = there * strong
        parts[f"grazed {g}"] = there * taken
        parts[f"dose held {g}"] = there * (1 - holds_off) * strong
        parts[f"grazed held {g}"] = there * (1 - holds_off) * taken
    names = list(parts)
    return np.stack([parts[name].reshape(-1, weight.shape[1]) for name in names]), names


def sums_of_plans(farm, parts, base, choices):
    """The sums of the plan and of the plan with each choice: for each sum [1 + choices, year, draw]."""
    paddocks = np.arange(len(farm.area_ha))
    in_base = rows(farm, paddocks, base[0], base[1])
    after = rows(farm, *choices.T)
    before = in_base[choices[:, 0]]
    for part in parts:
        sums = np.empty((1 + len(choices), farm.years, part.shape[1]))
        sums[0] = part[in_base].sum(0)
        np.subtract(part[after], part[before], out=sums[1:])
        sums[1:] += sums[0]
        yield sums


def rows(farm, paddock, action, start):
    """Where a choice's years stand among the parts: [choice, year]."""
    k = np.arange(farm.years) - np.asarray(start)[:, None]
    does = np.where(k < 0, farm.keep, np.asarray(action)[:, None])
    return (does * len(farm.area_ha) + np.asarray(paddock)[:, None]) * farm.years + np.maximum(k, 0)


def lost_where_held(farm, share):
    held = farm.held[0]
    grown, appetite = farm.profile[held].sum(), farm.other_kg[held].sum()
    return np.maximum(0, share * grown - appetite) / farm.profile.sum()


# Feed.


def feed_settings(farm, x):
    """The drawn numbers of the feed budget, [draw] each."""
    return SimpleNamespace(
        bound=x[farm.at_leaf_area_bound],
        penalty=x[farm.at_leaf_area_penalty],
        met=x[farm.at_demand_multiplier] * (1 - x[farm.at_condition_deficit]),
        dry_loss=x[farm.at_dry_loss_multiplier],
    )


def feed_year(farm, feed, draw, season, w, o, eaten=None):
    """Energy bought in a year that repeats itself, MJ/ha: one value for each lane (draw, season, w, o)."""
    factor = np.where(farm.winter[:, None], w, o)
    grown_full = farm.growth[season].T * factor
    decay = 1 - np.sqrt(1 - np.minimum(1, farm.dry_lost_per_month[:, None] * feed.dry_loss))[:, draw]
    dying = 1 - np.sqrt(1 - farm.dying_per_month)
    appetite = farm.ewe_kg + farm.other_kg
    need = farm.ewe_mj + farm.other_mj
    bound, penalty, met = feed.bound[draw], feed.penalty[draw], feed.met[draw]
    per_kg, rise = farm.availability_per_kg, farm.availability_rise
    result = np.empty(len(draw))
    lanes = np.arange(len(draw))
    green, dry = np.zeros(len(draw)), np.full(len(draw), START_DRY_KG)
    for _ in range(MOST_YEARS):
        green_start, dry_start = green, dry
        bought = np.zeros(len(lanes))
        for p in range(24):
            grown = np.minimum(1, green / bound)
            grown -= 1
            grown *= penalty
            grown += 1
            grown *= grown_full[p]
            there = green + grown
            b = grown
            b *= 0.5
            b += green
            b *= per_kg
            filled = available(b, rise)
            eaten_green = np.minimum(there, filled * (appetite[p] * farm.green_quality[p]))
            filled_dry = available(dry * per_kg, rise)
            filled_dry *= np.maximum(0, 1 - filled)
            filled_dry *= appetite[p] * farm.dry_quality[p]
            eaten_dry = np.minimum(dry, filled_dry)
            there -= eaten_green
            green = there * (1 - dying[p])
            there *= dying[p]
            dry = dry - eaten_dry
            dry *= 1 - decay[p]
            dry += there
            short = need[p] * met
            short -= eaten_green * farm.green_mj_per_kg[p]
            short -= eaten_dry * farm.dry_mj_per_kg[p]
            bought += np.maximum(0, short)
            if eaten is not None:
                eaten[0][p, lanes] = eaten_green
                eaten[1][p, lanes] = eaten_dry
        result[lanes] = bought
        goes_on = (np.abs(green - green_start) > TOLERANCE_KG) | (np.abs(dry - dry_start) > TOLERANCE_KG)
        if not goes_on.any():
            break
        if not goes_on.all():
            lanes, green, dry = lanes[goes_on], green[goes_on], dry[goes_on]
            bound, penalty, met = bound[goes_on], penalty[goes_on], met[goes_on]
            grown_full, decay = grown_full[:, goes_on], decay[:, goes_on]
    return result


def available(b, rise):
    return (1 - np.exp(-b)) * (1 + rise * np.exp(-b * b))


def green_share(farm, x, feed, now):
    """Strength of intake by half-month as the farm stands, dry feed by its own factor: [24, draw]."""
    seasons, draws = len(farm.season_chance), len(now)
    eaten = np.zeros((2, 24, seasons * draws))
    feed_year(
        farm,
        feed,
        np.tile(np.arange(draws), seasons),
        np.repeat(np.arange(seasons), draws),
        np.tile(now, seasons),
        np.ones(seasons * draws),
        eaten,
    )
    green, dry = eaten.reshape(2, 24, seasons, draws)
    both = green + dry
    share = np.where(both > 0, (green + x[farm.at_dry_factor] * dry) / np.where(both > 0, both, 1), 0)
    return (share * farm.season_chance[:, None]).sum(1)


def read_feed(farm, feed, now, w, o):
    """Energy bought at w and o, mean over season types, read between nodes: the shape of w."""
    low = np.minimum(now, 1)
    nodes = np.concatenate(
        [
            BELOW[:, None] * low,
            [
                low,
                np.where(low < 1, (low + 1) / 2, 1.005),
                np.where(low < 1, 1, 1.01),
                np.maximum(1.05, now + 0.05),
            ],
        ]
    )
    a = np.zeros(w.shape, dtype=int)
    for node in nodes[1:-1]:
        a += w >= node
    b = np.searchsorted(OTHER[1:-1], o, side="right")
    draws = np.arange(len(now))
    left = nodes[a, draws]
    u = np.clip((w - left) / (nodes[a + 1, draws] - left), 0, 1)
    v = np.clip((o - OTHER[b]) / (OTHER[b + 1] - OTHER[b]), 0, 1)
    size = (len(nodes), len(OTHER), len(now))

    def fill(at):
        node_a, node_b, draw = np.unravel_index(at, size)
        seasons = len(farm.season_chance)
        bought = feed_year(
            farm,
            feed,
            np.tile(draw, seasons),
            np.repeat(np.arange(seasons), len(at)),
            np.tile(nodes[node_a, draw], seasons),
            np.tile(OTHER[node_b], seasons),
        )
        return (farm.season_chance @ bought.reshape(seasons, -1),)

    return between(a, b, u, v, size, fill)[0]


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


# Ewes.


def more_in_lamb(farm, x, g, green, strongest, kept, sums):
    """Ewes of a mob in lamb beyond those as paddocks are grazed now, share of those joined: [plan, year, draw]."""
    d50, steepness, q = x[farm.at_d50], x[farm.at_steepness], x[farm.at_sterility_q]
    reference = 1 - 1 / (1 + (x[farm.at_sterility_reference_dose] / d50) ** steepness)
    green_power = green**steepness
    held = farm.held[g][:, None]
    weeks = farm.joining_weeks[g]

    def effects(strength, strength_held, draw):
        power = (strength / d50[draw]) ** steepness[draw]
        power_held = (strength_held / d50[draw]) ** steepness[draw]
        return 1 - 1 / (1 + green_power[:, draw] * np.where(held, power_held, power))

    def exposure(effect, draw):
        return farm.days @ effect / SEASON_DAYS / reference[draw]

    def spared(season):
        return (1 - q) ** season

    now = kept[f"dose {g}"] / np.where(kept[f"grazed {g}"] > 0, kept[f"grazed {g}"], 1)
    draws = np.arange(len(now))
    effect = effects(now, now, draws)
    multiplier = joining(farm, x, g, effect, draws)
    sterile = 1 - whole_share(farm, g, spared(exposure(effect, draws)))
    told = x[farm.at_pregnant_percent[g]] / 100
    unaffected = unaffected_share(told, weeks, multiplier, sterile) if farm.observed[g] else told
    per_cycle = per_cycle_conception(unaffected, weeks)

    spacing = np.maximum(1e-6, strongest) / (STRENGTHS - 1)
    strength = ratio(sums[f"dose {g}"], sums[f"grazed {g}"], 0.0)
    strength_held = ratio(sums[f"dose held {g}"], sums[f"grazed held {g}"], strength)
    shape = strength.shape
    strength = np.concatenate([strength.reshape(-1, len(now)), now[None]]) / spacing
    strength_held = np.concatenate([strength_held.reshape(-1, len(now)), now[None]]) / spacing
    a = np.minimum(STRENGTHS - 2, strength.astype(int))
    b = np.minimum(STRENGTHS - 2, strength_held.astype(int))
    size = (STRENGTHS, STRENGTHS, len(now))

    def fill(at):
        node_a, node_b, draw = np.unravel_index(at, size)
        effect = effects(node_a * spacing[draw], node_b * spacing[draw], draw)
        in_lamb = pregnant_share(per_cycle[draw], weeks, joining(farm, x, g, effect, draw), 0)
        return exposure(effect, draw), in_lamb

    season, fertile = between(a, b, np.minimum(1, strength - a), np.minimum(1, strength_held - b), size, fill)
    spared_now = spared(season[-1])
    now_in_lamb = whole_share(farm, g, spared_now) * fertile[-1]
    spared_years = spared(season[:-1]).reshape(shape)
    fertile = fertile[:-1].reshape(shape)
    share = np.empty(shape)
    for year in range(shape[1]):
        whole = 0
        product = 1
        for age, of in enumerate(farm.age_shares[g]):
            before = year - 1 - age
            product = product * (spared_years[:, before] if before >= 0 else spared_now)
            whole = whole + of * product
        share[:, year] = whole * fertile[:, year]
    return share - now_in_lamb


def ratio(dose, grazed, otherwise):
    some = grazed > 0
    return np.where(some, dose / np.where(some, grazed, 1), otherwise)


def whole_share(farm, g, spared):
    """Share of the joined ewes that are sound if every season spares so many."""
    return sum(of * spared ** (age + 1) for age, of in enumerate(farm.age_shares[g]))


def joining(farm, x, g, effect, draw):
    """Mean multiplier of each cycle of joining, [cycle, lane], from the full effect by half-month, [24, lane]."""
    lag = x[farm.at_lag_days][draw]
    whole_lag = np.floor(lag)
    half_life = x[farm.at_half_life_days][draw]
    lost_in_last_part = 1 - 2 ** (-(lag - whole_lag) / half_life)
    lost_in_rest = 1 - 2 ** (-(1 - (lag - whole_lag)) / half_life)
    rise = np.minimum(1, 1 / x[farm.at_ramp_days][draw])
    most_back = int(whole_lag.max()) + 1
    place = half_month_of_days(farm)
    days = max(1, int(np.ceil(7 * farm.joining_weeks[g] - 1e-9)))
    start = (int(farm.joining_day[g]) - RUN_UP_DAYS) % 365
    carried = effect[place[start]].copy()
    multiplier = np.zeros((cycles(farm.joining_weeks[g]), len(draw)))
    counted = np.zeros(len(multiplier))
    for known in range(1, RUN_UP_DAYS + days):
        target = effect[place[(start + known) % 365]]
        long_floor = target
        short_floor = target
        last = place[(start + known) % 365]
        for back in range(1, min(known, most_back) + 1):
            there = place[(start + known - back) % 365]
            if there != last:
                last = there
                long_floor = np.maximum(long_floor, effect[there] * (whole_lag + 1 >= back))
                short_floor = np.maximum(short_floor, effect[there] * (whole_lag >= back))
        risen = np.minimum(carried + target * rise, target)
        left = carried - np.maximum(0, carried - long_floor) * lost_in_last_part
        left -= np.maximum(0, left - short_floor) * lost_in_rest
        carried = np.maximum(risen, left)
        day = known - RUN_UP_DAYS
        if day >= 0:
            multiplier[day // CYCLE] += 1 - carried
            counted[day // CYCLE] += 1
    return multiplier / counted[:, None]


def half_month_of_days(farm):
    lengths = []
    for month in range(12):
        days = int(2 * farm.days[2 * month])
        lengths += [days // 2, days - days // 2]
    return np.repeat(np.arange(24), lengths)


def cycles(weeks):
    return max(1, int(np.ceil(7 * weeks / CYCLE - 1e-9)))


def per_cycle_conception(share, weeks):
    return 1 - (1 - share) ** (CYCLE / (7 * weeks))


def pregnant_share(per_cycle, weeks, multiplier, sterile):
    last = cycles(weeks) - 1
    empty = (1 - per_cycle * multiplier[last]) ** (7 * weeks / CYCLE - last)
    for of in multiplier[:last]:
        empty = empty * (1 - per_cycle * of)
    return (1 - sterile) * (1 - empty)


def unaffected_share(observed, weeks, multiplier, sterile):
    """Share in lamb without oestrogen, by bisection on the chance in one cycle."""
    highest = np.maximum(0.99, observed)
    low = per_cycle_conception(observed, weeks)
    high = per_cycle_conception(highest, weeks)
    none_hidden = pregnant_share(low, weeks, multiplier, sterile) >= observed
    never = pregnant_share(high, weeks, multiplier, sterile) <= observed
    for _ in range(52):
        middle = (low + high) / 2
        below = pregnant_share(middle, weeks, multiplier, sterile) < observed
        low = np.where(below, middle, low)
        high = np.where(below, high, middle)
    found = 1 - (1 - (low + high) / 2) ** (7 * weeks / CYCLE)
    return np.where(none_hidden, observed, np.where(never, highest, found))
