## Une ruche habillée du bout du doigt.

dress-page-assumed = { $usual }, supposé
dress-page-none = aucun
dress-page-surely-none = sûrement aucun
dress-page-solid = plein
dress-page-reduced = réduite

dress-page-lid = Couvercle
dress-page-usual-board = sa planche habituelle
dress-page-straw = paille
dress-page-board = Sucre au-dessus des abeilles
dress-page-candy-board = plaque, 3 kg
dress-page-slab = pain, 2 kg
dress-page-fondant = candi, 2,5 kg
dress-page-boxes = Corps
dress-page-as-its-kind = comme son modèle
dress-page-one-deep = un corps
dress-page-two-deep = deux corps
dress-page-wrap = Emballage
dress-page-felt = feutre bitumé
dress-page-upper-hole = Trou supérieur
dress-page-entrance = Entrée
dress-page-full = entière
dress-page-guard = Grille à souris
dress-page-slot = fente 8 mm
dress-page-holes = trous 9 mm
dress-page-mesh = maille 6 mm
dress-page-floor = Plancher
dress-page-open-mesh = grillage ouvert
dress-page-mesh-tray = grillage avec tiroir
dress-page-foam-50 = mousse 50 mm
dress-page-foam-25 = mousse 25 mm
dress-page-hole-20 = 20 mm
dress-page-hole-25 = 25 mm
