"""Prints invented farms as JSON documents, one a line: python3 src/test/scripts/many_farms.py 2000 > farms.jsonl

Each has three to five paddocks and one mob; the same number gives the same farms. One in fifty has a fault, as lists
from elsewhere do. Standard library only."""
import json
import random
import sys

CULTIVARS = ["Geraldton", "Dinninup", "Yarloop", "Dwalganup", "Seaton Park", "Narrikup", "Dalkeith"]


def farm(number, draw):
    paddocks, plants = [], []
    for i in range(draw.randint(3, 5)):
        name = f"Paddock {i + 1}"
        paddocks.append({"paddock": name, "area_ha": draw.randint(15, 80), "clover_percent": draw.randint(20, 65)})
        for cultivar in draw.sample(CULTIVARS, draw.randint(1, 3)):
            plants.append({"paddock": name, "cultivar": cultivar, "plants": draw.randint(10, 40)})
    document = {
        "farm": {
            "name": f"farm-{number:05d}",
            "growth": draw.choice(["Katanning", "Esperance"]),
            "mobs": [{"name": "ewes", "ewes": 100 * draw.randint(2, 12), "joining_start": "30 January"}],
            "sow": "Narrikup",
        },
        "paddocks": paddocks,
        "plants": plants,
    }
    if number % 50 == 0:
        document["paddocks"][0]["area_ha"] = -1
    return document


def main():
    draw = random.Random(2000)
    for number in range(1, int(sys.argv[1]) + 1):
        print(json.dumps(farm(number, draw), separators=(",", ":")))


if __name__ == "__main__":
    main()
