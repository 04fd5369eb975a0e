## Was an einer Wetterdatei oder einem Ort nicht stimmt, und was richtig wäre.

weather-fault-whole = { $file }: { $says }
weather-fault-line = { $file }: Zeile { NUMBER($line) }, { $says }
weather-fault-field = { $file }: Zeile { NUMBER($line) }, { $field }: { $says }
weather-fault-row = Zeile
weather-fault-numbered = Feld { NUMBER($number) }
weather-fault-date = Datum
weather-fault-days = Jahr, Monat, Tag
weather-fault-hour = Stunde
weather-fault-hours = Jahr, Monat, Tag, Stunde

weather-fault-short = enthält { NUMBER($hours) } Stunden; mindestens einen Tag angeben
weather-fault-gap = die Temperatur fehlt für { NUMBER($hours) } Stunden ab { $from }; diese Stunden aus einer Station in der Nähe füllen oder die Datei davor oder danach abschneiden
weather-fault-no-sun = { $why }; Ort und Jahre prüfen
weather-fault-no-rows = enthält kein Wetter; eine Datei mit mindestens einer Zeile Daten angeben
weather-fault-long = ihre Zeilen reichen über { NUMBER($years) } Jahre; höchstens sechzig Jahre angeben und das Datum der ersten und letzten Zeile prüfen
weather-fault-first-date = ihr erstes Datum ist nicht brauchbar ({ $why }); die Jahre prüfen
weather-fault-number = „{ $text }“ ist keine Zahl; eine Zahl schreiben, oder das Feld leer lassen, wo sie fehlt
weather-fault-one-station = die Datei einer einzigen Station angeben

weather-fault-epw-columns = hat { NUMBER($columns) } Spalten; eine EPW-Zeile hat 35 Spalten, von denen mindestens 22 gebraucht werden
weather-fault-epw-date = „{ $text }“ ist kein Datum; Jahr, Monat 1-12, Tag 1-31 schreiben
weather-fault-epw-hour = „{ $text }“ ist keine Stunde; 1 bis 24 schreiben; Stunde 1 endet um 01:00
weather-fault-epw-location = es gibt keine Zeile LOCATION; eine EPW-Datei beginnt mit LOCATION,city,state,…
weather-fault-epw-number = LOCATION hat als { $what ->
    [latitude] geografische Breite
    [longitude] geografische Länge
    [zone] Zeitzone
   *[elevation] Höhe
} „{ $text }“; Feld { NUMBER($field) } sollte eine Zahl von { NUMBER($lowest) } bis { NUMBER($highest) } sein
weather-fault-epw-zone = Zeitzone: { $why }; Stunden gegenüber UTC schreiben, etwa 2.0

weather-fault-ghcn-long = reicht über mehr als sechzig Jahre; auf die Jahre kürzen, auf die es ankommt
weather-fault-ghcn-station = Station „{ $other }“ folgt auf „{ $first }“; { $right }
weather-fault-ghcn-columns = hat { NUMBER($columns) } Spalten; eine Zeile ist ID,YYYYMMDD,ELEMENT,VALUE,M,Q,S,TIME
weather-fault-ghcn-date = „{ $text }“ ist kein Datum; YYYYMMDD schreiben
weather-fault-ghcn-number = „{ $text }“ ist keine Zahl; Zehntel eines Grades oder eines Millimeters schreiben

weather-fault-isd-number = „{ $text }“ ist keine ganze Zahl; eine ISD-lite-Zeile enthält 12 ganze Zahlen
weather-fault-isd-fields = hat { NUMBER($fields) } Felder; eine ISD-lite-Zeile enthält 12, durch Leerzeichen getrennt
weather-fault-isd-hour = „{ $text }“ ist keine Stunde; Jahr, Monat 1-12, Tag 1-31, Stunde 0-23 in UTC schreiben

weather-fault-station-empty = ist leer; eine CSV-Datei mit einer Zeile Überschriften angeben
weather-fault-station-column = eine Spalte „{ $asked }“ gibt es nicht; die Überschriften sind „{ LIST($headings, between: "“, „") }“
weather-fault-station-place = { NUMBER($latitude) }, { NUMBER($longitude) } folgt auf { NUMBER($first-latitude) }, { NUMBER($first-longitude) }; { $right }
weather-fault-station-coordinate = „{ $text }“ ist keine { $what ->
    [latitude] geografische Breite
    [longitude] geografische Länge
   *[elevation] Höhe
}; eine Zahl von { NUMBER($lowest) } bis { NUMBER($highest) }{ $what ->
    [elevation] {" "}m
   *[other] {""}
} schreiben
weather-fault-station-number = „{ $text }“ ist keine Zahl; { $comma ->
    [yes] eine Zahl mit Dezimalkomma schreiben
   *[no] eine Zahl mit Dezimalpunkt schreiben, oder angeben, dass die Datei Dezimalkommas hat
}
weather-fault-station-no-time = „{ $text }“ ist keine Zeit; { $right }
weather-fault-station-no-date = „{ $text }“ ist kein Datum; { $right }
weather-fault-station-right = { $form ->
    [years] ein Jahr von 1 bis 9998 schreiben
    [order] die Reihenfolge von Tag und Monat ist offen; sie mit time=Überschrift:mdy oder :dmy nennen
    [time] eine Tageszeit schreiben, etwa 13:45 oder 1:45 PM
   *[date] ein Datum schreiben, etwa 2025-01-31, 31.1.2025, oder die Reihenfolge mit time=Überschrift:mdy oder :dmy nennen
}
weather-fault-station-time-lacks = fehlt
weather-fault-station-day = „{ NUMBER($day) }“ ist kein Tag des Monats { NUMBER($month) } von { NUMBER($year) }; einen Tag schreiben, den der Monat hat
weather-fault-station-part = „{ $text }“ ist { $what ->
    [year] kein Jahr
    [month] kein Monat
    [day] kein Tag
    [hour] keine Stunde
   *[minute] keine Minute
}; eine ganze Zahl von { NUMBER($lowest) } bis { NUMBER($highest) } schreiben
weather-fault-station-unit = die Spalte „{ $column }“, in { $unit } gelesen, hat ein Mittel von { TEMPERATURE($mean, digits: 0) }, wo an diesen Tagen { TEMPERATURE($usual, digits: 0) } üblich sind; temperature={ $column }:{ $other } schreiben, wenn die Spalte in { $other } ist

weather-fault-columns-form = „{ $text }“ ist keine Zuordnung; Größe=Überschrift:Einheit schreiben, etwa temperature=Temp Out:F
weather-fault-columns-role = „{ $text }“ ist keine Größe; eine von diesen schreiben: { $roles }
weather-fault-columns-unit = „{ $unit }“ ist keine Einheit von { $role }; eine von diesen schreiben: { $units }
weather-fault-columns-no-unit = { $role }={ $heading } hat keine Einheit; eine von diesen schreiben: { $units }, etwa { $role }={ $heading }:{ $example }
weather-fault-columns-twice = { $role } ist zweimal zugeordnet; jeder Größe eine Spalte geben
weather-fault-columns-lacks = { $role } ist nichts zugeordnet; { $role }=Überschrift ergänzen, wie sie in der Datei steht
weather-fault-columns-lacks-time = time ist nichts zugeordnet; time=Überschrift ergänzen, wie sie in der Datei steht, oder year=, month=, day= und hour=, wo sie getrennt stehen
weather-fault-columns-same-twice = { $one } und { $other } sagen dasselbe; nur eines davon zuordnen

weather-fault-latitude = das eingebaute Klima reicht von 30 bis 75 N und von 30 bis 56 S, nicht bis zur Breite { NUMBER($latitude, digits: 2) }; eine Wetterdatei des Ortes angeben (EPW, ISD-lite, GHCN-Daily oder die CSV einer Station)
weather-fault-no-place = Breite { NUMBER($latitude) }, Länge { NUMBER($longitude) } ist kein Ort auf der Erde; Grade schreiben, Nord und Ost positiv
weather-fault-open-sea = Breite { NUMBER($latitude, digits: 2) }, Länge { NUMBER($longitude, digits: 2) } liegt im offenen Meer; die Vorzeichen prüfen (Nord und Ost sind positiv) oder eine Wetterdatei angeben
weather-fault-damaged = das eingebaute Klima ist beschädigt; das Programm neu bauen oder eine Wetterdatei angeben
weather-fault-drawn-from = Wetter ab { $from } lässt sich nicht ziehen; ein Datum von 1700 bis 2900 angeben
weather-fault-drawn-hours = { NUMBER($hours) } Stunden Wetter lassen sich nicht ziehen; nach 1 bis 87840 fragen
weather-fault-too-short = die Wetterdatei enthält { NUMBER($held) } Stunden und keine Strecke von { NUMBER($asked) } Stunden ab { $from }; eine Datei eines ganzen Jahres angeben, oder eine, die diese Tage enthält
