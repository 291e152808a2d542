parterre-plot 1
title "Ring bed round an urn"
note "Invented scenario."
units metric
cell 300 mm
mirror half-turn
prices "prices-metric.json"
allow
  note "The saw in the shed cuts 4 mm wide."
  kerf 4 mm
  fit 3 mm
  shortest 80 mm
  breakage 7.5 %

bed r "Ring"
  block 300 mm x 150 mm x 150 mm
  density 2000 kg/m3
  courses 2
  cap 300 mm x 150 mm x 50 mm
  inside filled
  mix topsoil 3, compost 1
bed h "Herbs at ground level"
  build level
  amend 60 mm
path p "Crushed stone"
  surface 40 mm
lawn l "Sown grass"
  cover seed
fixture U "Urn"
  height 1200 mm

ground 16 x 16
  ................
  .hhpppppppppppp.
  .hhpppppppppppp.
  .pprrrrrrrrrrpp.
  .pprrrrrrrrrrpp.
  .pprrrrrrrrrrpp.
  .pprrrllllrrrpp.
  .pprrrlUUlrrrpp.
  .pprrrlUUlrrrpp.
  .pprrrllllrrrpp.
  .pprrrrrrrrrrpp.
  .pprrrrrrrrrrpp.
  .pprrrrrrrrrrpp.
  .pppppppppppphh.
  .pppppppppppphh.
  ................

fence "Hurdles"
  note "Sections as the coppice sells them."
  height 900 mm
  section 1800 mm
  post 80 mm
  run 0,0 16,0 16,16 0,16 0,0
  gate 6,0 10,0
  gate 6,16 10,16
