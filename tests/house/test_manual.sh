#!/bin/sh
# The manual pages are sound, in mandoc's judgement.

pages=$(ls man/*.[1-8] 2>/dev/null)
[ -n "$pages" ] || { echo "there is no manual yet"; exit 77; }
mandoc -T lint -W warning $pages
