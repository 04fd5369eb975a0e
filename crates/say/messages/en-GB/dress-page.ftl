## A hive dressed by taps.

dress-page-assumed = { $usual }, assumed
dress-page-none = none
dress-page-surely-none = surely none
dress-page-solid = solid
dress-page-reduced = reduced

dress-page-lid = Lid
dress-page-usual-board = its usual board
dress-page-straw = straw
dress-page-board = Candy over the bees
dress-page-candy-board = board of { MASS(3) }
dress-page-slab = slab of { MASS(2) }
dress-page-fondant = fondant, { MASS(2.5, digits: 1) }
dress-page-boxes = Boxes
dress-page-as-its-kind = as its kind winters
dress-page-one-deep = one deep
dress-page-two-deep = two deep
dress-page-wrap = Wrap
dress-page-felt = felt paper
dress-page-upper-hole = Upper hole
dress-page-entrance = Entrance
dress-page-full = full
dress-page-guard = Mouse guard
dress-page-slot = slot of { LENGTH(0.008, us: 2) }
dress-page-holes = holes of { LENGTH(0.009, us: 2) }
dress-page-mesh = mesh of { LENGTH(0.006, us: 2) }
dress-page-floor = { CAPITAL(-floor) }
dress-page-open-mesh = open mesh
dress-page-mesh-tray = mesh with tray
dress-page-foam-50 = { LENGTH(0.05) } foam
dress-page-foam-25 = { LENGTH(0.025) } foam
dress-page-hole-20 = { LENGTH(0.02, us: 1) }
dress-page-hole-25 = { LENGTH(0.025) }
