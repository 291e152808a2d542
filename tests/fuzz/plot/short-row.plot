parterre-plot 1
units imperial
cell 1 ft
ground 3 x 2
  ...
  ..
