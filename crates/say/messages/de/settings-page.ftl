## Die Seite „Einstellungen“.

settings-page-heading = Einstellungen
settings-page-kept = Gespeichert.
settings-page-units = Einheiten
settings-page-metric = Kilogramm, °C
settings-page-us = Pfund, °F
settings-page-language = Sprache
settings-page-unread = Deutsch und Französisch hat noch kein Imker der Sprache gelesen: bei Warnungen steht dort der englische Text.
settings-page-currency = Währung
settings-page-colony = Was ein Volk wert ist, das im Frühjahr mit Futter und Königin lebt
settings-page-keep = Speichern
settings-page-records = Wo die Aufzeichnungen liegen
settings-page-records-at = In <code>{ $path }</code>. Dort ist jede Fassung jeder Notiz aufbewahrt.
settings-page-records-nowhere = Nur im Speicher: sie sind weg, wenn das Programm endet. Mit --store starten, um sie zu behalten.
settings-page-import = Notizen aus einer Tabelle

settings-page-wrong-units = Einheiten sind metric oder us.
settings-page-wrong-language = Die Sprache ist en-GB, en-US, de oder fr.
settings-page-wrong-currency = Die Währung in höchstens 8 Buchstaben schreiben.
settings-page-wrong-colony = Den Wert eines Volkes als Zahl schreiben, etwa 180.
settings-page-wrong-yard = Nur ein erfundener Stand lässt sich an einem anderen Tag ansehen; das Programm mit --as-of starten.
settings-page-wrong-day = Einen Tag nennen, etwa 2026-02-07.
settings-page-wrong-before = Dieser Tag liegt vor der Zählung der Völker.
