parterre-plot 1
units metric
cell 300 mm

ground 3 x 2
  ...
  ...

fence "Twice"
  run 0,0 3,0 1,0
  gate 0,0 1,0
