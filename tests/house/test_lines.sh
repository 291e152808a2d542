#!/bin/sh
# No line of the sources, the tests and the Makefile is wider than 100 columns; a tab goes on to
# the next eighth column.
#
# tests/house/test_lines.sh [FILE...]: other files may be looked at.

[ $# != 0 ] || set -- Makefile $(find src tests -name '*.[ch]' -o -name '*.sh') tests/run \
	tests/one tests/all tests/mutants/run tests/mutants/*.py
awk '
FNR == 1 { files++ }
{
	column = 0
	for (i = 1; i <= length($0); i++)
		column += substr($0, i, 1) == "\t" ? 8 - column % 8 : 1
	if (column > 100) {
		printf "%s:%d: %d columns\n", FILENAME, FNR, column
		faults++
	}
}
END {
	if (files == 0)
		print "no files"
	exit faults > 0 || files == 0
}' "$@"
