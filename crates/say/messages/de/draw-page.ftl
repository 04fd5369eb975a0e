## Wörter der Bilder.

draw-page-every-part = Jedes Teil
draw-page-to-scale = Maßstäblich nach der Standdatei. Wo Traube und Futter sind, ist gerechnet, nicht gesehen; Temperaturen wie ohne Brut.

draw-page-of-hundred = Von 100 solchen Völkern, bis zum { $goal }
draw-page-lives = leben, mit Futter und Königin
draw-page-hungry = leben und hungern
draw-page-queenless = leben und haben keine Königin
draw-page-starved = starben am Hunger
draw-page-lost = starben anders

draw-page-days = Die kommenden Tage
draw-page-weekday = { DAY($on, style: "short-weekday") }
draw-page-day = { DAY($on, style: "weekday") } { DAY($on) }

draw-page-food = Futter in Reichweite bei { $hive }
draw-page-flow = erste Tracht, am ehesten { DAY($on) }
draw-page-feed-by = füttern bis { DAY($on) }
draw-page-month = { DAY($on, style: "short-month") }

draw-page-dead-found = Gefundene tote Bienen bei { $hive }
draw-page-counted = { DAY($since, style: "short") } bis { DAY($until, style: "short") }

draw-page-entrance = Flugloch
draw-page-upper-hole = oberes Flugloch
draw-page-mesh = Gitterboden
draw-page-joints = Fugen
draw-page-seen-dead = vom Imker tot gesehen
draw-page-shut = am { DAY($on) } als { $state } notiert
draw-page-left = { MASS($left, digits: 1) } von { MASS($whole, digits: 1) } übrig{ $state ->
    [reached] , erreicht
    [not-reached] , nicht erreicht
   *[not-said] {""}
}
draw-page-body = { CAPITAL($body) }{ $pollen ->
    [yes] {" "}mit Pollen
   *[no] {""}
}
draw-page-material = { $material ->
    [pine] Kiefer
    [cedar] Zeder
    [larch] Lärche
    [plywood] Sperrholz
    [osb] OSB
    [hardboard] Hartfaserplatte
    [polystyrene] Styropor
    [eps-foam] EPS-Schaum
    [xps-foam] XPS-Schaum
    [polyiso-foam] PIR-Schaum
    [mineral-wool] Mineralwolle
    [straw] Stroh
    [hay] Heu
    [wood-shavings] Hobelspäne
    [wool] Wolle
    [wood-fibre-board] Holzfaserplatte
    [cork] Kork
    [felt-paper] Dachpappe
    [bubble-foil] Luftpolsterfolie
    [corrugated-plastic] Hohlkammerplatte
    [plastic-sheet] Folie
    [canvas] Segeltuch
    [newspaper] Zeitungspapier
    [steel-sheet] Stahlblech
    [aluminium-sheet] Alublech
   *[own] { $name }
}
