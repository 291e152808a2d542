parterre-plot 1
title "A long bed and a short one"
note "Invented scenario."
units imperial
cell 5 1/2 in

bed b "Raised bed"
path p "Crushed stone"

ground 26 x 13
  ..........................
  .bbbbbbbbbbbbbbbbbbbbbbb..
  .bbbbbbbbbbbbbbbbbbbbbbb..
  .bbbbbbbbbbbbbbbbbbbbbbb..
  .bbbbbbbbbbbbbbbbbbbbbbb..
  .bbbbbbbbbbbbbbbbbbbbbbb..
  .ppppppppppppppppppppppp..
  .ppbbbpppppppppppppppppp..
  .ppbbbpppppppppppppppppp..
  .ppbbbpppppppppppppppppp..
  .ppbbbpppppppppppppppppp..
  .ppppppppppppppppppppppp..
  ..........................
