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
dress-page-candy-board = board of 3 kg
dress-page-slab = slab of 2 kg
dress-page-fondant = fondant, 2.5 kg
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
dress-page-slot = slot of 8 mm
dress-page-holes = holes of 9 mm
dress-page-mesh = mesh of 6 mm
dress-page-floor = { CAPITAL(-floor) }
dress-page-open-mesh = open mesh
dress-page-mesh-tray = mesh with tray
dress-page-foam-50 = 50 mm foam
dress-page-foam-25 = 25 mm foam
dress-page-hole-20 = 20 mm
dress-page-hole-25 = 25 mm
