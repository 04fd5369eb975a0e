## Verluste und Lehren: was in einem Winter aus jedem Volk wurde, was im nächsten Herbst zu tun ist.

lessons-alive = lebt
lessons-weak = lebt, aber schwach
lessons-queen-failed = Königin ausgefallen
lessons-dead = tot
lessons-disaster = durch ein Unglück verloren
lessons-sold = verkauft
lessons-united = mit einem anderen vereinigt
lessons-not-told = noch nicht gemeldet

lessons-line = { LIST($parts, between: "; ") }
lessons-not-told-seen = noch nicht gemeldet; zuletzt lebend gesehen am { DAY($on) }
lessons-noted = { $fate }, notiert am { DAY($on) }
lessons-not-examined = nicht untersucht
lessons-first-sign = erstes Zeichen: { $what }, { DAY($on) }
lessons-now = jetzt: { $next }
lessons-next-autumn = nächsten Herbst: { $next }

lessons-kept-foulbrood = Anzeichen von Faulbrut: nichts bewegen, Amtstierarzt oder Behörde benachrichtigen
lessons-kept-likeliest = am wahrscheinlichsten { $cause }, { NUMBER($hives) } von 100 solchen Völkern
lessons-kept-no-cause = keine Ursache ist festgehalten

lessons-trouble-mites = { NUMBER($mites) } { $mites ->
    [one] Milbe
   *[other] Milben
} auf { NUMBER($bees) } Bienen
lessons-trouble-stores = { MASS($stores, digits: 1) } Vorräte, wo die Regel hier { MASS($least, unit: "no") } verlangt
lessons-trouble-small = { NUMBER($bees) } Bienen im Herbst
lessons-trouble-queen-late = eine spät begattete Königin
lessons-trouble-queen-old = eine Königin von { NUMBER($year) }
lessons-trouble-wings = verkrüppelte Flügel
lessons-trouble-light = bei der Hebeprobe leicht
lessons-trouble-queen-dead = eine tote Königin auf dem Flugbrett
lessons-trouble-drones = Drohnen zur Unzeit
lessons-trouble-streaks = Kotspritzer an der Beute
lessons-trouble-mouse = eine Maus oder ihre Spuren
lessons-trouble-robbers = Räuber oder Wespen
lessons-trouble-entrance = Flugloch verstopft
lessons-trouble-upper-entrance = oberes Flugloch verstopft
lessons-trouble-silence = wieder kein Laut von Bienen

lessons-next-foulbrood = zuerst das Wort der Behörde
lessons-next-mites = die Milben zuerst: früh im { DAY($early, style: "month") } zählen und behandeln, ehe die Winterbienen aufgezogen werden
lessons-next-starved = im { DAY($late, style: "month") } wiegen und bis zur Marke des Plans auffüttern
lessons-next-isolation = vor dem harten Frost Futter dicht an die Bienen bringen und auf weniger Waben einwintern
lessons-next-queen = bis { DAY($early, style: "month") } umweiseln, oder im { DAY($late, style: "month") } vereinigen, wenn die Bienen gesund sind
lessons-next-small = ist es gesund, aber klein, im { DAY($late, style: "month") } mit einem starken vereinigen, nicht im Winter
lessons-next-damp = den Deckel herrichten: über den Bienen zuerst warm, und ein Weg hinaus für das Wasser
lessons-next-dysentery = auf Zucker statt auf dunklem Honig einwintern und im Frühjahr eine Bienenprobe einsenden
lessons-next-mice = Mäusegitter an, bevor die Nächte frieren, und keine Maus drin
lessons-next-robbed = beim Füttern ein enges Flugloch, das schwächste zuerst
lessons-next-poison = die Behörde fragen, was in der Nähe gespritzt wurde, und eine Probe gefroren aufheben
lessons-next-never-counted = die Milben wurden nie gezählt, und dass es lebt, beweist darüber nichts: im Frühjahr zählen
lessons-next-lived-with = es lebte am { DAY($on) } mit { NUMBER($mites) } { $mites ->
    [one] Milbe
   *[other] Milben
} auf { NUMBER($bees) } Bienen: im Frühjahr zählen, sie sind nicht weg

lessons-remember = { $colony }, Winter { $winter }, { $found }.
lessons-remember-next = { $colony }, Winter { $winter }, { $found }: { $next }.

lessons-open = { NUMBER($not-told) } von { NUMBER($at-risk) } noch nicht gemeldet: { $over ->
    [yes] zählen, um den Winter abzuschließen
   *[no] der Winter ist nicht vorbei
}. Der Verlust liegt zwischen { NUMBER($least) } und { NUMBER($most) } von { NUMBER($at-risk) }.
lessons-winter-ends = Der Winter endet hier um den { DAY($on) }; die Gefahr endet nicht im Februar.
lessons-no-proof = Durchkommen ist kein Beweis für wenige Milben: im Frühjahr zählen.

lessons-forecast-better = Die Vorhersage war von diesem Winter weniger überrascht als die Grundrate.
lessons-forecast-worse = Die Grundrate war von diesem Winter weniger überrascht als die Vorhersage.
lessons-forecast-alike = Vorhersage und Grundrate waren gleich überrascht.
lessons-forecast-failed = Ein Wert über { NUMBER($high, digits: 2) } kommt in weniger als 1 von 20 Wintern vor, wenn die Aussichten stimmen: hier mit Vorbehalt nehmen.
lessons-forecast-lucky = Es kam besser, als die eigenen Aussichten erwarten ließen: auch Glück.
lessons-forecast-helped = Seit jenem Tag gefüttert oder ausgestattet: { LIST($colonies) }. Die Vorhersage gilt für sich selbst überlassene Völker, ein abgewendeter Tod zählt also gegen sie.
lessons-forecast-hives = { $hives ->
    [1] Ein Volk
    [2] Zwei Völker
    [3] Drei Völker
    [4] Vier Völker
    [5] Fünf Völker
    [6] Sechs Völker
    [7] Sieben Völker
    [8] Acht Völker
    [9] Neun Völker
    [10] Zehn Völker
    [11] Elf Völker
    [12] Zwölf Völker
   *[other] { $hives } Völker
}
lessons-forecast-too-few = { $hives }: zu wenig, um eine gute Vorhersage von Glück zu unterscheiden; dazu bräuchte es etwa { NUMBER($needed) } solche, über mehrere Winter.
lessons-forecast-enough = Mit so vielen Völkern beginnt sich eine gute Vorhersage von Glück zu unterscheiden; die eines Winters teilen sein Wetter und zählen für weniger.
lessons-forecast-same = { $hives } unter einer Vorhersage, die sagt, was die Grundrate sagt: das sagt nichts über sie aus.

lessons-survey-before = Völker vor dem Winter, { DAY($on, style: "full") }
lessons-survey-added = Seither gekauft oder durch Teilen dazugekommen
lessons-survey-removed = Seither verkauft oder vereinigt: weniger gefährdet, nicht verloren
lessons-survey-alive = Lebend, als der Winter hier vorbei war, { DAY($on, style: "full") }
lessons-survey-weak = Davon schwach, aber lebend
lessons-survey-queen-failed = Verloren: Königinnenproblem, das nicht zu beheben ist
lessons-survey-disaster = Verloren: Unglück (Feuer, Flut, Sturz, Bär, Diebstahl)
lessons-survey-dead = Verloren: tot oder leer
lessons-survey-not-told = Noch nicht gemeldet
lessons-survey-lost-by = Bekannte Verluste bis zum { DAY($on) }, wie Umfragen mit festen Tagen fragen
lessons-survey-empty = Von den toten: Beute leer
lessons-survey-starved = Von den toten: Bienen tot in den Zellen und kein Futter
lessons-survey-with-food = Von den toten: tot mit Futter in der Beute
lessons-survey-not-known = Von den toten: nicht bekannt
lessons-survey-queens = Königinnen dieses Jahres, von denen, deren Jahr bekannt ist
lessons-survey-counted = Völker, in denen Milben gezählt wurden
lessons-survey-months = Monate der Behandlung gegen Milben
lessons-survey-mesh = Beuten mit Gitterboden
lessons-survey-forage = Tracht, Wanderungen, erneuerte Waben
lessons-survey-number = { NUMBER($number) }
lessons-survey-of = { NUMBER($number) } von { NUMBER($all) }
lessons-survey-treated = { LIST($months) }
lessons-survey-month = { DAY($on, style: "short-month") } ({ $class })
