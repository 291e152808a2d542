parterre-plot 1
title "Fullers' Garth"
note "Invented scenario: raised beds and a border, watered from a tap at the house."
units imperial
cell 1 ft
mirror left-right
allow
  supply 100 gal/h
  water january 0 in
  water february 0 in
  water june 1 1/4 in
  water july 1 1/2 in
  water august 1 1/2 in
  water november 0 in
  water december 0 in

bed b "Raised bed"
  block 1 ft x 8 in x 4 in
  courses 4
  water drip
bed e "Border"
  build level
  water drip
  drip-row 18 in
path p "Crushed stone"
lawn l "Turf"

ground 18 x 14
  ..................
  .bbbbbppppppbbbbb.
  .bbbbbppppppbbbbb.
  .bbbbbppppppbbbbb.
  .bbbbbppppppbbbbb.
  .pppppppppppppppp.
  .pppppppppppppppp.
  .bbbbbppppppbbbbb.
  .bbbbbppppppbbbbb.
  .bbbbbppppppbbbbb.
  .bbbbbppppppbbbbb.
  ......pppppp......
  eeeeee......eeeeee
  eee............eee

tap 9,14
