parterre-plot 1
title "Weavers' Yard herb court"
note "The neighbour agreed the east line on 3 May."
units imperial
cell 1 ft
mirror left-right

bed b "Raised bed"
  block 1 ft x 8 in x 4 in
  courses 4
  mix topsoil 5, compost 4, sharp-sand 1
path p "Crushed stone"
lawn l "Turf"
fixture S "Sundial"
  height 4 ft

ground 16 x 13
  ................
  ..bbbbppppbbbb..
  ..bbbbppppbbbb..
  ..bbbbppppbbbb..
  ..bbbbppppbbbb..
  .pppppppppppppp.
  .pppppppppppppp.
  .ppppppppppppp..
  .llllllSSllllll.
  .llllllSSllllll.
  ................
  ................
  ................

fence "Pickets"
  run 0,0 0,13 16,13 16,0
  gate 6,13 10,13
