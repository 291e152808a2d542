parterre-plot 1
title "Two rounds of herbs and a walk between them"
note "Invented scenario."
units metric
cell 750 mm
north 100
mirror half-turn

bed b "Raised bed"
path p "Crushed stone"
path q "Sand"
lawn l "Turf"

ground 18 x 17
  ..................
  .bbbbbbbbbbbb.....
  .bbbbbbbbbbbb.....
  .bbbbbbbbbbbb.llll
  .bbbbbbbbbbbb.llll
  ..............llll
  ..ppppppppp...llll
  ..ppppppppp...llll
  ..qqqqq...qqqqq...
  ...............q..
  ...............q..
  .....bbbbb..q..q..
  .....bbbbb..q..q..
  .....bbbbb..q..q..
  .....bbbbb........
  .....bbbbb...bbbb.
  .............bbbb.
