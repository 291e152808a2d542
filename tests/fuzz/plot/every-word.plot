parterre-plot 1
title "\"Every\" word \\ of the format"
note "Invented."
note "Two notes."
units metric
cell 333 mm
north 12.5
site -41.25
mirror half-turn
axis 3,2
allow
  kerf 3 mm
  fit 1/8 in
  shortest 7.5 cm
  inside 0.2 m
  breakage 5.5%
  settlement 15%
  beads 2
  cartridge 30 ft

bed b "Bed ²"
  note "In a block."
  build raised
  block 400 mm x 200 mm x 150 mm
  density 2150 kg/m3
  courses 3
  cap none
  embed 40 mm
  inside filled
  base 100 mm
  freeboard 1 1/2 in
  mulch 2 in
  mix topsoil 1, sharp-sand 0.5
bed e "Level"
  build level
  cap 16 in x 8 in x 2 in
  prepare 8 in
  amend 2 in
  replace yes
path p "Path"
  base 4 in
  surface 40 mm
lawn l "Lawn"
  cover seed
  topsoil 2 in
fixture S "Stone"
  height 1 ft 6 in
  base 0 mm

ground 4 x 3
  bb.e
  pplS
  ....

fence "Hurdles"
  note "In a fence."
  height 900 mm
  section 1800 mm
  post 80 mm
  gap 50 mm
  rails 3
  depth 600 mm
  hole 250 mm
  gravel 150 mm
  inset 0 mm
  clearance 30 mm
  leaf 1 m
  run 0,0 4,0 4,3 0,3 0,0
  run 2,0 2,3
  gate 1,0 2,0
  gate 2,2 2,1
fence "Another"
