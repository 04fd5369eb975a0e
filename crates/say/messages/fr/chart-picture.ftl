## Les graphiques d’un hiver.

chart-picture-day = Jour
chart-picture-days = Jours
chart-picture-what = Quoi
chart-picture-when = Quand
chart-picture-named = { $what } : { $says }.
chart-picture-range = { $low } à { $high }

chart-picture-amount = { MASS($mass, unit: "no") }
chart-picture-fine-amount = { MASS($mass, digits: 1, unit: "no") }
chart-picture-unit = { MASS($mass, unit: "only") }
chart-picture-mass = { MASS($mass, digits: "few", us: 0) }
chart-picture-eight = 8 sur 10
chart-picture-five = 5 sur 10
chart-picture-middle = le milieu
chart-picture-reserve = réserve à avoir ce jour-là, { MASS($mass, digits: "few", us: 0) }
chart-picture-weighed = pesée, avec sa marge
chart-picture-nothing = De la nourriture qui reste, rien n’est connu.
chart-picture-left = { $when } : la moitié des hivers laissent plus de { MASS($middle, digits: "few", us: 0) } ; un sur dix laisse moins de { MASS($low, digits: "few", us: 0) }, un sur dix plus de { MASS($high, digits: "few", us: 0) }.
chart-picture-marks = Une ligne en tirets marque : { $day }.
chart-picture-marks-reserve = Une ligne horizontale marque la réserve, { MASS($mass, digits: "few", us: 0) }.
chart-picture-tenth-below = 1 sur 10 dessous
chart-picture-half = Milieu
chart-picture-tenth-above = 1 sur 10 dessus
chart-picture-weighing = pesée : { MASS($mass, digits: "few", us: 0) }, à { MASS($error, digits: "few", us: 0) } près

chart-picture-found = { $found } trouvées, { $stands }
chart-picture-expected = { $when } : { $found } trouvées, { $low } à { $high } attendues, { $stands }.
chart-picture-nine = 9 fois sur 10
chart-picture-is-found = trouvées
chart-picture-head-found = Trouvées
chart-picture-head-expected = Attendues
chart-picture-head-stands = C’est-à-dire

chart-picture-flying-weather = Temps de vol
chart-picture-head-cold = Froid
chart-picture-head-wind = Vent à { HEIGHT(10) } de haut
chart-picture-coldest = Le plus froid
chart-picture-warmest = Le plus chaud
chart-picture-head-flying = Vol
chart-picture-degrees = { TEMPERATURE($temperature, unit: "no") }°
chart-picture-temperature = { TEMPERATURE($temperature) }
chart-picture-flying = { $flying ->
    [yes] bon temps de vol
    [perhaps] quelques abeilles volent peut-être
   *[not] pas de vol
}
chart-picture-flying-short = { $flying ->
    [yes] bon
    [perhaps] peu
   *[not] non
}
chart-picture-cold = { $cold ->
    [mild] pas de gel
    [frost] gel
   *[hard] grand froid
}
chart-picture-cold-short = { $cold ->
    [mild] doux
    [frost] gel
   *[hard] rude
}
chart-picture-wind = { $wind ->
    [calm] calme
    [breezy] du vent
   *[strong] vent fort
}
chart-picture-wind-short = { $wind ->
    [calm] nul
    [breezy] vent
   *[strong] fort
}
chart-picture-blows = { $wind }, { SPEED($speed) }
chart-picture-outlook = { $day } : { $flying }, { $cold }, { $wind }.

chart-picture-of-hundred = { $hives } sur 100 { $fare }
chart-picture-fewest = moins de 1
chart-picture-most = plus de 99
chart-picture-head-hundred = Sur 100 ruches
chart-picture-head-fare = Leur sort

chart-picture-scale = { $name }, { $stands } : { $says }.
chart-picture-not-known = non connu
chart-picture-usual = usuel
chart-picture-with-error = la valeur, sa marge
chart-picture-head-figure = Valeur
chart-picture-head-usual = Usuel
chart-picture-head-where = Place

chart-picture-window = au plus tôt, usuel, au plus tard
