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
dress-page-candy-board = plaque, { MASS(3) }
dress-page-slab = pain, { MASS(2) }
dress-page-fondant = candi, { MASS(2.5, digits: 1) }
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
dress-page-slot = fente { LENGTH(0.008, us: 2) }
dress-page-holes = trous { LENGTH(0.009, us: 2) }
dress-page-mesh = maille { LENGTH(0.006, us: 2) }
dress-page-floor = Plancher
dress-page-open-mesh = grillage ouvert
dress-page-mesh-tray = grillage avec tiroir
dress-page-foam-50 = mousse { LENGTH(0.05) }
dress-page-foam-25 = mousse { LENGTH(0.025) }
dress-page-hole-20 = { LENGTH(0.02, us: 1) }
dress-page-hole-25 = { LENGTH(0.025) }
