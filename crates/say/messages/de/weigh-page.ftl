## Die Seite, auf der eine Beute an Ort und Stelle gewogen wird.

weigh-page-heading = { $hive } wiegen
weigh-page-back = Zurück zu { $hive }
weigh-page-lede = Eine Seite gerade nach oben anheben, bis sie eben frei ist, die kleinste ruhige Zahl ablesen; dann die andere Seite.

weigh-page-food = Futter: { $mass }
weigh-page-whole = Ganze Beute
weigh-page-tare = Leer, mit Rähmchen
weigh-page-tare-parts = { $mass }, aus den Teilen gerechnet: eine leere wiegen, um es besser zu wissen
weigh-page-bees = Bienen
weigh-page-two-sides = Zwei Seiten
weigh-page-lifted = ihre Summe mal { NUMBER($factor, digits: 3) } für eingerückte Auflagen und eine angehobene Seite
weigh-page-keep = Als Notiz behalten
weigh-page-kept = Mit seinem Fehler behalten: die Schätzung gewichtet es danach.
weigh-page-who = Wer sagt das?

weigh-page-left = Eine Seite, kleinste ruhige Anzeige, { $unit }
weigh-page-right = Die andere Seite, { $unit }
weigh-page-inset = Von der angehobenen Kante bis dorthin, wo die Beute aufliegt, { $unit }
weigh-page-lift = Wie hoch die Seite angehoben wurde, { $unit }
weigh-page-width = Zwischen den Hebepunkten, wenn nicht die Breite der Beute, { $unit }
weigh-page-scale = Oder die ganze Beute auf einer Waage, { $unit }
weigh-page-own-tare = Die leere Beute mit ihren Rähmchen, falls gewogen, { $unit }
weigh-page-other = Schnee, Futtergeschirr, Hülle, anderes Gewicht, { $unit }
weigh-page-reckon = Rechnen

weigh-page-says = Was ein Wiegen sagt
weigh-page-one-side = Eine Seite ist kein Gewicht; jedes Mal dieselbe Seite ist ein Trend.
weigh-page-supports = Auflagen, die von den Kanten eingerückt sind, lassen zwei Seiten 4 bis 14 % zu wenig anzeigen: die Einrückung angeben, und es wird berichtigt.
weigh-page-by-hand = Leicht, mittel, schwer bedeuten etwas, sobald ein Volk der Reihe von Hand angehoben und dann gewogen wurde: dieses jedes Mal zuerst anheben und die anderen danach benennen.

weigh-page-no-box = Die Beute hat keine Zarge.
weigh-page-one-way = Beide Seiten angeben, oder die ganze Beute auf einer Waage.
weigh-page-wrong = { $text }: bitte eine Zahl schreiben, etwa 21.5 { $unit }.
