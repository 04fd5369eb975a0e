## Das Wetter, auf dem Antworten stehen, im Terminal.

weather-terminal-title = { $yard }: Wetter von { $from } bis { $to } ({ NUMBER($paths) } Verläufe): { $source }
weather-terminal-month = Monat
weather-terminal-mean = Mittel
weather-terminal-cold = 1 h von 100 <
weather-terminal-wind = Wind, { HEIGHT(10) }
weather-terminal-flying = Flugtage
weather-terminal-snow = Schnee
weather-terminal-degrees = { TEMPERATURE($air, digits: 1) }
weather-terminal-speed = { SPEED($wind, digits: 1) }
weather-terminal-days = { NUMBER($days, digits: 1) }
weather-terminal-depth = { NUMBER($depth) } { $inches ->
    [yes] in
   *[no] cm
}

weather-terminal-forecast = Vorhersage von { $service }: { $standing }
weather-terminal-until = Bis
weather-terminal-attribution = Nachweis
weather-terminal-read = { $files }: { NUMBER($hours) } Stunden ab { $from }, kälteste { TEMPERATURE($coldest, digits: 1) }
weather-terminal-written = Ganze Stunden geschrieben nach { $file }; um sie zu verwenden: --weather "{ $file }" --columns "{ $columns }"

## Ein Tag, bis zu dem Wetter oder Zählung nicht reichen.

weather-terminal-before-count = as-of { $on } liegt vor dem Tag, an dem die Völker gezählt wurden, { $counted }; nach einem Tag von da an fragen
weather-terminal-winter-over = { $yard } wurde am { $counted } für einen Winter gezählt, der hier etwa am { $spring } endete, lange vor { $on }. Wie seine Völker jetzt stehen, sagt das nicht. Der eine Schritt: snowhum season; es zählt die lebenden neu und behält den letzten Winter
weather-terminal-after-files = as-of { $on } liegt nach dem gegebenen Wetter, das am { $ends } endet; eine Datei hinzufügen, die von dort weitergeht
weather-terminal-today-alone = Eine Vorhersage wird nur für heute geholt; gefragt war ein anderer Tag.
weather-terminal-no-spring = an diesem Ort fand sich kein Frühling innerhalb von acht Monaten nach Mittwinter; first_flow in [site] der Standdatei setzen
weather-terminal-too-short = as-of { $on }: Frühling ist hier am { $spring }; ein Winterplan beginnt zwischen Hochsommer und Frühling, mindestens eine Woche davor
weather-terminal-no-hours = die Wetterdateien enthalten keine Stunden
weather-terminal-columns-alone = --columns sagt, wie die Datei einer Station zu lesen ist; diese Datei mit --weather angeben
weather-terminal-no-folder = es gibt keinen eigenen Ordner für Vorhersagen

weather-terminal-no-service = einen Dienst nennen: --live met-norway, nws oder open-meteo
weather-terminal-no-file = keine Wetterdatei wurde genannt
weather-terminal-no-format = { $file }: Zeile 1: keine Form, die gelesen wird. Vier sind es: EPW (beginnt mit LOCATION), ISD-lite (zwölf ganze Zahlen je Zeile), GHCN-Daily (Zeilen mit ID,YYYYMMDD,ELEMENT,VALUE) und die CSV einer Station mit einer Zeile Überschriften.
weather-terminal-by-headings = Nach den Überschriften ist es die letzte, so gelesen; jede Größe, Einheit und die Folge von Tag und Monat prüfen:
weather-terminal-no-headings = Die erste Zeile hat keine Überschriften für Zeit und Temperatur; sagen, welche es sind, etwa
weather-terminal-apart = oder, wo Jahr, Monat, Tag und Stunde getrennt stehen,
