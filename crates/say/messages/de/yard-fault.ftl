## Eine Standdatei, die nicht zu lesen ist: ihre Form, ihr Kopf, ihr Ort, ihre Besuche.

yard-fault-no-text = das ist kein reiner Text in UTF-8
yard-fault-no-text-right = den Stand als Textdatei in UTF-8 speichern; eine Datei der Tabellenkalkulation oder Textverarbeitung taugt nicht
yard-fault-missing = fehlt
yard-fault-no-toml = ist als TOML nicht zu lesen: { $why }
yard-fault-no-toml-right = key = value schreiben, Texte in "Anführungszeichen", und jedes Anführungszeichen und jede Klammer schließen
yard-fault-more = hat { NUMBER($more) } weitere Fehler, die nicht aufgeführt sind
yard-fault-more-right = zuerst die oben berichtigen
yard-fault-no-yard = beschreibt keinen Stand
yard-fault-empty = ist leer
yard-fault-template-right = mit der Vorlage beginnen, die `snowhum new` schreibt
yard-fault-long = ist { NUMBER($mib) } MiB lang
yard-fault-long-right = ein Stand von { NUMBER($hives) } Völkern passt in 4 MiB; in mehrere Stände teilen
yard-fault-lines = hat mehr als { NUMBER($lines) } Zeilen
yard-fault-many-right = höchstens { NUMBER($hives) } Völker in eine Standdatei; in mehrere Stände teilen
yard-fault-long-line = diese Zeile ist viel zu lang
yard-fault-long-line-right = in Zeilen unter 2000 Zeichen teilen
yard-fault-stops = diese Zeile hat viel zu viele Punkte
yard-fault-stops-right = je Zeile einen Schlüssel und einen Wert schreiben

yard-fault-text-long = ist viel zu lang
yard-fault-no-name = „{ $written }“ ist kein Name
yard-fault-name-right = einen Namen von 1 bis { NUMBER($letters) } Zeichen auf einer Zeile schreiben
yard-fault-number = { NUMBER($number, digits: "all") } kann nicht sein
yard-fault-number-right = eine Zahl schreiben, { $limits }
yard-fault-no-whole = { NUMBER($number, digits: "all") } ist keine ganze Zahl
yard-fault-whole-right = eine ganze Zahl schreiben, { $limits }
yard-fault-limits-right = schreiben: { $limits }
yard-fault-quoted-right = in Anführungszeichen schreiben, { $limits }
yard-fault-unit-right = mit der Einheit schreiben, { $limits }
yard-fault-then-limits = { $remedy }, { $limits }
yard-fault-not-a = ist { $kind ->
    [text] der Text "{ $text }"
    [number] eine bloße Zahl
    [date] ein Datum
    [list] eine Liste
    [table] eine Tabelle
   *[truth] { $text }
}, nicht { $wanted ->
    [text] ein Text in Anführungszeichen
    [number] eine Zahl
    [truth] true oder false
    [quantity] eine Zahl mit ihrer Einheit
    [date] ein Datum
    [list] eine Liste
   *[table] eine Tabelle
}
yard-fault-text-right = in "Anführungszeichen" schreiben
yard-fault-truth-right = true oder false schreiben, ohne Anführungszeichen
yard-fault-date-right = Jahr, Monat und Tag schreiben, etwa 2025-10-05
yard-fault-list-right = eine Liste in eckigen Klammern schreiben, etwa ["deep", "deep"]
yard-fault-table-right = schreiben wie { $example }
yard-fault-write = { $example } schreiben

yard-fault-between = zwischen { $least } und { $most }, etwa "{ $such }"
yard-fault-from = von { $least } bis { $most }
yard-fault-from-such = von { $least } bis { $most }, etwa { $such }
yard-fault-from-in = von { $least } bis { $most }, in { $unit }

yard-fault-no-key = ist hier kein bekannter Schlüssel
yard-fault-key-out = herausnehmen; bekannt sind hier { LIST($known) }
yard-fault-key-out-near = herausnehmen; { $instead }
yard-fault-tables = ist [[{ $key }]] zu schreiben
yard-fault-tables-right = [[{ $key }]] mit zwei Klammern schreiben
yard-fault-table = soll eine Tabelle [[{ $key }]] sein
yard-fault-table-below-right = [[{ $key }]] schreiben und die Schlüssel in die Zeilen darunter
yard-fault-no-id = „{ $written }“ ist keine Kennung
yard-fault-no-id-right = herausnehmen, dann entsteht eine aus dem Namen; oder eine schreiben wie ausgegeben, 36 Zeichen lang

yard-fault-needs-head = [apiary] schreiben mit name = "…" und as_of = 2025-10-05
yard-fault-needs-name = dem Stand einen Namen geben, etwa name = "Rowan Bank"
yard-fault-needs-as-of = den Tag schreiben, an dem die Völker durchgesehen wurden, etwa as_of = 2025-10-05
yard-fault-needs-colony = mindestens ein Volk in einer Tabelle [[colony]] beschreiben
yard-fault-many = die Datei hat { NUMBER($many) } { $what ->
    [hives] Beuten
   *[colonies] Völker
}
yard-fault-same-name = ist auch der Name { $what ->
    [hive] der Beute
    [room] des Raums
   *[colony] des Volkes
} in Zeile { NUMBER($line) }
yard-fault-same-name-right = { $what ->
    [hive] jeder Beute
    [room] jedem Raum
   *[colony] jedem Volk
} einen eigenen Namen geben
yard-fault-same-id = ist auch die Kennung von etwas anderem in dieser Datei
yard-fault-same-id-right = herausnehmen, dann entsteht eine aus dem Namen
yard-fault-needs-site = [site] schreiben mit latitude, longitude, elevation und zone
yard-fault-needs-latitude = Grad Nord, etwa latitude = 61.7
yard-fault-needs-longitude = Grad Ost, etwa longitude = 27.3
yard-fault-needs-elevation = Höhe über dem Meer, etwa elevation = "105 m"
yard-fault-needs-zone = die Zeitzone nach ihrer Stadt, etwa zone = "Europe/Helsinki"
yard-fault-degrees = in Grad, etwa 61.7
yard-fault-no-angle = „{ $written }“ ist kein Winkel
yard-fault-off-globe = { NUMBER($degrees, digits: "all") } liegt nicht auf der Erde
yard-fault-angle-right = Grad zwischen -{ $most } und { $most } schreiben, etwa 61.7 oder "61.7 { $letter }"
yard-fault-no-zone = „{ $written }“ ist keine bekannte Zeitzone
yard-fault-zone-right = eine Gegend und eine Stadt schreiben, etwa "Europe/Helsinki" oder "America/Winnipeg"
yard-fault-no-day-of-year = „{ $written }“ ist kein Tag des Jahres
yard-fault-day-of-year-right = Monat und Tag schreiben, etwa first_flow = "05-25" oder "25 May"
yard-fault-price = von 0 bis 1000000, in eigener Währung

yard-fault-visits = ist Besuch { NUMBER($visit) }
yard-fault-visits-right = nur einen Winter in eine Standdatei
yard-fault-needs-seen = [visit.seen] schreiben und darunter eine Zeile für jedes Volk
yard-fault-needs-at = den Tag und die Stunde schreiben, etwa at = 2025-11-24T10:00:00
yard-fault-same-visit = sagt dasselbe wie ein anderer Besuch in derselben Minute
yard-fault-same-visit-right = eines von beiden herausnehmen, oder die Zeit schreiben, zu der es wieder gesehen wurde
yard-fault-cannot-be = kann nicht sein
yard-fault-air-right = die Temperatur der Luft schreiben, etwa "-5 C"
yard-fault-wind-right = den Wind schreiben, etwa "3 m/s"
