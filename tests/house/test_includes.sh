#!/bin/sh
# Includes go one way, along the rooms and sub-rooms listed below: a file uses its own folder and
# those before it. curses comes in through one header of src/screen, which nothing outside
# src/screen can reach, since that is the last room; cJSON comes in through one reader and one
# writer.
#
# tests/house/test_includes.sh [FOLDER]: another folder than src may be looked at.

folder=${1:-src}

{ grep -rnE '^[[:space:]]*#[[:space:]]*include' --include='*.[ch]' "$folder" ||
	echo "$folder:0:nothing"; } | awk -v root="$folder" '
function fault(why) {
	printf "%s:%s: %s\n", file, line, why
	faults++
}

# Whether name is another than those met before under this kind; most are let pass.
function too_many(kind, most) {
	if (!((kind, file) in met)) {
		met[kind, file] = 1
		count[kind]++
	}
	return count[kind] > most
}

BEGIN {
	folders = split("base plot plot/edit plot/format plot/history survey prices " \
		"takeoff/common takeoff/walls takeoff/ground takeoff/fence takeoff/services " \
		"takeoff/setout takeoff/planting takeoff/watering takeoff/walks takeoff/costs " \
		"takeoff takeoff/sun takeoff/advice report/words report/drawing report/text " \
		"report/json report/csv report/svg report/compare report/panel report " \
		"editor/field editor/ask editor editor/cards editor/acts screen", order, " ")
	for (i = 1; i <= folders; i++)
		rank[order[i]] = i
}

{
	split($0, part, ":")
	file = part[1]
	line = part[2]
	own = substr(file, length(root) + 2)
	if (own == "main.c")
		own = "main.c"
	else if (!sub("/[^/]*$", "", own) || !(own in rank))
		fault("a source file is in one of the rooms, or is main.c")

	name = $0
	if (!match(name, /["<][^">]*[">]/)) {
		fault("an include that names no file")
		next
	}
	is_ours = substr(name, RSTART, 1) == "\""
	name = substr(name, RSTART + 1, RLENGTH - 2)

	if (is_ours) {
		target = name
		if (!sub("/[^/]*$", "", target))
			target = own
		if (!(target in rank))
			fault("\"" name "\" is in none of the rooms")
		else if (own in rank && rank[target] > rank[own])
			fault(own " must not know of " target)
	} else if (name ~ /(curses|form|menu|panel|term)\.h$/) {
		if (own != "screen" || file !~ /\.h$/ || too_many("curses", 1))
			fault("<" name "> comes in through one header of screen")
	} else if (name ~ /cJSON\.h$/) {
		if (too_many("cJSON", 2))
			fault("<" name "> is for one reader and one writer")
	}
}

END {
	if (NR < 2) {
		print root ": no includes were found"
		faults++
	}
	exit faults > 0
}'
