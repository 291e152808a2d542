parterre-plot 1
units imperial

cell 1 ft 
bed	b	"A"
ground 2 x 1
	b.