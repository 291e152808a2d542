#!/bin/sh
# Every sample's takeoff as JSON is what tests/takeoff.schema.json says, in the judgement of a
# general JSON Schema validator (draft 2020-12), every comparison of two of them what
# tests/compare.schema.json says, and their snags what tests/snags.schema.json says; and the schemas
# refuse what is not.

folder=$(mktemp -d) || exit 1
trap 'rm -rf "$folder"' EXIT

schema=tests/takeoff.schema.json
valid() { jsonschema --base-uri "file://$PWD/tests/" -i "$1" $schema >"$folder/said" 2>&1; }

count=0
for plot in plots/*.plot tests/plots/falling.plot tests/plots/planted.plot; do
	"$B/parterre" takeoff "$plot" --json >"$folder/takeoff.json" || exit 1
	valid "$folder/takeoff.json" || { echo "$plot:"; head -c 2000 "$folder/said"; exit 1; }
	count=$((count + 1))
done
[ $count -ge 5 ] || { echo "only $count samples"; exit 1; }

"$B/parterre" takeoff tests/plots/around.plot --json >"$folder/takeoff.json" || exit 1
valid "$folder/takeoff.json" || { echo "what is around:"; head -c 2000 "$folder/said"; exit 1; }
for key in barrow_ways heaps ties; do
	grep -q "\"$key\"" "$folder/takeoff.json" || { echo "no $key"; exit 1; }
done

valid tests/golden/fence.json || { echo "a fence:"; head -c 2000 "$folder/said"; exit 1; }

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
	"$B/parterre" compare "$old" "$plot" --json >"$folder/compare.json"
	[ $? -le 1 ] || exit 1
	valid "$folder/compare.json" || { echo "$plot:"; head -c 2000 "$folder/said"; exit 1; }
done
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
	"$B/parterre" snags "$plot" --json >"$folder/takeoff.json"
	[ $? -le 1 ] || exit 1
	valid "$folder/takeoff.json" || { echo "$plot:"; head -c 2000 "$folder/said"; exit 1; }
done
"$B/parterre" snags plots/snags.plot --json >"$folder/takeoff.json"

refused 's/"parterre-snags"/"snags"/'
refused 's/"columns":/"colums":/'
refused 's/"code":"wall-jog"/"code":"Wall jog"/'
refused 's/"drawing":/"drawings":/'

# ---- Sun

schema=tests/sun.schema.json
"$B/parterre" sun tests/plots/sun.plot --json --on 2026-06-21 >"$folder/takeoff.json" || exit 1
valid "$folder/takeoff.json" || { head -c 2000 "$folder/said"; exit 1; }

refused 's/"parterre-sun"/"sun"/'
refused 's/"day_length_h":/"day_length_h":-/'
refused 's/"class":"full-sun"/"class":"sunny"/'
refused 's/null/"none"/'
refused 's/"angle_deg":/"angle":/'
