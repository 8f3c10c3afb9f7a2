"""Which numbers move the decision of a farm by more than 5 %: a Markdown table from result documents.

Usage: python3 deciding.py FILE.json [...], each written by `swardcase decide FARM --json FILE.json`.
"""

import json
import sys

LIMIT = 0.05


def whole(value):
    return f"{value:,.0f}".replace("-", "−")


def rows(report):
    """Swings beyond the limit, largest first, with the evidence of the input."""
    known = {a["name"]: a for a in report["assumptions"]}
    npv = report["plan"]["npv"]["likely"]
    for swing in report["swings"]:
        span = abs(swing["npvAtHigh"] - swing["npvAtLow"])
        if npv == 0 or span > LIMIT * abs(npv):
            yield swing, known.get(swing["input"]), span, npv


def main(paths):
    print("| farm | input | low to high | evidence | set by | source | NPV moves by | of the plan's NPV |")
    print("|---|---|---|---|---|---|---|---|")
    for path in paths:
        with open(path, encoding="utf-8") as file:
            report = json.load(file)
        farm = report["farm"]["name"]
        for swing, about, span, npv in rows(report):
            about = about or {"evidence": "", "setBy": "", "source": ""}
            share = "no plan but keeping" if npv == 0 else f"{100 * span / abs(npv):,.0f} %"
            limits = f"{swing['low']:g} to {swing['high']:g} {swing['unit']}"
            evidence = about["evidence"].lower().replace("_", " ")
            cells = [farm, swing["input"], limits, evidence, about["setBy"].lower(), about["source"], whole(span), share]
            print("| " + " | ".join(cells) + " |")


if __name__ == "__main__":
    main(sys.argv[1:])
