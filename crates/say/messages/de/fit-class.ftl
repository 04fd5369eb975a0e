## Klassen von Mitteln, und was jede begrenzt. Keine Mengen: Etikett und Recht sagen, was, wann und wie.

fit-class-formic = Ameisensäure
fit-class-formic-weather = Tageshöchstwert zwischen 10 und 29,5 °C (50 und 85 °F), wenn sie eingesetzt wird; ab { TEMPERATURE(33) } in den ersten Tagen kostet sie Bienen, Brut und Königinnen
fit-class-formic-brood = erreicht Milben unter den Zelldeckeln
fit-class-formic-supers = Honigräume ab, wenn das Etikett sie nicht erlaubt

fit-class-thymol = Thymol
fit-class-thymol-weather = zu kalt unter etwa 15 °C (59 °F), Schwierigkeiten über etwa 30 °C (86 °F); bremst die Futterabnahme, und sein Geruch kann Räuberei auslösen
fit-class-thymol-brood = dringt nicht unter Zelldeckel: wirkt über Wochen
fit-class-thymol-supers = Honigräume ab

fit-class-strips = Kontaktstreifen
fit-class-strips-weather = Bienen müssen darüberlaufen: begonnen, solange sie sich noch im Brutnest bewegen, und vor dem Winter herausgenommen; den Wirkstoff wechseln
fit-class-strips-brood = wirkt durch die Brut hindurch, weil es lange dauert
fit-class-strips-supers = Honigräume ab

fit-class-trickled = Oxalsäure, geträufelt
fit-class-trickled-weather = lockere Traube und kein Flug, einige Grad über dem Gefrierpunkt; einmal im Winter: ein zweites Träufeln schadet den Bienen
fit-class-trickled-brood = nur ohne Brut: 97 bis 99 von 100 Milben gegen 25 bis 39 mit Brut
fit-class-trickled-supers = Honigräume ab

fit-class-vaporised = Oxalsäure, verdampft
fit-class-vaporised-weather = einige Grad über dem Gefrierpunkt; ihr Dampf schadet der Lunge: nichts für Anfänger, und nie ohne den Schutz, den das Etikett verlangt
fit-class-vaporised-brood = am besten ohne Brut
fit-class-vaporised-supers = wie das Etikett sagt
