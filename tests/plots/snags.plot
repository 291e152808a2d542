parterre-plot 1
title "Everything that can go wrong with walls and fill"
note "Invented scenario: each bed shows a snag."
units imperial
cell 1 ft
mirror left-right

bed a "Too narrow for its block"
bed b "High, hardly embedded"
  courses 12
  embed 1 in
bed c "No room for soil"
  courses 1
  freeboard 4 in
  mulch 3 in
bed d "Cap deeper than half the bed"
  block 16 in x 6 in x 6 in
  cap 18 in x 18 in x 2 in
bed e "Thin inside"
  block 1 ft x 6 in x 6 in
bed f "Step too short for its block"
  block 4 ft x 6 in x 6 in
path p "Crushed stone"

ground 24 x 14
  ........................
  .aaaaaaaaaa..bbbbbbbbbb.
  .............bbbbbbbbbb.
  .............bbbbbbbbbb.
  .ccccccc..p..bbbbbbbbbb.
  .ccccccc..p.............
  .ccccccc..p..ddddddddd..
  .ccccccc..p..ddddddddd..
  ..........p..ddddddddd..
  .fffff....p.............
  .ffffff...p...eee.......
  .ffffff...p...eeeeee....
  .ffffff...p......eee....
  ........................
