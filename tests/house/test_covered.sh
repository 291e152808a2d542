#!/bin/sh
# Every source has a test of its name in its room, tests/ROOM/test_NAME.c, or is in the list
# tests/house/covered with the tests that hold it. Nothing is listed that need not be.
#
# tests/house/test_covered.sh [FOLDER]: another place than here may be looked at.

cd "${1:-.}" || exit 1
list=tests/house/covered
faults=0
fault() { echo "$*"; faults=1; }

sources=$(find src -name '*.c' | sed 's|^src/||' | sort)
[ -n "$sources" ] || { echo "no sources"; exit 1; }
for source in $sources; do
	count=$(grep -cE "^$source( |\$)" $list)
	name=${source##*/}
	own=tests/${source%%/*}/test_${name%.c}.c
	if [ -f "$own" ]; then
		[ "$count" = 0 ] || fault "src/$source has $own and need not be listed"
	elif [ "$count" != 1 ]; then
		fault "src/$source has no $own and is listed $count times, not once"
	fi
done

while read -r source tests; do
	case $source in ''|'#'*) continue ;; esac
	[ -f "src/$source" ] || fault "$list: there is no src/$source"
	[ -n "$tests" ] || fault "$list: no test is named for $source"
	for test in $tests; do
		[ -f "$test" ] || fault "$list: there is no $test"
	done
done <$list
exit $faults
