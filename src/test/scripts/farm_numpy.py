"""The farm's outcome in vectorised numpy: docs/method/{actions,seed-bank,dose,plan,money}.md.

Python 3.11.2 and numpy 1.24.2, both Debian's (python3-numpy). Run by compare.sh; see docs/performance.md.

Every array has the draws on its last axis, and a call values a block of draws at once. What the program reads
between by straight lines is read from the same nodes here (grid_numpy.py).
"""

import pathlib
from types import SimpleNamespace

import ewes_numpy
import feed_numpy
import numpy as np


def load(folder):
    """Every array of a folder by its name; single numbers as such, places as whole numbers."""
    farm = SimpleNamespace()
    for file in sorted(pathlib.Path(folder).glob("*.npy")):
        values = np.load(file)
        if file.stem.startswith("at_"):
            values = values.astype(int)
        setattr(farm, file.stem, values.item() if values.ndim == 0 else values)
    farm.seasons = farm.seasons.astype(int)
    farm.keep = int(farm.keep)
    farm.years = int(farm.years)
    farm.winter = farm.winter.astype(bool)
    farm.held = farm.held.astype(bool)
    farm.usual = feed_numpy.usual(farm)
    return farm


def npv(farm, x, shares, seasons, base, choices):
    """Net present value of a plan, then of the plan with each choice put in: [1 + choices, draws].

    x [inputs, draws]; shares [paddocks, species, draws]; seasons [years, draws]; base [actions, starts]; choices [paddock, action, start].
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

    feed = feed_numpy.settings(farm, x)
    lost = lost_where_held(farm, sums["held"] / weight_sum)
    stands = feed_numpy.as_it_stands(farm, feed, now)
    w = sums["winter"] / weight_sum - lost
    o = sums["other"] / weight_sum - lost
    types = np.arange(len(farm.season_chance))[:, None]
    bought = feed_numpy.read(
        farm,
        feed,
        stands,
        now,
        with_rows(np.broadcast_to(seasons, w.shape), np.broadcast_to(types, (len(types), len(now)))),
        with_rows(w, np.broadcast_to(now, (len(types), len(now)))),
        with_rows(o, np.ones((len(types), len(now)))),
    )
    saved = bought[-len(types) :][seasons, np.arange(len(now))] - bought[: -len(types)].reshape(w.shape)
    mj_per_tonne = (
        1000 * x[farm.at_supplement_dry_matter] * x[farm.at_supplement_energy] * (1 - x[farm.at_supplement_waste])
    )
    net = saved * (farm.area_ha.sum() * x[farm.at_supplement_price] / mj_per_tonne)
    net += sums["margin"]
    net -= sums["cost"]

    green = feed_numpy.green_share(farm, x, stands)
    strongest = paths.strength.max((0, 1, 2))
    for g in range(len(farm.ewes)):
        value = farm.ewes[g] * (farm.lambs_per_pregnant[g] * x[farm.at_lamb_value] + x[farm.at_dry_ewe_cost])
        net += value * ewes_numpy.more_in_lamb(farm, x, g, green, strongest, kept, sums)

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


def with_rows(values, rows):
    return np.concatenate([values.reshape(-1, values.shape[-1]), rows])


# What actions do.


def action_paths(farm, x, shares):
    """Growth in winter and otherwise, strength, cost and margin per ha: [action, paddock, year, draw]."""
    clover = x[farm.at_clover_share]
    yields = x[farm.at_winter_yield].transpose(1, 0, 2)
    leaf = x[farm.at_formononetin].transpose(1, 0, 2)
    standing = shares.transpose(1, 0, 2)
    already = (shares * farm.is_sown[:, :, None]).sum(1)
    tested = already * x[farm.at_leaf_test] + (1 - already) * leaf[-1]
    leaf[-1] = np.where(farm.at_leaf_test[:, None] < 0, leaf[-1], tested)
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
    own = np.minimum(1, clover * (1 + (x[farm.at_sowing_clover_share] - 1) * (1 - already)))
    told = farm.at_target_clover_share[sown]
    target = np.where(told[:, None, None] < 0, own, x[told][:, None])
    missing = 1 - x[farm.at_sowing_clover_year_one]
    oversown = farm.oversows[sown][:, None, None]
    taken_growth, taken_strength = [], []
    for year in range(farm.years):
        of = plants[year]
        age = np.maximum(0, year - farm.run_down_years[sown])[:, None, None]
        settled = target * (1 - missing * np.exp(-age / x[farm.at_sowing_clover_years]))
        share = np.where(oversown == 1, clover + (target - clover) * of[-1], settled)
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
    wet = np.where(farm.likes_water[:, :, None] == 1, x[farm.at_yanninicum_wet], 1.0)
    crowding = (np.where(farm.at_crowding[:, :, None] < 0, 1.0, x[farm.at_crowding]) * wet).transpose(1, 0, 2)
    first = standing / crowding
    youngest = x[farm.at_yield] * first / first.sum(0)
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
        seedlings = (before - bank[1] - bank[2] - bank[3]) * x[farm.at_emergence]
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
