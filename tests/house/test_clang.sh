#!/bin/sh
# Clang too compiles the program and all tests without a warning. All that it warns of it sees
# before it makes code; with full counts the code is made, and put together, as well.

command -v clang >/dev/null || { echo "clang is not here"; exit 77; }
[ -z "${FULL:-}" ] || make B="$B/clang" CC=clang WERROR=-Werror all tests || exit 1
make B="$B/clang" CC=clang WERROR=-Werror syntax
