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
  emitter-rate 0.6 gal/h
  supply 900 L/h
  water july 40 mm

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
  water drip
  drip-row 200 mm
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
service water "Supply" existing
  note "In a service."
  depth 700 mm
  owner public
  line 0,3 4,3 4,0
  line 1,0 1,3 1,1
service gas "Gas" to-lay
service power "Lamp" existing
  owner private
service telecom "Wire" existing
service drain "Gully" existing
service other "Sleeve" to-lay
plant r "Rose"
  note "In a plant."
  spacing 900 mm
  spread 4 ft
  height 5 ft
  pattern square
  sun part-shade
  soil 400 mm
  pot 8 in
  plant-from october
  plant-until march
  price 12.5
  at 0,0
  at 3,2
  drift b front
  drift 1,0 whole
plant t "Thyme"
  drift e middle
  drift 3,2 back
levels 1 m
  0 mm, 10 mm, 1 in
  5 mm, 10 mm, 1 1/2 in
finish 4,3 40 mm
fall 1.5 % towards 92.25
house "House" 20 ft
  note "In a house."
  from -2,-12 to 4,-2
shade "Limes" 9 m
  note "In shade."
  from 5,-2 to 9,1
name 0,0 "Sage"
name 0,0 "Mint"
tie 0,0 "House corner" 3 m 50 cm
tie 4,3 "Oak" 4 m
keep "Old pear" 2 m
  note "In what is kept."
  at 4,3
keep "Wall"
  from 0,0 to 1,3
drop 0,3
tap 1,0
rate strip 0.01 h per sq-ft
rate dig 2.2 h per m3
rate post 1.5 h per each
rate load 0.04 h per cu-ft
rate tamp 0.1 h per m2
rate fabric 0.005 h per sq-ft
rate base 1 h per m3
rate fixture 2 h per each
rate block 0.05 h per each
rate cap 0.04 h per each
rate cut 0.1 h per each
rate backfill 1 h per m3
rate loosen 0.02 h per sq-ft
rate prepare 0.03 h per sq-ft
rate liner 0.05 h per ft
rate fill 1.25 h per m3
rate edging 0.1 h per m
rate surface 0.02 h per sq-ft
rate panel 0.5 h per each
rate gate 1 h per each
rate mulch 0.04 h per cu-ft
rate topsoil 1 h per m3
rate turf 0.01 h per sq-ft
rate seed 0.01 h per m2
extra "Batter boards" 24 each
extra "String" 100 ft
extra "Tape" 30 m
extra "Sheet" 60 sq-ft
extra "Net" 4.5 m2
extra "Lime" 1 cu-ft
extra "Grit" 0.1 m3
extra "Nails" 5 lb
extra "Screws" 1 kg
