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
dress-page-candy-board = Tafel, 3 kg
dress-page-slab = Fladen, 2 kg
dress-page-fondant = Futterteig, 2,5 kg
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
dress-page-slot = Schlitz 8 mm
dress-page-holes = Löcher 9 mm
dress-page-mesh = Gitter 6 mm
dress-page-floor = Boden
dress-page-open-mesh = offenes Gitter
dress-page-mesh-tray = Gitter mit Schieber
dress-page-foam-50 = 50 mm Schaum
dress-page-foam-25 = 25 mm Schaum
dress-page-hole-20 = 20 mm
dress-page-hole-25 = 25 mm
