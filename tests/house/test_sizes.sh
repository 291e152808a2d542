#!/bin/sh
# No source has more than 400 lines, but for one that is a table; no function has more than 60.
#
# tests/house/test_sizes.sh [FILE...]: other files may be looked at.

[ $# != 0 ] || set -- $(find src -name '*.[ch]')
awk '
function fault(line, why) {
	printf "%s:%d: %s\n", FILENAME, line, why
	faults++
}

FNR == 1 { files++; start = 0 }
FNR == 401 && FILENAME !~ /attribute_[a-z]*\.c$/ { fault(FNR, "over 400 lines") }
/^{/ { start = FNR }
/^}/ {
	if (start > 0 && FNR - start + 1 > 60)
		fault(start, "a function of " FNR - start + 1 " lines")
	start = 0
}
END {
	if (files == 0)
		print "no files"
	exit faults > 0 || files == 0
}' "$@"
