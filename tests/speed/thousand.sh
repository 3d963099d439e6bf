#!/usr/bin/env bash
# thousand.sh NETTARE RUN_MEASURED: writes 1,000 recipes of ten lines over the starter's foods, with
# invented weights, and says how long one run of the program takes for their figures.
set -euo pipefail
here=$(CDPATH='' cd -- "$(dirname -- "${BASH_SOURCE[0]}")" && pwd)
starter=$here/../../resources/starter
folder=$(mktemp -d)
trap 'rm -rf -- "$folder"' EXIT

# Lines take turns: weighed into one bowl, as written, a table's cup where the food has a plain one.
awk -F'|' -v folder="$folder" -v documents=1000 '
    /^#/ || $1 == "number" { next }
    FILENAME ~ /measures.txt$/ {
        if ($3 == "cup" && $4 == "-") cups[cup_count++] = $1
        next
    }
    { foods[food_count++] = $1 }

    function food(number) {
        list = list (list == "" ? "" : ",") sprintf("{\"id\":\"f%d\",\"name\":\"food %s\"," \
            "\"table\":{\"table\":\"usda-sr\",\"release\":\"28\",\"number\":\"%s\"}}",
            line, number, number)
    }
    function weighed() {
        food(foods[(document * 7 + line * 13) % food_count])
        shown += 40 + (document + line * 17) % 90
        indications = indications sprintf(",{\"id\":\"i%d\",\"scale\":\"s\",\"shown\":\"%d\"," \
            "\"state\":\"edible portion\"}", line, shown)
        readings = readings sprintf("%s{\"id\":\"r%d\",\"gross\":\"i%d\",\"tare\":\"%s\"}",
            readings == "" ? "" : ",", line, line, before)
        before = "i" line
        return sprintf("\"amount\":\"1\",\"piece\":\"piece\",\"weighed\":[\"r%d\"]", line)
    }
    function written() {
        food(foods[(document * 11 + line * 5) % food_count])
        return sprintf("\"amount\":\"%d\",\"unit\":\"g\"", 10 + (document * 3 + line) % 200)
    }
    function cup() {
        food(cups[(document + line) % cup_count])
        return "\"amount\":\"1/2\",\"unit\":\"cup\""
    }
    END {
        for (document = 1; document <= documents; ++document) {
            list = lines = readings = ""
            indications = "{\"id\":\"bowl\",\"scale\":\"s\",\"shown\":\"300\",\"state\":\"empty\"}"
            shown = 300
            before = "bowl"
            for (line = 0; line < 10; ++line) {
                how = line % 3 == 0 ? weighed() : line % 3 == 1 ? written() : cup()
                lines = lines sprintf("%s{\"id\":\"l%d\",\"food\":\"f%d\",%s}",
                    line ? "," : "", line, line, how)
            }
            file = sprintf("%s/%04d.json", folder, document)
            printf "{\"format\":\"nettare recipe\",\"version\":1,\"title\":\"Generated %d\"," \
                "\"measures\":\"us\",\"makes\":{\"pieces\":\"8\",\"piece\":\"piece\"," \
                "\"plural\":\"pieces\"},\"portion\":{\"pieces\":\"2\"},\"scales\":[{\"id\":\"s\"," \
                "\"name\":\"scale\",\"unit\":\"g\",\"readability\":\"1\"}],\"indications\":[%s]," \
                "\"readings\":[%s],\"foods\":[%s],\"lines\":[%s]}\n",
                document, indications, readings, list, lines > file
            close(file)
        }
    }' "$starter/measures.txt" "$starter/foods.txt"

for form in --per=portion --json; do
    echo "1,000 documents, figures $form"
    "$2" "$1" figures "$form" "$folder"/*.json >/dev/null
done
