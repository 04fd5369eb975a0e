## La ruche coupée, et son petit signe.

hive-picture-title = { $hive }{ $is-dead ->
    [yes] , morte
   *[no] {""}
}, ruche coupée, vue de devant
hive-picture-outside = Dehors { TEMPERATURE($air) }
hive-picture-wind = vent { SPEED($wind) } à la ruche
hive-picture-boxes = { $boxes ->
    [one] { NUMBER($boxes) } corps, dessiné à l’échelle.
   *[other] { NUMBER($boxes) } corps, dessinés à l’échelle.
}
hive-picture-nobody = Aucune abeille n’y vit.
hive-picture-living = Une grappe vivante d’environ { $bees } abeilles.
hive-picture-is-dead = La colonie est morte ; le cercle en tirets montre où était la grappe.
hive-picture-part = { $heading } : { $says }
hive-picture-weather-told = { LIST($parts) }.
hive-picture-parts = { LIST($parts, between: " ; ") }.
hive-picture-alive-small = En vie, environ { $bees } abeilles.
hive-picture-dead-small = Morte.
hive-picture-empty-small = Pas d’abeilles.

hive-picture-head-part = Partie
hive-picture-head-known = Ce qu’on en sait
hive-picture-weather = Météo

hive-picture-snow-on-roof = Neige sur le toit
hive-picture-snow-round = Neige autour
hive-picture-roof = Toit
hive-picture-lid = Sur les abeilles
hive-picture-rim = Rehausse sur les cadres
hive-picture-walls = Parois
hive-picture-wrap = Emballage
hive-picture-warm-zone = Zone chaude
hive-picture-cold-zone = Zone froide
hive-picture-under-lid = Sous le couvre-cadres
hive-picture-inner-wall = Paroi, dedans
hive-picture-floor-above = Plancher, dessus
hive-picture-dead = Colonie morte
hive-picture-cluster = Grappe
hive-picture-floor = Plancher
hive-picture-dead-on-floor = Mortes sur le plancher
hive-picture-heading = { CAPITAL($words) }

hive-picture-touched = nourriture touchée
hive-picture-in-reach = nourriture à portée
hive-picture-out-of-reach = nourriture hors de portée
hive-picture-empty-comb = rayon vide
hive-picture-bees = abeilles vivantes
hive-picture-core = cœur chaud
hive-picture-dead-bees = abeilles mortes
hive-picture-snow = neige

hive-picture-list = { LIST($parts) }
hive-picture-length = { LENGTH($length, us: "few") }
hive-picture-scale = { LENGTH($length) }
hive-picture-over-ground = { LENGTH($depth, us: "few") } au-dessus du sol
hive-picture-sheet = { $material } { LENGTH($thickness, us: "few") }
hive-picture-temperature = { TEMPERATURE($temperature) }
hive-picture-wet = { $is-frost ->
    [yes] givre
   *[no] humide
}, { GRAMS($water, digits: "few", us: 2) } par jour
hive-picture-size = environ { $bees } abeilles, manteau { TEMPERATURE($mantle) }
hive-picture-mass = { MASS($mass, digits: "few", us: 0) }
hive-picture-all-open = { AREA($area, digits: "few") }, ouvert en entier
hive-picture-open = { AREA($area, digits: "few") } ouverts, soit { NUMBER($percent) } %
hive-picture-air-unknown = air inconnu
hive-picture-air-stands = air immobile
hive-picture-air-in = l’air entre { FLOW($flow, digits: 2) }
hive-picture-air-out = l’air sort { FLOW($flow, digits: 2) }
hive-picture-snow-before = neige devant
hive-picture-solid = plein
hive-picture-mesh = grillage, ouvert dessous
hive-picture-tray = grillage, tiroir en place
hive-picture-stand = à { LENGTH($stand, us: "few") } du sol
hive-picture-about = environ { $count }
