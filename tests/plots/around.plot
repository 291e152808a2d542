parterre-plot 1
title "Dyers' Yard"
note "Invented scenario: a yard between two houses, with ties and a drop."
units imperial
cell 1 ft

bed b "Raised bed"
path p "Crushed stone"
lawn l "Turf"

ground 18 x 12
  ..................
  .bbbbbbpppbbbbbb..
  .bbbbbbpppbbbbbb..
  .bbbbbbpppbbbbbb..
  .bbbbbbpppbbbbbb..
  .pppppppppppppppp.
  .pppppppppppppppp.
  .pppppppppppppppp.
  .llllllpppllllll..
  .llllllpppllllll..
  .llllllpppllllll..
  .......ppp........

fence "Pickets"
  run 0,12 18,12
  gate 6,12 11,12

house "Number 4"
  from -8,-10 to 12,-2
house "Number 6"
  from 20,-4 to 30,8

tie 0,0 "Number 4, north corner" 12 ft 4 in
tie 0,0 "Gate pier" 20 ft 6 in
drop 4,12
