## Was mit den Aufzeichnungen nicht stimmen kann, und was zu tun ist.

store-fault = { $place }: { $wrong }
store-read-only = lässt sich nicht schreiben; die Datei und ihren Ordner beschreibbar machen, oder einen anderen Platz für die Aufzeichnungen nennen
store-full = der Speicherplatz ist voll; Platz schaffen und noch einmal versuchen. Was als gespeichert gemeldet wurde, ist sicher
store-locked = ein anderes Programm benutzt die Aufzeichnungen und hat nicht losgelassen; es schließen und noch einmal versuchen
store-no-database = enthält keine Aufzeichnungen von Snowhum; die richtige Datei nennen, oder eine Sicherung darüber zurückspielen
store-other-program = ist die Datenbank eines anderen Programms; eine andere Datei nennen, an dieser wurde nichts geändert
store-foreign = enthält { $what }, was keine Aufzeichnungen von Snowhum haben; nichts davon wurde gelesen oder ausgeführt. Eine andere Datei nennen
store-too-long = ließ sich in der Zeit, die dafür da ist, nicht durchsehen; sie ist beschädigt oder mit Absicht langsam. Eine andere Datei nennen, oder die letzte Sicherung zurückspielen
store-newer = wurde von einem neueren Snowhum geschrieben (Form { NUMBER($found) }; dieses Programm kennt bis zu { NUMBER($known) }); das neuere Programm benutzen, nichts wurde geändert
store-damaged = ist beschädigt: { $what }; die letzte Sicherung zurückspielen, die beschädigte Datei wird beiseite aufgehoben
store-not-in-order = ist nicht in Ordnung ({ $what }); nichts wurde an die Stelle der Aufzeichnungen gesetzt. Eine andere Sicherung oder einen anderen Export nennen
store-missing = eine solche Datei gibt es nicht; den Namen prüfen
store-already-there = ist schon da und wird nicht überschrieben; eine andere Datei nennen
store-disk = ist nicht brauchbar ({ $what }); prüfen, ob es den Ordner gibt und ob er beschreibbar ist
store-no-folder = einen solchen Ordner gibt es nicht
store-not-empty = enthält schon Aufzeichnungen; den Export in neue Aufzeichnungen einlesen, oder Stände und Notizen einzeln übernehmen
store-unreadable = { $at }: { $what }; { $form ->
    [export] einen Export einlesen, wie `export` ihn schrieb
   *[sheet] eine Datei mit einer Spalte `body` einlesen, wie in note_versions.csv
}
store-no-such-note = eine Notiz { $id } gibt es nicht; vielleicht wurde sie auf einem anderen Gerät geschrieben, das sie noch nicht gesendet hat
store-in-another-yard = { $what ->
    [hive] die Beute
   *[colony] das Volk
} „{ $name }“ steht an einem anderen Stand dieser Aufzeichnungen; zuerst dort herausnehmen, oder eine neue Kennung geben
store-refused = die Datenbank hat abgelehnt ({ $what }); `snowhum doctor` ausführen

store-unfit = { $field ->
    [count] der Tag der Zählung
    [time] die Zeit
    [yard] der Stand
    [hive] die Beute
    [colony] das Volk
    [note] die Notiz
    [alert] die Meldung
    [author] der Verfasser
    [setting-name] der Name der Einstellung
    [setting] die Einstellung
   *[row] eine Zeile
} lässt sich nicht aufheben: { $what }; { $right ->
    [finite] jede Zahl muss endlich sein
    [no-nul] das Zeichen NUL weglassen
    [yard] den Stand der Aufzeichnungen nehmen, oder eine Datei seines letzten Herbstes
   *[years] einen Tag ab 1950 schreiben, und nicht mehr als ein Jahr voraus
}
store-not-as-it-is = es würde nicht so zurückgelesen, wie es ist
store-holds-nul = darin steht das Zeichen NUL
store-note-of = die Notiz { $id } ist von { $time }
