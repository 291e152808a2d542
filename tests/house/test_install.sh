#!/bin/sh
# `make install` puts everything under DESTDIR and PREFIX, fit to be run and read;
# `make uninstall` leaves nothing of it.

stage=$(mktemp -d) || exit 1
trap 'rm -rf "$stage"' EXIT
fail() { echo "$1"; find "$stage"; exit 1; }
staged() { make -s B="$B" DESTDIR="$stage" PREFIX=/opt/garden "$1" || fail "make $1 failed"; }

ls man/*.[1-8] >/dev/null 2>&1 || { echo "there is no manual yet"; exit 77; }

staged install
at=$stage/opt/garden
cmp "$B/parterre" "$at/bin/parterre" && [ -x "$at/bin/parterre" ] || fail "no program"
for page in man/*; do
	cmp "$page" "$at/share/man/man${page##*.}/${page##*/}" || fail "no $page"
done
for plot in plots/*; do
	cmp "$plot" "$at/share/doc/parterre/${plot##*/}" || fail "no $plot"
done
"$at/bin/parterre" takeoff "$at/share/doc/parterre/court.plot" >/dev/null || fail "it does not run"

staged uninstall
[ -z "$(find "$stage" -type f)" ] || fail "files are left"
