parterre-plot 1
title "Slope behind Lantern Row"
note "Invented scenario: no such row, house, garden or owner exists."
note "Drops were read at a string pulled level from the house's door sill."
units imperial
cell 1 ft
north 20
allow
  topsoil 4 in

bed b "Raised bed"
  block 16 in x 8 in x 6 in
  courses 3
path p "Crushed stone"
lawn l "Turf"
  cover turf

ground 25 x 18
  .ppppppppppppppppppppppp.
  .ppppppppppppppppppppppp.
  .ppppppppppppppppppppppp.
  .ppplllllllppplllllllppp.
  .ppplllllllppplllllllppp.
  .ppplllllllppplllllllppp.
  .pppbbbbbbbpppbbbbbbbppp.
  .pppbbbbbbbpppbbbbbbbppp.
  .pppbbbbbbbpppbbbbbbbppp.
  .pppbbbbbbbpppbbbbbbbppp.
  .ppppppppppppppppppppppp.
  .ppppppppppppppppppppppp.
  .ppppppppppppppppppppppp.
  .lllllllllllllllllllllll.
  .lllllllllllllllllllllll.
  .lllllllllllllllllllllll.
  .........................
  .........................

levels 4 ft
  9 in, 8 in, 7 1/2 in, 7 in, 6 1/2 in, 6 in, 6 in, 6 in
  11 in, 10 1/2 in, 10 in, 9 in, 8 1/2 in, 8 in, 7 1/2 in, 7 1/2 in
  13 1/2 in, 13 in, 1 ft, 11 in, 10 in, 10 in, 9 1/2 in, 9 in
  17 in, 23 in, 16 in, 13 in, 1 ft, 11 1/2 in, 11 in, 11 in
  19 in, 2 ft, 18 in, 15 in, 14 in, 13 in, 12 1/2 in, 1 ft
  20 in, 2 ft, 20 in, 17 in, 16 in, 15 in, 14 in, 13 1/2 in
finish 12,0 8 in
fall 5 % away
house "Number 8"
  from 4,-22 to 20,0
