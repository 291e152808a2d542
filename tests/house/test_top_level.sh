#!/bin/sh
# The top level of the repository holds these and hidden files, nothing else.

top=$(git -c safe.directory='*' ls-files 2>/dev/null | cut -d/ -f1 | sort -u)
[ -n "$top" ] || { echo "not a git repository"; exit 77; }

strangers=$(echo "$top" |
	grep -vxE '\..*|README\.md|DEVELOPERS\.md|LICENSE|Makefile|src|tests|plots|man')
[ -z "$strangers" ] || { echo "does not belong at the top level:" $strangers; exit 1; }
