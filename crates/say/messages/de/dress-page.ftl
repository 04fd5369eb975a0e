## Eine Beute, durch Antippen ausgestattet.

dress-page-assumed = wohl { $usual }
dress-page-none = ohne
dress-page-surely-none = sicher ohne
dress-page-solid = geschlossen
dress-page-reduced = eingeengt

dress-page-lid = Deckel
dress-page-usual-board = das übliche Brett
dress-page-straw = Stroh
dress-page-board = Zucker über den Bienen
dress-page-candy-board = Tafel, { MASS(3) }
dress-page-slab = Fladen, { MASS(2) }
dress-page-fondant = Futterteig, { MASS(2.5, digits: 1) }
dress-page-boxes = Zargen
dress-page-as-its-kind = wie bei der Art
dress-page-one-deep = eine große
dress-page-two-deep = zwei große
dress-page-wrap = Hülle
dress-page-felt = Dachpappe
dress-page-upper-hole = Oberes Flugloch
dress-page-entrance = Flugloch
dress-page-full = offen
dress-page-guard = Mäusegitter
dress-page-slot = Schlitz { LENGTH(0.008, us: 2) }
dress-page-holes = Löcher { LENGTH(0.009, us: 2) }
dress-page-mesh = Gitter { LENGTH(0.006, us: 2) }
dress-page-floor = Boden
dress-page-open-mesh = offenes Gitter
dress-page-mesh-tray = Gitter mit Schieber
dress-page-foam-50 = { LENGTH(0.05) } Schaum
dress-page-foam-25 = { LENGTH(0.025) } Schaum
dress-page-hole-20 = { LENGTH(0.02, us: 1) }
dress-page-hole-25 = { LENGTH(0.025) }
