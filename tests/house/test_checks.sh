#!/bin/sh
# The checks of the house see each kind of fault.

folder=$(mktemp -d) || exit 1
trap 'rm -rf "$folder"' EXIT
failed=0

# passes CHECK ARGUMENT..., refuses CHECK ARGUMENT...
passes() { tests/house/test_"$1".sh ${2:+"$2"} >/dev/null || { echo "$1 refuses $2"; failed=1; }; }
refuses() { tests/house/test_"$1".sh "$2" >/dev/null && { echo "$1 passes $2"; failed=1; }; }

printf '%100s\n' '' | tr ' ' x >"$folder/wide"
passes lines "$folder/wide"
printf '%101s\n' '' | tr ' ' x >"$folder/wide"
refuses lines "$folder/wide"
printf '\t%93s\n' '' | tr ' ' x >"$folder/wide"
refuses lines "$folder/wide"
printf 'abc\t%92s\n' '' | tr ' ' x >"$folder/wide"
passes lines "$folder/wide"

# function LINES: a file with a function of so many.
function() {
	body=$(yes '	f();' | head -n $(($1 - 2)))
	printf 'int f(void)\n{\n%s\n}\n' "$body" >"$folder/f.c"
}
function 60
passes sizes "$folder/f.c"
function 61
refuses sizes "$folder/f.c"
yes 'int f(void);' | head -n 400 >"$folder/f.c"
passes sizes "$folder/f.c"
yes 'int f(void);' | head -n 401 >"$folder/f.c"
refuses sizes "$folder/f.c"
cp "$folder/f.c" "$folder/attribute_bed.c"
passes sizes "$folder/attribute_bed.c"

# place: a sound place with one source that has its test and one that is listed.
place() {
	rm -rf "$folder/place"
	mkdir -p "$folder/place/src/base/sub" "$folder/place/tests/base" "$folder/place/tests/house"
	touch "$folder/place/src/base/own.c" "$folder/place/tests/base/test_own.c"
	touch "$folder/place/src/base/sub/other.c" "$folder/place/tests/base/test_both.c"
	echo 'base/sub/other.c tests/base/test_both.c' >"$folder/place/tests/house/covered"
}
place
passes covered "$folder/place"
place
touch "$folder/place/src/base/more.c"
refuses covered "$folder/place"
place
echo 'base/own.c tests/base/test_both.c' >>"$folder/place/tests/house/covered"
refuses covered "$folder/place"
place
echo 'base/gone.c tests/base/test_both.c' >>"$folder/place/tests/house/covered"
refuses covered "$folder/place"
place
echo 'base/sub/other.c tests/base/test_gone.c' >"$folder/place/tests/house/covered"
refuses covered "$folder/place"
place
echo 'base/sub/other.c' >"$folder/place/tests/house/covered"
refuses covered "$folder/place"

exit $failed
