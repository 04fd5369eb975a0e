## Die aufgeschnittene Beute und ihr kleines Zeichen.

hive-picture-title = { $hive }{ $is-dead ->
    [yes] , tot
   *[no] {""}
}, Beute von vorn aufgeschnitten
hive-picture-outside = Außen { TEMPERATURE($air) }
hive-picture-wind = Wind { SPEED($wind) } am Stand
hive-picture-boxes = { $boxes ->
    [one] Eine Zarge, maßstäblich gezeichnet.
   *[other] { NUMBER($boxes) } Zargen, maßstäblich gezeichnet.
}
hive-picture-nobody = Keine Bienen leben darin.
hive-picture-living = Eine lebende Traube von etwa { $bees } Bienen.
hive-picture-is-dead = Das Volk ist tot; der gestrichelte Kreis zeigt, wo die Traube war.
hive-picture-part = { $heading }: { $says }
hive-picture-weather-told = { LIST($parts) }.
hive-picture-parts = { LIST($parts, between: "; ") }.
hive-picture-alive-small = Lebt, etwa { $bees } Bienen.
hive-picture-dead-small = Tot.
hive-picture-empty-small = Keine Bienen.

hive-picture-head-part = Teil
hive-picture-head-known = Was bekannt ist
hive-picture-weather = Wetter

hive-picture-snow-on-roof = Schnee auf dem Deckel
hive-picture-snow-round = Schnee ringsum
hive-picture-roof = Deckel
hive-picture-lid = Über den Bienen
hive-picture-rim = Rahmen über den Waben
hive-picture-walls = Wände
hive-picture-wrap = Hülle
hive-picture-warm-zone = Warmer Bereich
hive-picture-cold-zone = Kalter Bereich
hive-picture-under-lid = Innendeckel, unten
hive-picture-inner-wall = Wand innen
hive-picture-floor-above = Boden, oben
hive-picture-dead = Totes Volk
hive-picture-cluster = Traube
hive-picture-floor = Boden
hive-picture-dead-on-floor = Tote Bienen am Boden
hive-picture-heading = { CAPITAL($words) }

hive-picture-touched = Futter, berührt
hive-picture-in-reach = Futter in Reichweite
hive-picture-out-of-reach = Futter außer Reichweite
hive-picture-empty-comb = leere Wabe
hive-picture-bees = lebende Bienen
hive-picture-core = warmer Kern
hive-picture-dead-bees = tote Bienen
hive-picture-snow = Schnee

hive-picture-list = { LIST($parts) }
hive-picture-length = { LENGTH($length, us: "few") }
hive-picture-scale = { LENGTH($length) }
hive-picture-over-ground = { LENGTH($depth, us: "few") } über dem Erdboden
hive-picture-sheet = { $material } { LENGTH($thickness, us: "few") }
hive-picture-temperature = { TEMPERATURE($temperature) }
hive-picture-wet = { $is-frost ->
    [yes] bereift
   *[no] nass
}, { GRAMS($water, digits: "few", us: 2) } am Tag
hive-picture-size = etwa { $bees } Bienen, Mantel { TEMPERATURE($mantle) }
hive-picture-mass = { MASS($mass, digits: "few", us: 0) }
hive-picture-all-open = { AREA($area, digits: "few") }, ganz offen
hive-picture-open = { AREA($area, digits: "few") } offen, { NUMBER($percent) } % davon
hive-picture-air-unknown = Luft nicht bekannt
hive-picture-air-stands = Luft steht
hive-picture-air-in = Luft hinein { FLOW($flow, digits: 2) }
hive-picture-air-out = Luft hinaus { FLOW($flow, digits: 2) }
hive-picture-snow-before = Schnee davor
hive-picture-solid = geschlossen
hive-picture-mesh = Gitter, unten offen
hive-picture-tray = Gitter, Schieber drin
hive-picture-stand = { LENGTH($stand, us: "few") } über dem Erdboden
hive-picture-about = etwa { $count }
