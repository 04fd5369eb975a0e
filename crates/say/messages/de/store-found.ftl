## Was nicht so gefunden wird, wie es aufbewahrt wurde.

store-found-of-gate = eine Zeile von { $table } über das Tor
store-found-no-key = eine Zeile von { $table } ohne Schlüssel
store-found-changed = { $row } wurde geändert
store-found-moved = { $row } wurde geändert oder ist nicht, wo es war
store-found-changed-or-gap = { $row } wurde geändert, oder eine Zeile davor fehlt
store-found-gap = { $versions ->
    [one] eine Fassung fehlt
   *[other] { NUMBER($versions) } Fassungen fehlen
} vor { $row }
store-found-not-kept = die Zeilen von { $table } sind nicht die aufbewahrten
store-found-last-missing = die letzten Fassungen von { $table } fehlen: { NUMBER($versions) }
store-found-missing = fehlende Zeilen von { $table }: { NUMBER($rows) }
store-found-strange = Zeilen von { $table }, die nicht dieses Programm schrieb: { NUMBER($rows) }
store-found-unproved = { $row } steht da, und nichts beweist es
store-found-stranger = { $row } ist ganz und ein anderes in der Datei, aus der ausgebessert werden soll
store-found-not-kept-row = { $row } ist nicht aufzubewahren ({ $why })
store-found-older = es ist von älterer Form, deren Zeilen niemand von anderen unterscheiden kann
store-found-check = { $what ->
    [header] Kopf
    [form] Form
    [file] Datei
    [links] Verweise
    [bodies] Inhalte
    [hashes] Prüfsummen
    [notes] Notizen
   *[folder] Ordner
}
store-found-of = { $name }: { $says }
store-found-loose = Zeilen, die auf fehlende verweisen: { NUMBER($rows) }
store-found-homeless = Völker in Beuten, die nicht auf ihrem Stand stehen: { NUMBER($colonies) }
store-found-form = von Form { NUMBER($found) }, erwartet ist { NUMBER($known) }
store-found-rewritten = es zählt { NUMBER($changes) } Änderungen seiner Form statt { NUMBER($expected) }: Ein anderes Programm schrieb es um
store-found-orphans = über Völker, die noch kein Stand hat, aufbewahrt und nicht gezeigt: { NUMBER($notes) }
store-found-folder = in den Ordner ist nicht zu schreiben ({ $why })
store-found-several = { LIST($named, between: "; ") }
store-found-more = und { NUMBER($more) } weitere
store-found-export = der Export
store-found-line = Zeile { NUMBER($line) }
store-found-no-text = kein Text
store-found-large = größer als { NUMBER($megabytes) } MB
store-found-has-no = { $name } fehlt
store-found-unknown = { $name } darin hat kein Speicher dieses Programms
store-found-no-schema = { $schema } steht nicht darin
store-found-year = aus einem Jahr, aus dem keine Aufzeichnung ist
store-found-opens-gate = es würde das Tor öffnen; kein Export hat eine solche Einstellung
store-found-body = der Inhalt von { $what } ist nicht zu lesen ({ $why })
store-found-body-alone = der Inhalt ist nicht zu lesen ({ $why })
store-found-no-kind = { $kind } ist keine Art von Fassung
