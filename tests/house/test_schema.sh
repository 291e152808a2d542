#!/bin/sh
# Every sample's takeoff as JSON is what tests/takeoff.schema.json says, in the judgement of a
# general JSON Schema validator (draft 2020-12), every comparison of two of them what
# tests/compare.schema.json says, and their snags what tests/snags.schema.json says; and the schemas
# refuse what is not.

folder=$(mktemp -d) || exit 1
trap 'rm -rf "$folder"' EXIT

# valid FILE...: the validator takes longer to start than to look at them all.
valid() {
	for file; do set -- "$@" -i "$file"; shift; done
	jsonschema --output pretty --base-uri "file://$PWD/tests/" "$@" $schema >"$folder/said" 2>&1
}

# all_valid LEAST FILE...: so many of them at least.
all_valid() {
	least=$1
	shift
	[ $# -ge "$least" ] || { echo "only $# of $schema"; exit 1; }
	valid "$@" || { head -c 2000 "$folder/said"; exit 1; }
}

# ---- Takeoffs

schema=tests/takeoff.schema.json
for plot in plots/*.plot tests/plots/falling.plot tests/plots/planted.plot \
	tests/plots/around.plot tests/plots/watered.plot; do
	"$B/parterre" takeoff "$plot" --json >"$folder/takeoff-${plot##*/}.json" || exit 1
done
all_valid 5 tests/golden/fence.json "$folder"/takeoff-*.json
for key in barrow_ways heaps ties; do
	grep -q "\"$key\"" "$folder/takeoff-around.plot.json" || { echo "no $key"; exit 1; }
done
grep -q '"watering_weeks"' "$folder/takeoff-watered.plot.json" || { echo "no watering"; exit 1; }

"$B/parterre" takeoff plots/court.plot --json >"$folder/takeoff.json" || exit 1

# refused SCRIPT: a takeoff with one thing amiss, as sed makes it so.
refused() {
	sed "$1" "$folder/takeoff.json" >"$folder/amiss.json"
	cmp -s "$folder/takeoff.json" "$folder/amiss.json" &&
		{ echo "no such thing to spoil: $1"; exit 1; }
	! valid "$folder/amiss.json" || { echo "not refused: $1"; exit 1; }
}

refused 's/"parterre-takeoff"/"takeoff"/'
refused 's/"complete": *true/"complete": 1/'
refused 's/"columns":/"colums":/'
refused 's/"class":"bed"/"class":"hedge"/'
refused 's/"order":/"order":-/'
refused 's/"cap": null/"cap": "none"/'
refused 's/"section":"walls"/"section":"sundries"/'
refused 's/"rate_from":"usual"/"rate_from":"guess"/'
refused 's/"crew":1/"crew":0/'

# ---- Comparisons

schema=tests/compare.schema.json
old=tests/plots/compare-old.plot
for plot in plots/*.plot tests/plots/compare-*.plot tests/plots/around.plot; do
	"$B/parterre" compare "$old" "$plot" --json >"$folder/compare-${plot##*/}.json"
	[ $? -le 1 ] || exit 1
done
all_valid 5 "$folder"/compare-*.json
"$B/parterre" compare $old tests/plots/compare-new.plot --json >"$folder/takeoff.json"

refused 's/"parterre-compare"/"compare"/'
refused 's/"same": *false/"same": 0/'
refused 's/"columns":/"colums":/'
refused 's/"change":"came"/"change":"grown"/'
refused 's/"amount":/"amount":-/'
refused 's/"unit":"m3"/"unit":"barrow"/'
refused 's/"part":"walls"/"part":"sundries"/'
refused 's/"difference":/"less":/'

# ---- Snags

schema=tests/snags.schema.json
for plot in plots/*.plot; do
	"$B/parterre" snags "$plot" --json >"$folder/snags-${plot##*/}.json"
	[ $? -le 1 ] || exit 1
done
all_valid 5 "$folder"/snags-*.json
"$B/parterre" snags plots/snags.plot --json >"$folder/takeoff.json"

refused 's/"parterre-snags"/"snags"/'
refused 's/"columns":/"colums":/'
refused 's/"code":"wall-jog"/"code":"Wall jog"/'
refused 's/"drawing":/"drawings":/'

# ---- Sun

schema=tests/sun.schema.json
"$B/parterre" sun tests/plots/sun.plot --json --on 2026-06-21 >"$folder/takeoff.json" || exit 1
all_valid 1 "$folder/takeoff.json"

refused 's/"parterre-sun"/"sun"/'
refused 's/"day_length_h":/"day_length_h":-/'
refused 's/"class":"full-sun"/"class":"sunny"/'
refused 's/null/"none"/'
refused 's/"angle_deg":/"angle":/'
