## Des équipements côte à côte, dans le terminal.

setup-terminal-title = { $hive } : équipements d’hiver sous le même temps

setup-terminal-alive = vivent
setup-terminal-food = vivres
setup-terminal-water = eau, { $ounces ->
    [yes] oz
   *[no] g
}/jour
setup-terminal-heat = { $british-thermal ->
    [yes] Btu/h
   *[no] W/K
}
setup-terminal-price = prix
setup-terminal-gain = gain
setup-terminal-of-hundred = /100
setup-terminal-unit = { $pounds ->
    [yes] lb
   *[no] kg
}
setup-terminal-faces = haut/côtés/bas

setup-terminal-number = { NUMBER($number) }
setup-terminal-tenths = { NUMBER($number, digits: 1) }
setup-terminal-loss = { LOSS($loss, digits: 2, unit: "no") }
setup-terminal-stores = { MASS($stores, digits: 1, unit: "no") }
setup-terminal-caught = { GRAMS($lid, unit: "no", us: 2) }/{ GRAMS($walls, unit: "no", us: 2) }/{ GRAMS($base, unit: "no", us: 2) }

setup-terminal-margin = { $more ->
    [yes] +
   *[no] {""}
}{ NUMBER($hives, digits: 1) } ± { NUMBER($plus-minus, digits: 1) } ruches sur 100
setup-terminal-chance = pas de vraie différence : ce qu’il y en a peut être le hasard ({ $margin })
setup-terminal-hardly = pas de vraie différence : moins de { NUMBER($least) } ruches sur 100 ({ $margin })
setup-terminal-better = mieux : { $margin } en vie, nourries et avec reine
setup-terminal-worse = moins bien : { $margin } en vie, nourries et avec reine

setup-terminal-no-change = --try "" : ne dit aucun changement ; en écrire un, par exemple "lid=50 mm foam"
