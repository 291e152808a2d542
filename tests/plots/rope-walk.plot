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
  cap 16 in x 8 in x 2 in
path p "Crushed stone"
  base 4 in
  surface 1 1/2 in
lawn l "Turf border"
fixture B "Bird bath"
  height 3 ft

ground 30 x 20
  ..............................
  .pppppppppppppppppppppppppppp.
  .plllllllllllpppplllllllllllp.
  .plbbbbbbbbblpppplbbbbbbbbblp.
  .plbbbbbbbbblpppplbbbbbbbbblp.
  .plbbbbbbbbblpppplbbbbbbbbblp.
  .plbbbbblllllpppplllllbbbbblp.
  .plbbbbblllllpppplllllbbbbblp.
  .plllllllllllpppplllllllllllp.
  .pppppppppppppBBppppppppppppp.
  .pppppppppppppBBppppppppppppp.
  .plllllllllllpppplllllllllllp.
  .plbbbbblllllpppplllllbbbbblp.
  .plbbbbblllllpppplllllbbbbblp.
  .plbbbbbbbbblpppplbbbbbbbbblp.
  .plbbbbbbbbblpppplbbbbbbbbblp.
  .plbbbbbbbbblpppplbbbbbbbbblp.
  .plllllllllllpppplllllllllllp.
  .pppppppppppppppppppppppppppp.
  ..............................
