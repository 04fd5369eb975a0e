## Wörter und Zahlen, aus denen viele Meldungen gemacht sind.

words-by = bis zum { DAY($on) }
words-in-hundred = etwa { NUMBER($hives) } von 100
words-fewest = weniger als 1 von 100
words-most = mehr als 99 von 100
words-both-ways = von 100 solchen Völkern { $alive ->
    [one] lebt etwa { NUMBER($alive) }
   *[other] leben etwa { NUMBER($alive) }
}, { NUMBER($not) } nicht
words-early = Anfang { DAY($on, style: "month") }
words-mid = Mitte { DAY($on, style: "month") }
words-late = Ende { DAY($on, style: "month") }

words-portion = { PORTION($mass) }
words-poured = { POURED($volume) }
words-unknown = nicht bekannt

words-to = { NUMBER($least) } bis { NUMBER($most) }
words-fewer = weniger als erwartet
words-as-expected = wie erwartet
words-more = mehr als erwartet

words-calibrated = kalibriert
words-published = veröffentlicht
words-practice = übliche Praxis
words-from-memory = aus der Erinnerung
words-judgement = eigene Einschätzung
