parterre-plot 1
title "Garth of all signs"
note "Invented scenario: whatever a plan can have on it stands here once."
units imperial
cell 1 ft
north 340
mirror left-right

bed b "Raised bed"
bed c "Corner bed"
  courses 2
bed e "Border"
  build level
path p "Crushed stone"
path q "Sand"
lawn l "Turf"
lawn m "Meadow"
fixture S "Sundial"
  height 3 ft
fixture U "Urn"
  height 4 ft

ground 22 x 16
  ......................
  .bbbbbbbpp..ppbbbbbbb.
  .bbbbbbbpp..ppbbbbbbb.
  .bbbbcccppSSppcccbbbb.
  .bbbbcccppSSppcccbbbb.
  .ppppppppppppppppppppp
  .qqqqqqqqqqqqqqqqqqqqq
  .llllllmmm..mmmllllll.
  .lllllbbmm..mmbblllll.
  .lllllbbmm..mmbblllll.
  .llllllmmm..mmmllUlll.
  ......................
  ......................
  ...eeee............ee.
  ...eeee............ee.
  ......................

fence "Pickets"
  run 0,16 0,0 8,0
  run 14,11 20,11 20,16
  run 13,15 18,15 18,12
  run 10,13 10,16
  run 4,7 7,7
  gate 16,11 19,11
  gate 3,0 6,0
service water "Supply" existing
  depth 18 in
  line 22,7 16,7 16,3 10,3
service power "Lamp" to-lay
  line 0,12 8,12 8,16
levels 11 ft
  10 in, 11 in, 14 in
  12 in, 13 1/16 in, 16 1/2 in
  13 in, 16 in, 20 in
house "Number 4"
  from 19,-5 to 30,1
tie 0,0 "House corner" 12 ft
keep "Old pear" 2 ft
  at 12,14
drop 10,11
tap 21,4
plant r "Shrub rose"
  spacing 3 ft
  spread 5 ft
  at 3,2
  at 16,12
plant t "Thyme"
  spacing 8 in
  drift e front
name 1,7 "Garden"
