#!/bin/sh
# tests/run counts what passed, failed and was skipped, and fails when it must.

folder=$(mktemp -d) || exit 1
trap 'rm -rf "$folder"' EXIT
failed=0

# make_test NAME SCRIPT
make_test() {
	printf '#!/bin/sh\n%s\n' "$2" >"$folder/$1"
	chmod +x "$folder/$1"
}

# gives STATUS SUM TEST...: what tests/run must say of these.
gives() {
	status=$1 sum=$2
	shift 2
	output=$(cd "$folder" && B=$folder/build "$root/tests/run" "$@")
	found=$?
	[ $found = "$status" ] && [ "$(echo "$output" | tail -n 1)" = "$sum" ] && return
	printf '%s gave %s, not %s and "%s":\n%s\n' "$*" $found "$status" "$sum" "$output"
	failed=1
}

root=$PWD
make_test good    'exit 0'
make_test bad     'echo the reason; exit 1'
make_test skipped 'echo not here; exit 77'
make_test crashed 'kill -s SEGV $$'
make_test three   'echo "100%: Checks: 3, Failures: 0, Errors: 0"'
make_test mixed   'echo "33%: Checks: 6, Failures: 3, Errors: 1"; exit 1'
make_test none    'echo "100%: Checks: 0, Failures: 0, Errors: 0"; exit 1'
make_test leaks   'echo "100%: Checks: 4, Failures: 0, Errors: 0"; exit 9'
make_test inside  'case $(mktemp -d) in "$B"/*) ;; *) exit 1 ;; esac'
# Two that meet only if they run at the same time.
make_test meets   'touch "$B/$0"; for i in $(seq 100); do
	[ -e "$B/meets" ] && [ -e "$B/met" ] && exit; sleep 0.1; done; exit 1'
cp "$folder/meets" "$folder/met"

gives 0 "1 passed, 0 failed, 0 skipped" ./good
gives 0 "4 passed, 0 failed, 1 skipped" ./three ./skipped ./good
gives 1 "1 passed, 1 failed, 0 skipped" ./bad ./good
gives 1 "0 passed, 1 failed, 0 skipped" ./crashed
gives 1 "5 passed, 4 failed, 0 skipped" ./three ./mixed
gives 1 "3 passed, 1 failed, 0 skipped" ./none ./three
gives 1 "3 passed, 1 failed, 0 skipped" ./leaks
gives 1 "0 passed, 1 failed, 0 skipped" ./not-there
gives 1 "0 passed, 0 failed, 1 skipped" ./skipped
gives 1 "0 passed, 0 failed, 0 skipped"
gives 0 "1 passed, 0 failed, 0 skipped" ./inside

export JOBS=2
gives 0 "2 passed, 0 failed, 0 skipped" ./meets ./met
gives 1 "6 passed, 5 failed, 1 skipped" ./three ./mixed ./skipped ./good ./bad

(cd "$folder" && B=$folder/build "$root/tests/run" ./bad) | grep -q 'the reason' ||
	{ echo "a failed test's words are not shown"; failed=1; }
exit $failed
