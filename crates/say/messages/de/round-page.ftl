## Die Seite „Rundgang“, und derselbe Gang auf einem Blatt für den Bleistift.

round-page-heading = Rundgang
round-page-kept = <strong>{ NUMBER($hives) } { $hives ->
    [one] Volk
   *[other] Völker
} notiert und gespeichert.</strong> Die Schätzung folgt von selbst.
round-page-lede = Antippen, was zu sehen war; auslassen, was nicht angesehen wurde. Ohne Netz wartet es im Telefon und wird später gesendet.
round-page-sheet = Ein Blatt für den Bleistift
round-page-not-asked = Nicht gefragt, da dort nichts mehr lebt:
round-page-all = Alles davon
round-page-before = Voriges Volk
round-page-end = Ende
round-page-next = Nächstes Volk
round-page-keep = Den Rundgang speichern

round-page-outside = Draußen
round-page-air = Luft, { $unit }
round-page-snow = Schnee vor den Beuten
round-page-snow-bare = keiner
round-page-snow-old = alt
round-page-snow-fresh = frisch

round-page-indoors = Steht drinnen: kein Flug, Schnee oder Reif zu suchen; die Toten liegen auf dem Boden.
round-page-expected = Wie erwartet: { $dead } tote Bienen, Flugloch frei
round-page-further = Weitere Zeichen, Gewicht, ein Wort
round-page-word = Ein Wort
round-page-unasked = nicht nachgesehen
round-page-untried = nicht versucht

round-page-dead = Tote Bienen, neue
round-page-dead-none = keine
round-page-dead-few = 1–5
round-page-dead-some = 6–20
round-page-dead-many = 21–100
round-page-dead-most = über 100
round-page-entrance = Flugloch
round-page-upper = Oberes Flugloch
round-page-clear = frei
round-page-blocked = verstopft
round-page-cleared = freigemacht
round-page-drifted-over = zugeschneit
round-page-iced = vereist
round-page-plugged = voller Bienen
round-page-not-visible = nicht zu sehen
round-page-rime = Reif am oberen Flugloch
round-page-rime-new = neuer Reif
round-page-rime-old = Reif
round-page-rime-damp = feucht
round-page-rime-dry = trocken
round-page-hum = Summen, Ohr an der Wand
round-page-hum-heard = gehört
round-page-hum-silent = still
round-page-poke = Stochern am Loch oder Flugloch
round-page-poke-answered = eine Biene antwortete
round-page-poke-silent = still
round-page-flight = Flug
round-page-flight-well = gut
round-page-flight-thin = schwach
round-page-flight-traffic = hin und her
round-page-flight-none = keine Biene
round-page-pollen = Pollen
round-page-pollen-carried = eingetragen
round-page-pollen-none = keiner
round-page-droppings = Kot
round-page-droppings-snow = auf dem Schnee
round-page-droppings-hive = an der Beute
round-page-droppings-none = keiner
round-page-robbers = Räuber
round-page-wasps = Wespen
round-page-yes = ja
round-page-no = nein
round-page-lid = Unter dem Deckel, mit der Hand
round-page-lid-warm = warm
round-page-lid-cold = kalt
round-page-heft = Von Hand angehoben
round-page-heft-light = leicht
round-page-heft-fair = mittel
round-page-heft-heavy = schwer
round-page-depth = Schnee an der Beute, über dem Boden
round-page-count = Tote Bienen, gezählt
round-page-hook = Tote Bienen mit dem Haken herausgezogen
round-page-scale = Ganze Beute auf einer Waage
round-page-side = Eine Seite angehoben, immer dieselbe

round-page-melted-snow = Ein Loch im Schnee auf dem Deckel geschmolzen
round-page-stripes = Frische Gemüllstreifen auf der Windel, Wabengassen
round-page-weight = Gewicht oder Vorräte
round-page-inside = Temperatur innen
round-page-humidity = Luftfeuchte unter dem Deckel
round-page-warm-spot = Ein warmer Fleck im Wärmebild
round-page-bees-seen = Lebende Bienen unter dem Deckel gesehen
round-page-drones = Drohnen zu ungewohnter Jahreszeit
round-page-queen-dead = Eine tote Königin auf dem Flugbrett
round-page-larvae = Larven oder Puppen herausgeworfen
round-page-wings = Bienen mit verkrüppelten Flügeln
round-page-bird = Ein Vogel am Flugloch
round-page-mouse = Eine Maus oder ihre Spuren
round-page-damage = Schaden durch Sturm, Tier oder Mensch
round-page-smell = Fäulnisgeruch
round-page-seen-dead = Das Volk wurde tot gesehen

round-page-wrong-none = Kein Volk wurde notiert: bei mindestens einem antippen, was zu sehen war.
round-page-wrong-snow = Schnee ist eines von none, old, new.

round-page-pencil = Ein Rundgang mit Bleistift
round-page-pencil-day = Tag ____________  Stunde ______  Luft ______  Schnee: keiner · alt · frisch
round-page-pencil-ring = Je Zeile ein Wort einkreisen. Am Abend steht dieselbe Reihenfolge auf der Seite „Rundgang“.

## Was das Skript des Rundgangs sagt.

round-page-waiting = { $number } noch zu senden: { $hives }.
round-page-sign-in = Anmelden, um sie zu senden
round-page-refused = { $hive } wurde nicht angenommen: { $why }
round-page-declined = abgelehnt
round-page-put-back = Zurücklegen und berichtigen ({ $entries })
round-page-stored = { $number } notiert und gespeichert: { $hives }.
round-page-in-phone = In diesem Telefon aufbewahrt, noch zu senden: { $hives }. Gesendet wird, sobald der Server zu erreichen ist.
round-page-signed-out = In diesem Telefon aufbewahrt, noch zu senden: { $hives }. Gesendet wird nach dem Anmelden.
round-page-moved = Lebend von 100 solchen Völkern, vorher und nachher: { $changes }.
round-page-draft = Was { $when } getippt wurde, ist wieder da, mit jener Zeit.
round-page-anew = Neu beginnen
round-page-clear-entrance = Flugloch freimachen.
round-page-clear-upper = Oberes Flugloch freimachen.
round-page-is-answered = Lebt: eine Biene antwortete.
round-page-alive = Lebt.
round-page-most-likely-alive = Lebt höchstwahrscheinlich.
round-page-in-doubt = Zweifelhaft.
round-page-most-likely-dead = Höchstwahrscheinlich tot.
round-page-live = { $chance } von 100 solchen Völkern leben, vorher { $before }.
round-page-breath = Der Reif ist ihr Atem.
round-page-tells-most = Am meisten sagte als Nächstes: „{ $asks }“.
round-page-tells-little = Mehr hinzusehen sagte heute wenig.
round-page-other-air = Gerechnet für { $air }, nicht für die gemessene Luft: erst dem trauen, was nach dem Abgleich kommt.
round-page-provisional = Vorläufig, für { $air }, bis zum Abgleich.
round-page-next-sync = Aufbewahrt; die Schätzung kommt mit dem nächsten Abgleich.
round-page-step = { $at } von { $all } · { $noted } notiert
round-page-noted = { $noted } notiert
round-page-not-looked = nicht angesehen
round-page-answer = { $asks }: { $answer }
