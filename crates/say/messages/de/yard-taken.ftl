## Was eine Standdatei offen lässt, und was angenommen wird.

yard-taken-hive = über die Beute nicht gesagt, darum angenommen: { LIST($taken) }
yard-taken-boxes = die Zargen, in denen diese Art meist überwintert
yard-taken-floor = geschlossener Boden
yard-taken-lid = die übliche Abdeckung dieser Art ohne Dämmung
yard-taken-entrance = eingeengtes Flugloch
yard-taken-upper-hole = kein oberes Flugloch
yard-taken-wrap = keine Hülle
yard-taken-facing = zur Mittagssonne gerichtet
yard-taken-pollen = Pollen darin wird behalten und bewegt hier keine Brut: das Modell kennt kein Gesetz des Pollens
yard-taken-no-day-in = kein Tag des Einstellens ist geschrieben: sie steht draußen, bis notiert ist, dass sie hineingetragen wurde
yard-taken-empty-room = keine Beute soll darin überwintern: indoors = "{ $room }" bei einer Beute schreiben, oder unter [apiary] für alle
yard-taken-shelter = Schutz vor dem Wind ist nicht gesagt; als "windbreak" genommen
yard-taken-sun = Wintersonne ist nicht gesagt; als "partial" genommen
yard-taken-prices = Preise nicht angegeben, darum in { $currency } angenommen: { LIST($prices) } ({ $source })
yard-taken-colony = von Bienen und Futter sind nur Worte bekannt, darum ist jede Spanne weit; Zählen und Wiegen macht sie enger
yard-taken-mites = keine Milbenzählung ist angegeben; als nicht gezählt genommen
yard-taken-stores = woraus das Futter ist, ist nicht gesagt; als Zucker genommen

yard-taken-line = Zeile { NUMBER($line) }, { $field }: { $says }
