parterre-plot 1
title "Chandlers' court, by the sun"
note "An invented garden."
units imperial
cell 1 ft
north 340
site 51.5

bed b "Raised bed"
  courses 4
path p "Crushed stone"
lawn l "Turf"
fixture S "Sundial"
  height 3 ft
  dial yes
fixture U "Urn"
  height 7 ft
bed k "Kitchen bed"
  build level

ground 24 x 16
  ........................
  .bbbbbb.pppppppp.bbbbbb.
  .bbbbbb.pppppppp.bbbbbb.
  .bbbbbb.pppppppp.bbbbbb.
  .bbbbbb.pppppppp.bbbbbb.
  ........pppppppp........
  ppppppppppppppppppppppp.
  ppppppppppSSpppppppppppp
  ppppppppppSSpppppppppppp
  pppppppppppppppppppppppp
  UUllllllpppppppplllllUU.
  UUllllllpppppppplllllUU.
  llllllllpppppppplllllll.
  .kkkkkk.pppppppp.kkkkkk.
  .kkkkkk.pppppppp.kkkkkk.
  ........................

fence "Hurdles"
  height 5 ft
  run 0,0 0,16 24,16
  gate 8,16 16,16
house "Number 9" 22 ft
  from 2,19 to 12,40
house "Shed"
  from 22,0 to 25,3
shade "Limes" 36 ft
  from 27,10 to 33,30
name 1,1 "Sage"
