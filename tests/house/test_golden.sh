#!/bin/sh
# Where the golden texts would be written anew nothing is checked: make says so and stops.

for goal in check check-all sanitize valgrind; do
	UPDATE_GOLDEN='' make -n "$goal" >/dev/null 2>&1 && { echo "make $goal goes on"; exit 1; }
	make -n UPDATE_GOLDEN=1 "$goal" >/dev/null 2>&1 && { echo "make $goal goes on"; exit 1; }
done
make -n TESTS=tests/house/test_golden.sh check >/dev/null || exit 1
make -n TESTS=tests/house/test_golden.sh golden >/dev/null
