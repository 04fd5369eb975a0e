## Die Seite „Milben“: die Zählungen des Standes, und wann eine Behandlung wirken kann.

mites-page-heading = Milben
mites-page-nobody = An diesem Stand hat niemand gezählt. Keine Milben zu sehen sagt wenig: von Proben mit 100 Bienen zeigen 37 von 100 keine, wenn 1 von 100 Bienen eine trägt.
mites-page-noted = Abgewaschene Milben notieren, etwa <code>mites=14 of 300</code>; die letzte Zählung steht hier.

mites-page-one = { $colony }: { $verdict }.
mites-page-table = Milben, die schlimmsten zuerst
mites-page-caption = Milben auf 100 Bienen, die schlimmsten zuerst; in Klammern, was 95 von 100 solcher Proben lassen; Schwelle { $line } ({ $region }: { $source })
mites-page-colony = Volk
mites-page-counted = Gezählt
mites-page-rate = Auf 100
mites-page-against = Zur Schwelle
mites-page-found = { NUMBER($found) }/{ NUMBER($bees) }
mites-page-found-on = { NUMBER($found) }/{ NUMBER($bees) }, { DAY($on, style: "marked") }
mites-page-rate-of = { NUMBER($rate, digits: 1) } ({ NUMBER($low, digits: 1) }–{ NUMBER($high, digits: 1) })
mites-page-treated = { $verdict }; seither behandelt ({ DAY($on) }): neu zählen
mites-page-more = Mehr davon, andere Schwellen, und wer das sagt
mites-page-line = { $region }: { $line } ({ $source })
mites-page-uncounted = <span class="label">Nicht gezählt</span> { LIST($colonies) }. Vielleicht sind das die schlimmsten.

mites-page-windows = Wann Behandeln hier wirkt
mites-page-begun = Bis zum { DAY($safe, style: "marked") } begonnen, um sicher zu sein
mites-page-begun-usual = Sicher bis zum { DAY($safe, style: "marked") } begonnen (der { DAY($usual, style: "marked") } reicht in der Hälfte der Jahre)
mites-page-done = Vor etwa dem { DAY($on, style: "marked") } geschehen
mites-page-spares = { $begun }, schützt eine Behandlung die Brut der Winterbienen; jede Woche später weniger davon, nach etwa dem { DAY($none, style: "marked") } nur die Nachbarn und die Bienen des nächsten Jahres, keine geschädigten. Im November allein heilt sie diesen Winter nicht.
mites-page-classes = Klasse für Klasse
mites-page-class = { SENTENCE($says) } { CAPITAL($brood) }; { $supers }. { CAPITAL($weather) }.
mites-page-days = Die Tage stammen aus dem Wetter dieses Standorts, 8 von 10 zwischen denen in Klammern.
