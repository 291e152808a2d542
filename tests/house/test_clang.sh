#!/bin/sh
# Clang too builds the program and all tests without a warning.

command -v clang >/dev/null || { echo "clang is not here"; exit 77; }
make B="$B/clang" CC=clang WERROR=-Werror all tests
