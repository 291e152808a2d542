parterre-plot 2
ground 1 x 1
 .
