## Was mehrere Antworten im Terminal gemeinsam haben.

shared-terminal-food = Futter
shared-terminal-bees = Bienen
shared-terminal-alive = Am Leben
shared-terminal-spring = Frühjahr
shared-terminal-hive = Beute
shared-terminal-frames = Waben
shared-terminal-syrup = Sirup
shared-terminal-mites = Milben
shared-terminal-fit = Winterfest?
shared-terminal-why = Warum
shared-terminal-next = Nun zu tun
shared-terminal-note = Hinweis
shared-terminal-cost = Kosten
shared-terminal-helps = Hilft
shared-terminal-or-instead = Stattdessen

shared-terminal-day = { DAY($on) }
shared-terminal-on-day = am { DAY($on) }
shared-terminal-from-to = vom { DAY($from) } bis zum { DAY($to) }
shared-terminal-title = { $hive } am Stand { $yard }, { DAY($on) }: { $verdict }
shared-terminal-of = { $name }: { $says }
shared-terminal-parts = { LIST($parts, between: "; ") }
shared-terminal-list = { LIST($parts) }
shared-terminal-stop = { $says }.
shared-terminal-cause = { $cause } { NUMBER($hives) }
shared-terminal-money = { NUMBER($amount) } { $currency }
shared-terminal-mass = { MASS($mass, digits: 1) }
shared-terminal-masses = { MASS($likely, digits: 1) } ({ MASS($least, digits: 1) } bis { MASS($most, digits: 1) })

shared-terminal-stands-on = Beruht auf: { LIST($sources, between: "; ") }.
shared-terminal-stands-on-weather = Beruht auf { $weather }.
shared-terminal-more-all = Mehr: snowhum { $command } --all. Etikett, Recht und Tierarzt gehen vor.

## Was gerade geschieht, und von welchem Stand erzählt wird.

shared-terminal-reading-weather = das Wetter wird gelesen …
shared-terminal-reckoning-year = das Jahr wird gerechnet …
shared-terminal-watching = die Völker werden geschätzt …
shared-terminal-computing-winter = der Winter wird gerechnet …
shared-terminal-computing-expected = das zu Erwartende wird gerechnet …
shared-terminal-computing-set-ups = die Einrichtungen werden gerechnet …
shared-terminal-telling-winter = der Winter wird erzählt …
shared-terminal-of-records = Dies ist { $yard } aus den eigenen Aufzeichnungen.
shared-terminal-demo = Dies ist der erfundene Beispielstand. Für den eigenen: snowhum new my-yard.toml
shared-terminal-granted = { NUMBER($count) } Angaben wurden angenommen; zu sehen mit:
shared-terminal-early-visit = Ein Besuch am { $on } liegt vor der Zählung am { $counted }: er bleibt als Vergangenes aufbewahrt, und die Antworten dieses Winters beachten ihn nicht.
shared-terminal-called = { $name } ({ $says })
shared-terminal-needs-now = braucht jetzt jemanden: { LIST($colonies) }
shared-terminal-hungry = hungrig: { LIST($hives) }

## Was am Gefragten nicht stimmt.

shared-terminal-no-colony = ein Volk „{ $name }“ gibt es in { $yard } nicht; { $which ->
    [nearest] am nächsten sind
   *[all] es gibt
} { LIST($names) }
shared-terminal-is-file = „{ $name }“ ist eine Datei, kein Volk: eine Standdatei wird mit --apiary { $name } angegeben
shared-terminal-no-hive = { $colony } hat keine Beute
shared-terminal-unreadable = { $file }: lässt sich nicht lesen: { $why }
shared-terminal-is-folder = { $file }: ist ein Ordner; die Datei darin angeben
shared-terminal-too-large = { $file }: größer als 16 MB; ist das die richtige Datei?
shared-terminal-not-text = { $file }: ist kein UTF-8-Text
shared-terminal-there-already = { $file } gibt es schon und blieb, wie es ist; einen anderen Namen wählen
shared-terminal-unwritable = { $file } lässt sich nicht schreiben: { $why }
shared-terminal-no-records = { $file }: hier ist noch kein Stand aufbewahrt; den eigenen holt: snowhum import my-yard.toml
shared-terminal-no-home = es gibt keinen eigenen Ordner für die Aufzeichnungen; eine Datei mit --store nennen
shared-terminal-wrong-option = { $option } „{ $written }“: { $right }

shared-terminal-no-answer = die Antwort ist nicht zu schreiben: { $why }
shared-terminal-last-winter = { $file }: last_winter = „{ $name }“: { $why }
shared-terminal-other-yard = ist nicht dieser Stand in einem früheren Jahr; die Datei desselben Standes vom letzten Jahr nennen oder die Zeile streichen
shared-terminal-visit = { $file }: ein Besuch: { $wrong }
shared-terminal-zone = Zeitzone „{ $zone }“: { $why }
shared-terminal-room = { $file }: indoors „{ $room }“.record: { $why }
shared-terminal-room-columns = record_columns: { $wrong }; etwa „{ $right }“
shared-terminal-room-empty = { $file }: nichts darin wurde zwischen { $from } und { $until } gemessen; die Jahre berichtigen
shared-terminal-no-word = „{ $term }“ ist nicht unter den Wörtern; alle zeigt: snowhum words
shared-terminal-term = { $british } (nordamerikanisch: { $american })
