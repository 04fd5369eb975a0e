## Der Winter erzählt, als Film.

film-picture-then = { $when }:
film-picture-air = { TEMPERATURE($air) }
film-picture-length = { LENGTH($length, us: "few") }
film-picture-mass = { MASS($mass, digits: 1) }
film-picture-bare-mass = { MASS($mass, digits: 1, unit: "no") }
film-picture-end-of-scale = { MASS($mass) }
film-picture-outdoors = { $low } bis { $high }, Schnee { $snow }
film-picture-ahead = { $outdoors } (voraus: was kommen kann)
film-picture-dead = tot
film-picture-alive = { $hives } von 100 solchen leben
film-picture-food = Futter { $amounts }
film-picture-amounts = { $food } ({ $low } bis { $high })
film-picture-unknown = unbekannt
film-picture-inside = { LIST($parts, between: "; ") }
film-picture-cluster = Traube { $across } breit, Kern { $core }
film-picture-water = { GRAMS($water, us: 2) }
film-picture-wet = Deckel und Wände fangen { $water } Wasser am Tag{ $is-frosted ->
    [yes] , Reif am Flugloch
   *[no] {""}
}

film-picture-cut-open = { $hive }, aufgeschnitten
film-picture-bees = Bienen
film-picture-comb-food = Futter
film-picture-chart = Futter bei { $hive } über den Winter: im Herbst vorhergesagt, und wie es stand
film-picture-chart-key = Futter: grau vorhergesagt (8 von 10), Linie wie es stand, gelb was kommen kann; Spitze: eine Notiz
film-picture-note = { $when }: { $note }. { $moved }.
film-picture-foretold-and-came = Vorhergesagt, und was kam

film-picture-by-months = { $hive } nach Monaten
film-picture-head-day = Tag
film-picture-head-outdoors = Draußen
film-picture-head-alive = Am Leben
film-picture-head-food = Futter
film-picture-head-foretold = Vorhergesagt
film-picture-head-inside = Drinnen
film-picture-range = { $low } bis { $high }

film-picture-play = Abspielen
film-picture-stop = Halt
film-picture-week = Eine Woche weiter
film-picture-slider = Tag des Winters
film-picture-guess = Erst raten
film-picture-ask = Der Winter läuft bis zu seiner Mitte. Was wird am { $today } vom Futter übrig sein, gemessen an der Vorhersage vom Herbst?
film-picture-less = weniger
film-picture-as-foretold = wie vorhergesagt
film-picture-more = mehr
film-picture-show = Zeigen, was kam
film-picture-score = Richtig geraten: { $right } von { $asked }. Was kam, steht unten.
