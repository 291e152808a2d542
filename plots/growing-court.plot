parterre-plot 1
title "Fuller's Row growing court"
note "Invented scenario: no such row, house, neighbour or tree exists."
note "Drops were read at a string pulled level from the edge of the terrace."
units imperial
cell 1 ft
north 20
site 42.5
mirror left-right
prices "prices.json"
notice "1187-0352"
notice-end "2 May"
allow
  topsoil 5 in
  held left, right
  supply 180 gal/h
  water january 0 in
  water february 0 in
  water march 0 in
  water april 1/2 in
  water june 1 1/4 in
  water july 1 1/2 in
  water august 1 1/2 in
  water october 1/2 in
  water november 0 in
  water december 0 in
  crew 2

bed b "Rose bed"
  note "As long and as wide as whole blocks make them: none is cut."
  block 16 in x 8 in x 6 in
  courses 3
  inside filled
  water drip
bed e "Catmint border"
  build level
  prepare 10 in
  water drip
bed k "Herb strip"
  build level
  water drip
path p "Crushed stone"
lawn l "Turf"
fixture S "Sundial"
  height 3 ft
  dial yes

ground 30 x 26
  ..pppp....pppppppppp....pppp..
  eeppppbbbbppppppppppbbbbppppee
  eeppppbbbbppppppppppbbbbppppee
  eeppppbbbbppppppppppbbbbppppee
  eeppppbbbbppppppppppbbbbppppee
  eeppppbbbbppppppppppbbbbppppee
  eeppppbbbbppppSSppppbbbbppppee
  eeppppbbbbppppSSppppbbbbppppee
  eeppppbbbbppppppppppbbbbppppee
  eeppppbbbbppppppppppbbbbppppee
  eeppppbbbbppppppppppbbbbppppee
  eeppppbbbbppppppppppbbbbppppee
  eeppppbbbbppppppppppbbbbppppee
  eeppppppppppppppppppppppppppee
  eeppppppppppppppppppppppppppee
  eeppppppppppppppppppppppppppee
  eellllllllkkkppppkkkllllllllee
  eellllllllkkkppppkkkllllllllee
  eellllllllkkkppppkkkllllllllee
  eellllllllkkkppppkkkllllllllee
  eellllllllkkkppppkkkllllllllee
  eellllllllkkkppppkkkllllllllee
  eellllllllkkkppppkkkllllllllee
  pppppppppppppppppppppppppppppp
  pppppppppppppppppppppppppppppp
  pppppppppppppppppppppppppppppp

fence "Pickets"
  run 0,26 30,26
  gate 13,26 17,26
service power "Feed of the gate lamp" to-lay
  line 28,0 28,23 18,23 18,26
plant r "Shrub rose"
  spacing 30 in
  height 4 ft
  sun full
  soil 1 ft
  pot 8 in
  plant-from april
  plant-until may
  price 24
  at 8,2
  at 7,5
  at 8,8
  at 7,11
  at 21,2
  at 22,5
  at 21,8
  at 22,11
plant s "Sage"
  spacing 18 in
  height 2 ft
  sun full
  soil 8 in
  pot 4 in
  plant-from april
  plant-until june
  price 6
  drift k back
plant t "Thyme"
  note "Creeping, for the edges."
  spacing 6 in
  height 4 in
  sun full
  soil 6 in
  pot 2 in
  plant-from april
  plant-until june
  price 2.25
  drift b front
  drift k front
plant c "Catmint"
  spacing 18 in
  height 18 in
  pattern square
  sun part
  soil 8 in
  pot 4 in
  plant-from april
  plant-until june
  price 7
  drift 0,1 whole
  drift 28,1 whole
levels 8 ft
  7 1/2 in, 8 in, 8 in, 8 1/2 in, 8 1/2 in
  9 in, 9 1/2 in, 10 1/2 in, 11 in, 11 in
  11 in, 11 1/2 in, 1 ft, 12 1/2 in, 13 in
  12 1/2 in, 13 1/2 in, 14 in, 15 in, 15 1/2 in
  14 1/2 in, 15 in, 16 in, 17 in, 17 in
finish 0,0 8 in
fall 2 % towards 200
house "Number 6" 22 ft
  from 2,-32 to 28,-10
shade "Wall on the west side" 4 ft
  from -1,0 to 0,26
shade "Wall on the east side" 4 ft
  from 30,0 to 31,26
shade "Next door's pear" 20 ft
  from 34,2 to 44,12
name 6,1 "Rose bed, west"
name 20,1 "Rose bed, east"
tie 0,0 "House corner, west" 122 3/8 in
tie 0,0 "House corner, east" 356 3/4 in
tie 30,0 "House corner, west" 356 3/4 in
tie 30,0 "House corner, east" 122 3/8 in
keep "Wall on the west side"
  from -1,0 to 0,26
keep "Wall on the east side"
  from 30,0 to 31,26
drop 15,26
tap 2,0
rate fixture 1 h per each
rate block 0.05 h per each
rate plant 0.08 h per each
extra "Batter boards" 16 each
extra "Mason's line" 300 ft
extra "Sundial" 1 each
