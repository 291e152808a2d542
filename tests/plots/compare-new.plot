parterre-plot 1
title "Cooper's Row, second plan"
note "Invented scenario."
units imperial
cell 1 ft
prices "../../plots/prices.json"

bed b "Raised bed"
  block 16 in x 8 in x 6 in
  courses 2
  mix topsoil 2, compost 1
path p "Gravel"
lawn l "Turf"
fixture S "Bench"
  height 3 ft

ground 18 x 14
  ..................
  .bbbbbbppbbbbbb...
  .bbbbbbppbbbbbb...
  .bbbbbbppbbbbbb...
  .bbbbbbppbbbbbb...
  .pppppppppppppppp.
  .pppppppppppppppp.
  ........pp.bbbbb..
  ........pp.bbbbb..
  .bbbbbb.pp.bbbbb..
  .bbbbbb.pp........
  .bbbbbb.pp........
  .bbbbbb.pp........
  ..................

fence "Pickets"
  run 0,0 0,14 18,14
  gate 7,14 11,14

name 1,1 "Sage"
