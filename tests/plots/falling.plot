parterre-plot 1
title "Terrace at Tallow Bank"
note "Invented scenario: no such terrace, garden or owner exists."
units imperial
cell 1 ft

bed b "Raised bed"
  block 12 in x 8 in x 4 in
  courses 4
path p "Crushed stone"

ground 24 x 12
  ........................
  .bbbbbbpppppppppppbbbbb.
  .bbbbbbpppppppppppbbbbb.
  .bbbbbbpppppppppppbbbbb.
  .bbbbbbpppppppppppbbbbb.
  .pppppppppppppppppppppp.
  .pppppppppppppppppppppp.
  .pppppppppppppppppppppp.
  ........................
  ........................
  ........................
  ........................

fence "Pickets"
  run 0,12 24,12 24,0
  gate 10,12 14,12
levels 6 ft
  2 in, 2 in, 3 in, 5 in, 9 in
  3 in, 4 in, 6 in, 9 in, 14 in
  5 in, 7 in, 10 in, 14 in, 20 in
