parterre-plot 1
title "Beds of all outlines"
note "Invented scenario: as many sides and holes as are told one by one, and more."
units imperial
cell 2 ft
allow
  held top
  pickup-weight 900 lb
  crew 3

bed a "Ring"
  build level
bed b "Hollow"
  build level
  replace yes
bed c "Walled ring"
  courses 2
path p "Stepping sand"
  stone clean
  fabric no
  edging yes
lawn l "Seed"
  cover none
fixture U "Urn"
  height 5 ft

ground 32 x 19
  aaaaaaaaaaaaaaa.aaaaaaaaaaaaaaaa
  a.aaaa..aaaaaaa.a..aa.aa.aaaaaa.
  aaaaaa.aaaaaaaa.a..aa.aaaa.aaaaa
  aaaaaaaaaaaaaaa.aaaaaaaaaaaaaaaa
  ................................
  bbbbb.bbbbb.b.......ccccccccccc.
  b...b.b...b.bb......ccccccccccc.
  bbbbb.b...b.bbb.....cc.......cc.
  ......b...b.bbbb....cc.lllll.cc.
  bb..................cc.lllll.cc.
  bb..................cc.......cc.
  bb..................ccccccccccc.
  ....................ccccccccccc.
  pppppppppppppppppppp............
  ..............U..pp.............
  llll..pp........Upp.....p.......
  llll..pp........................
  llll..pp...pppp.................
  ......pp...pppp.................

fence "Rail"
  section 5 ft
  run 0,0 0,4
  run 2,13 4,13
  gate 0,1 0,3
