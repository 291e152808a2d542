#!/bin/sh
# The check of the includes sees each kind of fault: it is given small trees that have one.

tree=$(mktemp -d) || exit 1
trap 'rm -rf "$tree"' EXIT
failed=0

# tree_new: a sound tree.
tree_new() {
	rm -rf "$tree/src"
	mkdir -p "$tree/src/base" "$tree/src/plot/edit" "$tree/src/report/json" "$tree/src/screen"
	mkdir -p "$tree/src/editor"
	echo '#include <stdio.h>' >"$tree/src/base/text.c"
	echo '#include "base/text.h"' >"$tree/src/plot/plot.c"
	echo '#include "plot.h"' >>"$tree/src/plot/plot.c"
	echo '#include "plot/plot.h"' >"$tree/src/plot/edit/lay.c"
	echo '#include <cJSON.h>' >"$tree/src/report/json/json.c"
	echo '#include <cjson/cJSON.h>' >"$tree/src/plot/prices.c"
	echo '#include <curses.h>' >"$tree/src/screen/curses.h"
	echo '#include <form.h>' >>"$tree/src/screen/curses.h"
	echo '#include "report/json/json.h"' >"$tree/src/screen/panel.c"
	echo '#include "screen/panel.h"' >"$tree/src/main.c"
}

# sees FILE INCLUDE: the check finds fault with the tree once the file includes that.
sees() {
	tree_new
	mkdir -p "$(dirname "$tree/src/$1")"
	echo "#include $2" >>"$tree/src/$1"
	if tests/house/test_includes.sh "$tree/src" >/dev/null; then
		echo "src/$1 may include $2"
		failed=1
	fi
}

tree_new
tests/house/test_includes.sh "$tree/src" || { echo "a sound tree is refused"; failed=1; }

sees base/text.c   '"plot/plot.h"'
sees plot/plot.h   '"takeoff/takeoff.h"'
sees plot/plot.c   '"plot/edit/lay.h"'
sees report/json/json.c '"report/panel/pages.h"'
sees report/json/json.c '"screen/panel.h"'
sees editor/editor.c '"screen/curses.h"'
sees plot/plot.c   '"../screen/panel.h"'
sees report/json/json.c '<curses.h>'
sees editor/editor.h '<curses.h>'
sees plot/garden/a.c '<stdio.h>'
sees screen/panel.c '<ncursesw/curses.h>'
sees screen/form.h '<form.h>'
sees main.c        '<term.h>'
sees base/json.c   '<cJSON.h>'
sees garden/a.c    '<stdio.h>'
sees other.c       '<stdio.h>'

rm -rf "$tree/src"
mkdir "$tree/src"
tests/house/test_includes.sh "$tree/src" >/dev/null && { echo "an empty tree passes"; failed=1; }

exit $failed
