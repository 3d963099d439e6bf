#!/usr/bin/env python3
"""Makes factors.txt, beside this script, from the published table of retention factors.

    python3 make_factors.py NutrientRetention.csv

The CSV has one row a code and nutrient: Retn_Code, FdGrp_CD, RetnDesc, Nutr_No, NutrDesc,
Retn_Factor, Date. Written is one line a code, sorted by code, with a column a nutrient, sorted by
number. Codes and food groups get back the leading zeros that the CSV lost. A factor that the CSV lost
is "-": where the row is missing, and where the date stands in its place. Anything else that is no
whole percent, or another number of codes, nutrients or lost factors, stops the script. The build
does not run it: its output is what we keep and review.
"""
import csv
import hashlib
import pathlib
import sys

HERE = pathlib.Path(__file__).resolve().parent
COMMENT = [
    "US Department of Agriculture, Agricultural Research Service, Nutrient Data Laboratory. USDA Table of",
    "Nutrient Retention Factors, Release 6. December 2007. A work of the US government, listed under CC0 1.0.",
    "Percent of the nutrient that is kept, by code of food and cooking and by nutrient number; both, the",
    "food groups and the descriptions as published, with the leading zeros that the published CSV lost.",
    "A dash is a factor that the published CSV lost: unknown, never 0. There are 26: all of code 5005 but",
    "alcohol (221) and choline (421), alcohol of 5009 and choline (421) of 1154.",
    "The published date is Sep-75 throughout and left out.",
]
CODES, NUTRIENTS, LOST = 270, 26, 26


def factor_of(row):
    """The factor as written, or a dash where the date stands in its place and the date's is empty."""
    if row["Retn_Factor"].isascii() and row["Retn_Factor"].isdigit() and row["Date"] == "Sep-75":
        return row["Retn_Factor"]
    if row["Retn_Factor"] == "Sep-75" and row["Date"] == "":
        return "-"
    raise SystemExit(f"neither a factor nor a known defect: {row}")


def field(text):
    if not text or text == "-" or "|" in text or "\n" in text or text != text.strip():
        raise SystemExit(f"cannot be written as a field: {text!r}")
    return text


def read(path):
    """(code, food group, description) of each code, and the factor of each code and nutrient."""
    heads, factors = {}, {}
    with open(path, encoding="utf-8", newline="") as file:
        for row in csv.DictReader(file):
            code = row["Retn_Code"].zfill(4)
            head = (code, f"{int(row['FdGrp_CD']):02}00", field(row["RetnDesc"]))
            if heads.setdefault(code, head) != head:
                raise SystemExit(f"code {code} has two groups or descriptions")
            key = (code, int(row["Nutr_No"]))
            if key in factors:
                raise SystemExit(f"code and nutrient {key} come twice")
            factors[key] = factor_of(row)
    return heads, factors


def main():
    if len(sys.argv) != 2:
        raise SystemExit("usage: make_factors.py NutrientRetention.csv")
    heads, factors = read(sys.argv[1])
    nutrients = sorted({number for _, number in factors})
    rows = [list(heads[code]) + [factors.get((code, number), "-") for number in nutrients]
            for code in sorted(heads)]
    lost = sum(row[3:].count("-") for row in rows)
    if (len(rows), len(nutrients), lost) != (CODES, NUTRIENTS, LOST):
        raise SystemExit(f"{len(rows)} codes, {len(nutrients)} nutrients, {lost} lost factors")
    digest = hashlib.sha256(pathlib.Path(sys.argv[1]).read_bytes()).hexdigest()
    lines = [f"# {line}" for line in COMMENT + [f"SHA-256 of NutrientRetention.csv: {digest}"]]
    lines.append("|".join(["code", "food_group", "description"] + [str(n) for n in nutrients]))
    lines += ["|".join(row) for row in rows]
    (HERE / "factors.txt").write_text("\n".join(lines) + "\n", encoding="utf-8", newline="\n")


if __name__ == "__main__":
    main()
