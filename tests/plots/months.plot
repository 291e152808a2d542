parterre-plot 1
title "Beds on drip lines, and one that is not"
note "Invented scenario."
units metric
cell 500 mm
site -38
allow
  supply 300 L/h
  water january 30 mm
  water february 30 mm
  water march 20 mm
  water june 0 mm
  water july 0 mm
  water december 30 mm

bed b "Border"
  build level
  water drip
bed c "Raised bed"
  water drip
bed e "Dry bed"
  build level
path p "Sand"
  stone clean
  base 0 mm
lawn l "Turf"

ground 20 x 14
  ....................
  .bbbbbbpppppbbbbbb..
  .bbbbbbpppppbbbbbb..
  .bb....pppppbbbbbb..
  .bb....ppppp..bbbb..
  .bbbbbbppppp..bbbb..
  .......ppppp........
  .ccccccpppppeeeeeee.
  .ccccccpppppeeeeeee.
  .ccccccpppppeeeeeee.
  .ccccccppppplllllll.
  .ccccccppppplllllll.
  .......ppppp........
  ....................

plant s "Sage"
  spacing 400 mm
  drift b back
plant t "Thyme"
  spacing 200 mm
  plant-from september
  plant-until october
  drift c front
  drift e front
plant r "Rose"
  spacing 800 mm
  plant-from june
  plant-until june
  at 3,8
  at 14,9
plant v "Lavender"
  spacing 500 mm
  drift e back
tap 19,0
drop 9,13
