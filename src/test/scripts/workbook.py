"""Opens the budget workbooks of the demo farms in LibreOffice Calc and compares what it works out
with what the program wrote beside it. Needs LibreOffice (apt-get install libreoffice-calc-nogui) and
target/bin/swardcase, which mvn package makes. From the top of the tree:

    python3 src/test/scripts/workbook.py
"""
import csv
import pathlib
import subprocess
import sys
import tempfile

FARMS = ["mixed-farm", "current-farm", "northern-farm", "risky-farm", "large-farm"]
ERRORS = ("#NAME?", "#VALUE!", "#REF!", "#DIV/0!", "#NUM!", "#N/A", "Err:", "###")
EXPORT = "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false,false,false,-1"


def number(text):
    return float(text.replace("%", "").strip())


def rows(sheet):
    with open(sheet, encoding="utf-8", newline="") as file:
        return list(csv.reader(file))


def main():
    worst = 0.0
    with tempfile.TemporaryDirectory() as place:
        here = pathlib.Path(place)
        for farm in FARMS:
            book = here / (farm + ".xlsx")
            subprocess.run(
                ["target/bin/swardcase", "decide", "demo-data/" + farm, "--date", "2026-11-25",
                 "--draws", "100", "--xlsx", str(book)],
                check=True, stdout=subprocess.DEVNULL)
            subprocess.run(
                ["soffice", "--headless", "--convert-to", EXPORT, "--outdir", place, str(book)],
                check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
            sheets = sorted(here.glob(farm + "-*.csv"))
            assert len(sheets) == 5, sheets
            for sheet in sheets:
                for r, row in enumerate(rows(sheet), 1):
                    for cell in row:
                        assert not cell.startswith(ERRORS), (sheet.name, r, cell)
            for row in rows(here / (farm + "-Budget.csv")):
                if row[0] in ("net present value", "cost, not discounted"):
                    theirs, ours = number(row[1]), number(row[2])
                    apart = abs(theirs - ours) / max(1.0, abs(ours))
                    worst = max(worst, apart)
                    print(f"{farm}: {row[0]}: {theirs:.6f} in Calc, {ours:.6f} by the program")
                elif row[0] in ("internal rate of return", "modified internal rate of return",
                                "benefit : cost"):
                    print(f"{farm}: {row[0]}: {row[1]} in Calc, {row[2]} by the program")
    print(f"largest difference {worst:.1e} of the number")
    return 0 if worst < 1e-6 else 1


if __name__ == "__main__":
    sys.exit(main())
