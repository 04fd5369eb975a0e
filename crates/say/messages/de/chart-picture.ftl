## Schaubilder eines Winters.

chart-picture-day = Tag
chart-picture-days = Tage
chart-picture-what = Was
chart-picture-when = Wann
chart-picture-named = { $what }: { $says }.
chart-picture-range = { $low } bis { $high }

chart-picture-amount = { MASS($mass, unit: "no") }
chart-picture-fine-amount = { MASS($mass, digits: 1, unit: "no") }
chart-picture-unit = { MASS($mass, unit: "only") }
chart-picture-mass = { MASS($mass, digits: "few", us: 0) }
chart-picture-eight = 8 von 10
chart-picture-five = 5 von 10
chart-picture-middle = die Mitte
chart-picture-reserve = Rücklage für diesen Tag, { MASS($mass, digits: "few", us: 0) }
chart-picture-weighed = gewogen, mit Unsicherheit
chart-picture-nothing = Vom übrigen Futter ist nichts bekannt.
chart-picture-left = { $when }: in der Hälfte der Winter bleiben mehr als { MASS($middle, digits: "few", us: 0) }; in einem von zehn weniger als { MASS($low, digits: "few", us: 0) }, in einem von zehn mehr als { MASS($high, digits: "few", us: 0) }.
chart-picture-marks = Eine gestrichelte Linie zeigt: { $day }.
chart-picture-marks-reserve = Eine waagrechte Linie zeigt die Rücklage, { MASS($mass, digits: "few", us: 0) }.
chart-picture-tenth-below = 1 von 10 darunter
chart-picture-half = Mitte
chart-picture-tenth-above = 1 von 10 darüber
chart-picture-weighing = gewogen: { MASS($mass, digits: "few", us: 0) }, auf { MASS($error, digits: "few", us: 0) } genau

chart-picture-found = { $found } gefunden, { $stands }
chart-picture-expected = { $when }: { $found } gefunden, { $low } bis { $high } erwartet, { $stands }.
chart-picture-nine = 9 von 10 Malen
chart-picture-is-found = gefunden
chart-picture-head-found = Gefunden
chart-picture-head-expected = Erwartet
chart-picture-head-stands = Das ist

chart-picture-flying-weather = Flugwetter
chart-picture-head-cold = Kälte
chart-picture-head-wind = Wind in { HEIGHT(10) } Höhe
chart-picture-coldest = Am kältesten
chart-picture-warmest = Am wärmsten
chart-picture-head-flying = Flug
chart-picture-degrees = { TEMPERATURE($temperature, unit: "no") }°
chart-picture-temperature = { TEMPERATURE($temperature) }
chart-picture-flying = { $flying ->
    [yes] gutes Flugwetter
    [perhaps] einige Bienen fliegen vielleicht
   *[not] kein Flug
}
chart-picture-flying-short = { $flying ->
    [yes] gut
    [perhaps] kaum
   *[not] kein
}
chart-picture-cold = { $cold ->
    [mild] kein Frost
    [frost] Frost
   *[hard] strenge Kälte
}
chart-picture-cold-short = { $cold ->
    [mild] mild
    [frost] Frost
   *[hard] streng
}
chart-picture-wind = { $wind ->
    [calm] still
    [breezy] windig
   *[strong] starker Wind
}
chart-picture-wind-short = { $wind ->
    [calm] still
    [breezy] Wind
   *[strong] Sturm
}
chart-picture-blows = { $wind }, { SPEED($speed) }
chart-picture-outlook = { $day }: { $flying }, { $cold }, { $wind }.

chart-picture-of-hundred = { $hives } von 100 { $fare }
chart-picture-fewest = weniger als 1
chart-picture-most = mehr als 99
chart-picture-head-hundred = Von 100 Völkern
chart-picture-head-fare = Wie es ihnen geht

chart-picture-scale = { $name }, { $stands }: { $says }.
chart-picture-not-known = nicht bekannt
chart-picture-usual = üblich
chart-picture-with-error = der Wert, sein Fehler
chart-picture-head-figure = Wert
chart-picture-head-usual = Üblich
chart-picture-head-where = Steht

chart-picture-window = frühestens, üblich, spätestens
