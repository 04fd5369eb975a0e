## La page « Équipement d’hiver » : une ruche habillée autrement, côte à côte.

setup-page-heading = Équipement d’hiver
setup-page-lede = Qu’est-ce qui changerait si { $hive } était habillée autrement ?

setup-page-chance = Pas de vraie différence : ce qu’il y en a peut être le hasard.
setup-page-hardly = Pas de vraie différence : moins de { NUMBER($least) } ruches sur 100.
setup-page-difference = Environ { NUMBER($hives) } ruches sur 100 { $is-better ->
    [yes] de plus
   *[no] de moins
} arrivent au printemps en vie, nourries et avec reine ({ $is-sharp ->
    [yes] ± moins de 1
   *[no] ± { NUMBER($error) }
}).
setup-page-beside = Côte à côte
setup-page-caption = { $hive } du { DAY($from) } au printemps, sous le même temps
setup-page-alive = Vivantes au printemps, sur 100
setup-page-food = Nourriture mangée jusqu’au printemps
setup-page-heat = Perte de chaleur au mois le plus froid
setup-page-lid-water = Eau sur le couvercle, par jour
setup-page-wall-water = Eau sur les parois, par jour
setup-page-floor-water = Eau sur le plancher, par jour
setup-page-drip = Eau gouttant sur la grappe, par jour
setup-page-price = Prix
setup-page-whole = { NUMBER($number) }
setup-page-eaten = { MASS($food, digits: 1, us: 0) }
setup-page-loss = { LOSS($loss, digits: 2) }
setup-page-water = { GRAMS($water, us: 1) }
setup-page-money = { NUMBER($price) } { $currency }
setup-page-from-count = À partir du jour où les colonies ont été comptées, telles qu’elles étaient alors ; les notes depuis ne comptent pas ici.
setup-page-who = Qui le dit ?

setup-page-hive = Ruche
setup-page-as-it-is = telle quelle
setup-page-words = À côté, en mots libres
setup-page-compare = Comparer
setup-page-seconds = Cela prend quelques secondes : des hivers entiers sont calculés, chacun sous le même temps.

setup-page-lid = Couvercle
setup-page-foam-thin = mousse de { LENGTH(0.025) }
setup-page-foam-thick = mousse de { LENGTH(0.05) }
setup-page-straw = coussin de paille
setup-page-bare = planche nue
setup-page-wrap = Emballage
setup-page-felt = feutre bitumé
setup-page-no-wrap = aucun
setup-page-hole = Trou supérieur
setup-page-hole-small = { LENGTH(0.02, us: 1) }
setup-page-hole-large = { LENGTH(0.025) }
setup-page-hole-shut = fermé
setup-page-floor = Plancher
setup-page-floor-solid = plein
setup-page-floor-mesh = grillage ouvert
setup-page-floor-tray = grillage avec tiroir
setup-page-entrance = Entrée
setup-page-entrance-reduced = réduite
setup-page-entrance-full = entière
setup-page-entrance-shut = fermée
setup-page-boxes = Corps
setup-page-one-deep = un corps
setup-page-two-deep = deux corps

setup-page-wrong = { $change } : { $wrong }
setup-page-too-many = Au plus { NUMBER($most) } équipements se comparent à la fois.
setup-page-no-hive = La colonie n’a pas de ruche.
setup-page-too-many-changes = Trop de changements pour une ruche.
