#!/bin/sh
# What the compiler must refuse, it refuses: each row is a line that is sound and one that is not,
# put into the same few lines around it.

folder=$(mktemp -d) || exit 1
trap 'rm -rf "$folder"' EXIT
failed=0
: "${CC:=cc}"

# compiles LINE: the lines around it are in $before and $after.
compiles() {
	printf '%s\n%s\n%s\n' "$before" "$1" "$after" >"$folder/try.c"
	$CC -std=c17 -D_GNU_SOURCE -Isrc -Werror -Wall -Wextra -c -o "$folder/try.o" \
		"$folder/try.c" >"$folder/said" 2>&1
}

# refuses SOUND UNSOUND
refuses() {
	compiles "$1" || { echo "refused: $1"; cat "$folder/said"; failed=1; }
	compiles "$2" && { echo "not refused: $2"; failed=1; }
}

# The kind of a figure and the type of its field agree.
before='#include "takeoff/fence/fencing.h"
#include "takeoff/ground/lawn.h"
const struct figure figures[] = {'
after='};'
refuses '{ "seed_kg", NULL, NULL, FIELD(WEIGHT, lawn, seed) },' \
	'{ "seed_m", NULL, NULL, FIELD(LENGTH, lawn, seed) },'
refuses '{ "depth_m", NULL, NULL, FIELD(LENGTH, lawn, topsoil_depth) },' \
	'{ "depth_m2", NULL, NULL, FIELD(AREA, lawn, topsoil_depth) },'
refuses '{ "region", NULL, NULL, FIELD(REGION, lawn, region) },' \
	'{ "region", NULL, NULL, FIELD(TEXT, lawn, region) },'
refuses '{ "cover", NULL, NULL, FIELD(WORD, lawn, cover) },' \
	'{ "cover", NULL, NULL, FIELD(COUNT, lawn, cover) },'
refuses '{ "at_m", NULL, NULL, FIELD(SPOT, fence_post, at) },' \
	'{ "at", NULL, NULL, FIELD(PLACE, fence_post, at) },'
refuses '{ "cut_m", NULL, NULL, FIELDS(LENGTHS, fence_leg, cut, cut_count) },' \
	'{ "cut_m", NULL, NULL, FIELDS(LENGTHS, fence_leg, cut, whole) },'

# The plot is changed by way of editor_edit alone.
before='#include "editor/editor.h"
void change(struct editor *editor);
void change(struct editor *editor)
{'
after='}'
refuses 'editor_edit(editor)->ground.rows = 1;' 'editor->plot->ground.rows = 1;'

# The check itself finds fault with an unsound line that compiles, and a sound one that does not.
finds_fault() {
	(failed=0; refuses "$1" "$2" >/dev/null; exit $failed) &&
		{ echo "no fault is found with: $1 / $2"; failed=1; }
}
before='' after=''
finds_fault 'extern int sound;' 'extern int sound_too;'
finds_fault 'extern int' 'extern int'

exit $failed
