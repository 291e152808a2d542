parterre-plot 1
title "Cooper's Yard: <beds> & \"borders\""
note "Invented scenario."
units imperial
cell 1 ft
north 30
mirror left-right

bed b "Raised bed"
  block 1 ft x 8 in x 4 in
  courses 4
bed c "Capped bed"
  block 16 in x 8 in x 6 in
  courses 3
  cap 2 ft x 8 in x 2 in
bed h "Herbs at ground level"
  build level
path p "Crushed stone"
lawn l "Turf"
fixture S "Sundial"
  height 3 ft

ground 24 x 18
  ........................
  ..bbbbpppppppppppppbbbb.
  ..bbbbpppppppppppppbbbb.
  ..bbbbppppccccccpppbbbb.
  ..bbbbppppccccccpppbbbb.
  .pppppppppccccccppppppp.
  .pppppppppcccccccccpppp.
  .pppppppppcccccccccpppp.
  .llllllSSlcccccccccllll.
  .llllllSSlllllllllllhhl.
  .lllllllllllllllllllhhl.
  .lllllllllllllllllhllll.
  .lllhhhhhhhlllllllhhlll.
  .lllhhhhhhhlllllllllhll.
  .lllhhhhhhhlllllllllhll.
  .lllllllllllllllllllhll.
  ........................
  ........................

fence "Pickets"
  run 0,0 0,18 24,18 24,0
  gate 10,18 14,18
fence "Boards"
  run 3,0 21,0

service water "Supply to the basin" existing
  depth 30 in
  owner private
  line 0,9 7,9 7,8
service power "Light at the sundial" to-lay
  depth 18 in
  line 24,10 9,10
levels 8 ft
  0 in, 1 in, 2 1/2 in, 3 in
  1 in, 1 in, 3 in, 3 in
  1 in, 2 in, 3 in, 4 in
  1 in, 2 in, 3 in, 4 1/4 in
finish 12,17 1 in
fall 1.5 % away
house "Number 4"
  from -2,-12 to 14,-2
name 2,1 "Thyme bed"
tie 0,0 "House corner, north" 12 ft 4 in
tie 0,0 "Gate pier" 20 ft 6 in
keep "Old pear" 2 ft
  at 15,13
keep "Garden wall"
  from -1,0 to 0,8
drop 0,17
