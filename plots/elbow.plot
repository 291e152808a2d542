parterre-plot 1
title "Elbow bed at Tanner's Steps"
note "Invented scenario."
units metric
cell 400 mm

bed b "Kitchen bed"
  block 400 mm x 200 mm x 150 mm
  density 2150 kg/m3
  courses 3
  embed 50 mm
  base 100 mm
  freeboard 40 mm
  mulch 50 mm
  mix topsoil 1, compost 1
path p "Crushed stone"
  base 100 mm
  surface 40 mm

ground 17 x 15
  .................
  .ppppppppppppppp.
  .ppppppppppppppp.
  .ppppppppppppppp.
  .pppbbbbbbbbbppp.
  .pppbbbbbbbbbppp.
  .pppbbbbbbbbbppp.
  .pppbbbppppppppp.
  .pppbbbppppppppp.
  .pppbbbppppppppp.
  .pppbbbppppppppp.
  .ppppppppppppppp.
  .ppppppppppppppp.
  .ppppppppppppppp.
  .................
