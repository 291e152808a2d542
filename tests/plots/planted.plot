parterre-plot 1
title "Kitchen court, an invented house"
note "An invented scenario: no such garden is known."
units imperial
cell 1 ft
north 0
site 42
mirror left-right
bed b "Raised bed"
  build raised
bed e "Border along the fence"
  build level
path p "Path"
ground 17 x 12
  .................
  .eeeeeeeeeeeeeee.
  .eeeeeeeeeeeeeee.
  .eeeeeeeeeeeeeee.
  .ppppppppppppppp.
  .pbbbbbbpbbbbbbp.
  .pbbbbbbpbbbbbbp.
  .pbbbbbbpbbbbbbp.
  .pbbbbbbpbbbbbbp.
  .ppppppppppppppp.
  .................
  .................
plant r "Shrub rose"
  spacing 3 ft
  height 4 ft
  sun full
  soil 18 in
  pot 8 in
  plant-from march
  plant-until may
  at 4,6
  at 12,6
plant t "Thyme"
  spacing 6 in
  height 6 in
  pot 4 in
  drift b front
plant l "Lavender"
  spacing 15 in
  height 24 in
  pot 6 in
  plant-from april
  plant-until june
  drift e front
plant y "Yew"
  spacing 30 in
  spread 24 in
  height 5 ft
  sun shade
  pot 10 in
  plant-from october
  plant-until march
  drift e back
plant w "Willow, weeping"
  spread 10 ft
  at 16,11
