## Die Aufzeichnung der Behandlungen durch den Imker, wie eine Kontrolle danach fragt.

treatments-kept = Die Europäische Union verlangt eine solche Aufzeichnung, fünf Jahre aufbewahrt (Verordnung (EU) 2019/6, Artikel 108); viele andere Länder verlangen fast dasselbe (das Vereinigte Königreich, aus der Erinnerung: fünf Jahre). Hier wird nie etwas gelöscht: eine geänderte oder zurückgezogene Notiz bleibt in den Aufzeichnungen neben ihrer neueren Fassung, und auch die Notizen eines Volkes, das den Stand verlassen hat, bleiben. Was nur in einer Standdatei steht, hält so lange wie diese Datei: hier notieren, damit es bleibt.
treatments-not-noted = nicht notiert

treatments-day = Tag
treatments-hive = Volk
treatments-substance = Wirkstoff
treatments-product = Mittel
treatments-batch = Charge
treatments-quantity = Menge
treatments-supplier = Bezugsquelle
treatments-proof = Nachweis
treatments-withdrawal = Wartezeit
treatments-duration = Dauer

treatments-formic = Ameisensäure
treatments-thymol = Thymol
treatments-oxalic = Oxalsäure
treatments-strips = Kontaktstreifen
treatments-other = etwas anderes
