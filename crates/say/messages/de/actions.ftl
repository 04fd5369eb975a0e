## Was sich für ein Volk lohnt, warum, die Regel der Imkerei daneben, und woher es stammt.

actions-clear = { $openings ->
    [entrance] das Flugloch
    [upper-hole] das obere Flugloch
   *[both] Flugloch und oberes Flugloch
} von Eis und toten Bienen freimachen
actions-clear-why = { $openings ->
    [entrance] es wurde als verstopft notiert: Feuchte bleibt drin, und am nächsten milden Tag können die Bienen nicht hinaus
    [upper-hole] es wurde als verstopft notiert: Feuchte bleibt unter dem Deckel
   *[both] beide wurden als verstopft notiert: Feuchte und schlechte Luft bleiben drin, und am nächsten milden Tag können die Bienen nicht hinaus
}
actions-clear-rule = Schnee liegen lassen: er ist porös und hält die Beute warm; eine Eisschicht nicht

actions-treat = gegen Milben behandeln mit dem, was Etikett und Gesetz hier erlauben, den ganzen Stand an einem Tag
actions-treat-why = { NUMBER($rate, digits: 1) } Milben auf 100 Bienen bei der Zählung, über der Schwelle: { $in-time ->
    [yes] bis zum { DAY($all) } begonnen, schützt es alle Bienen dieses Winters
   *[no] zu spät für einen Teil der Bienen dieses Winters, und für alle nach dem { DAY($none) }
}; gerechnet für ein Volk, das bekommt, was ihm fehlt; der Preis des Mittels ist nicht mitgezählt

actions-near = die { MASS($food, digits: 1) } von der fernen Seite neben die Traube hängen
actions-near-why = Futter hinter zwei leeren Waben ist in einer Kälteperiode so gut wie nicht da

actions-frames = { $frames } volle { $frames ->
    [one] Wabe
   *[other] Waben
} mit verdeckeltem Futter von { $giver } einhängen ({ MASS($stores, digits: 1) })
actions-frames-why = { $giver } hat selbst im hungrigsten von zehn Wintern mehr als nötig, und die Rähmchen passen (was übrig ist, wird an diesem Stand nur einmal vergeben, an das Volk, dem am meisten fehlt)
actions-frames-rule = eine Wabe mit verdeckeltem Futter dicht an der Traube ist das erste Mittel, wo es eine gibt

actions-syrup = { MASS($sugar, digits: 1) } Zucker als { VOLUME($syrup) } Sirup 3:2 füttern, fertig bis zum { DAY($finish) }{ $is-all ->
    [yes] {""}
   *[no] ; die übrigen { MASS($rest, digits: 1) } Vorräte als Waben, Futterteig oder feuchten Zucker
}
actions-syrup-safe = mit { $feeder } bis zum { DAY($begin) } beginnen: gefüttert, abgenommen und verdeckelt, bevor die Bienen hier keinen Sirup mehr nehmen (der { DAY($half) } reicht in der Hälfte aller Jahre)
actions-syrup-late = sofort mit { $feeder } beginnen: der { DAY($half) } reicht in der Hälfte aller Jahre, der { DAY($safe) } wäre sicher gewesen{ $is-all ->
    [yes] {""}
   *[no] ; mehr gibt es in den verbleibenden Tagen nicht her
}
actions-syrup-custom = { $said }. { $custom }

actions-thin-syrup = { MASS($sugar, digits: 1) } Zucker als { VOLUME($syrup) } dünnen Sirup 1:1 füttern, etwa { VOLUME(0.001, us: 1) } auf einmal
actions-thin-syrup-hungry = eines von zehn solchen Völkern hungert bis zum { DAY($by) }, wenn keine Blüten etwas geben; die Tage sind warm genug, dass Bienen ihn nehmen
actions-thin-syrup-little = dem schlechtesten Zehntel bleibt wenig, wenn keine Blüten etwas geben; die Tage sind warm genug, dass Bienen ihn nehmen
actions-thin-syrup-rule = festes Futter, dann dünner Sirup, sobald die Tage warm sind, dann Pollen; nicht mehr, als fehlt

actions-fondant = { MASS($fondant, digits: 1) } Futterteig direkt über die Traube legen
actions-fondant-hungry = eines von zehn solchen Völkern hungert bis zum { DAY($by) }; drei Wochen davor angesetzt
actions-fondant-little = wenige hungern vor dem Frühjahr, aber das schlechteste Zehntel erreicht es mit { MASS($left, digits: 1) } in Reichweite oder weniger
actions-fondant-rule = fester Zucker hilft, sobald Bienen ihn nutzen können; Herbstvorräte sind besser (University of Minnesota Extension)

actions-lid = { LENGTH(0.05) } Schaumdämmung auf den Innendeckel legen
actions-lid-why = verlegt das Wasser vom Deckel, wo es auf die Traube tropft, an die Wände, und spart Wärme
actions-lid-rule = beide Schulen sind einig: oben dämmen vor den Seiten, keine kalte Fläche über der Traube

actions-wrap = die Wände mit Dachpappe umwickeln
actions-wrap-why = hält den Wind von den Fugen ab und nimmt Sonne auf; selbst hält sie kaum Wärme
actions-wrap-rule = in Minnesota bald nach dem 1. November; zu früh brüten die Bienen weiter

actions-tray = den Bodenschieber unter das Gitter schieben
actions-tray-why = weniger Wind durch die Beute; den Schieber leeren, wenn tote Bienen ihn bedecken
actions-tray-rule = viele lassen den Gitterboden offen: in einer Umfrage senkte das die Verluste (Mazur 2022, Polen)

actions-by-practice = übliche Praxis
actions-by-lines = Schwellen aus data/mites.toml
actions-by-nine-in-ten = neun von zehn weg: Einschätzung
actions-by-isolation = Verhungern neben dem Futter, wie das Modell es erreicht
actions-by-run-out = berechnetes Ausgehen
actions-by-limit = Grenze von 55 F: Bienenberatung Ontario
actions-by-sugar = Zucker gibt das 1,1-fache an Vorräten, Spanne 1,0–1,2
actions-by-covers = Versuch mit Beutenhüllen: St. Clair et al. 2022, PLoS ONE 17:e0266219
actions-by-poster = University of Minnesota, Poster 163
actions-by-iso-6946 = ISO 6946
actions-by-air-flow = berechneter Luftstrom
