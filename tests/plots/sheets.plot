parterre-plot 1
title "Long walk, on two sheets"
note "Invented scenario: no such garden, owner or supplier exists."
units imperial
cell 1 ft
north 100

bed b "Raised bed"
  block 12 in x 8 in x 4 in
bed h "Herbs"
  build level
path p "Crushed stone"
lawn l "Turf"
fixture U "Urn"
fixture T "Tap"

ground 80 x 14
  ................................................................................
  ..pppppppppppppppppppppppppppppppppppppppppppppppppppppppppppppppppppppppppppp..
  ..pppppppppppppppppppppppppppppppppppppppppppppppppppppppppppppppppppppppppppp..
  ..ppbbbbbbbbbbbbppppllllllllllllllllllllllllllllllllllllllllppppbbbbbbbbbbbbpp..
  ..ppbbbbbbbbbbbbppppllllllllllllllllllllllllllllllllllllllllppppbbbbbbbbbbbbpp..
  ..ppbbbbbbbbbbbbppppllllllllllllllllbbbbbbbbllllllllllllllllppppbbbbbbbbbbbbpp..
  ..ppbbbbbbbbbbbbppppllllllllllllllllbbbUUbbbllllllllllllllllppppbbbbbbbbbbbbpp..
  ..ppppppppppppppppppllllllllllllllllbbbUUbbbllllllllllllllllpppppppppppppppppp..
  ..ppppppppppppppppppllllllllllllllllbbbbbbbbllllllllllllllllpppppppppppppppppp..
  ..pphhhhhhhhhhhhppppllllllllllllllllllllllllllllllllllllllllpppphhhhhhhhhhhhpp..
  ..pphhhhhhhhhhhhppppllllllllllllllllllllllllllllllllllllllllpppphhhhhhhhhhhhpp..
  ..pppppppppppppppppppppppppppppppppppppppppppppppppppppppppppppppppppppppppppp..
  ..pppppppppppppppppTpppppppppppppppppppppppppppppppppppppppppppppppppppppppppp..
  ................................................................................

fence "Pickets"
  run 0,0 80,0 80,14 0,14 0,0
  gate 10,14 14,14
  gate 80,5 80,9
  gate 0,0 1,0
fence "Boards"
  run 58,3 58,11
  gate 58,6 58,8

name 4,3 "Sésame"
name 36,5 "The bed round the urn in the middle of it all"
