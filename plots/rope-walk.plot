parterre-plot 1
title "Rope Walk, four L-shaped beds round a bird bath"
note "Invented scenario: no such garden, owner or supplier exists."
note "The gate in the south hedge stays where it is."
units imperial
cell 1 ft
north 12
site 51.4
mirror four-way
prices "prices.json"

bed b "Rose bed"
  block 16 in x 8 in x 6 in
  courses 3
  cap 2 ft x 8 in x 2 in
  embed 4 in
path p "Crushed stone"
  base 4 in
  surface 1 1/2 in
lawn l "Turf border"
fixture B "Bird bath"
  height 3 ft

ground 40 x 36
  ........................................
  .pppppppppppppppppppppppppppppppppppppp.
  .pppppppppppppppppppppppppppppppppppppp.
  .pppppppppppppppppppppppppppppppppppppp.
  .pppllllllllllllllppppllllllllllllllppp.
  .pppllllllllllllllppppllllllllllllllppp.
  .pppllbbbbbbbbbbllppppllbbbbbbbbbbllppp.
  .pppllbbbbbbbbbbllppppllbbbbbbbbbbllppp.
  .pppllbbbbbbbbbbllppppllbbbbbbbbbbllppp.
  .pppllbbbbbbbbbbllppppllbbbbbbbbbbllppp.
  .pppllbbblllllllllpppplllllllllbbbllppp.
  .pppllbbblllllllllpppplllllllllbbbllppp.
  .pppllbbblllllllllpppplllllllllbbbllppp.
  .pppllbbblllllllllpppplllllllllbbbllppp.
  .pppllllllllllllppppppppllllllllllllppp.
  .pppllllllllllllppppppppllllllllllllppp.
  .pppppppppppppppppppppppppppppppppppppp.
  .ppppppppppppppppppBBpppppppppppppppppp.
  .ppppppppppppppppppBBpppppppppppppppppp.
  .pppppppppppppppppppppppppppppppppppppp.
  .pppllllllllllllppppppppllllllllllllppp.
  .pppllllllllllllppppppppllllllllllllppp.
  .pppllbbblllllllllpppplllllllllbbbllppp.
  .pppllbbblllllllllpppplllllllllbbbllppp.
  .pppllbbblllllllllpppplllllllllbbbllppp.
  .pppllbbblllllllllpppplllllllllbbbllppp.
  .pppllbbbbbbbbbbllppppllbbbbbbbbbbllppp.
  .pppllbbbbbbbbbbllppppllbbbbbbbbbbllppp.
  .pppllbbbbbbbbbbllppppllbbbbbbbbbbllppp.
  .pppllbbbbbbbbbbllppppllbbbbbbbbbbllppp.
  .pppllllllllllllllppppllllllllllllllppp.
  .pppllllllllllllllppppllllllllllllllppp.
  .pppppppppppppppppppppppppppppppppppppp.
  .pppppppppppppppppppppppppppppppppppppp.
  .pppppppppppppppppppppppppppppppppppppp.
  ........................................
