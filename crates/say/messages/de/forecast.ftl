## Vorhersagen von Wetterdiensten: wie sie geholt wurden, was davon zu wissen ist, und warum es keine gibt.

forecast-nws = US National Weather Service
forecast-of = Vorhersage von { $service }
forecast-fresh = eben geholt
forecast-not-modified = eben gefragt; der Dienst hat nichts Neueres
forecast-current = vor { $age } geholt und noch gültig
forecast-kept = aufgehoben von vor { $age }, denn { $why }
forecast-age = { NUMBER($number) } { $unit ->
    [minutes] min
    [hours] h
   *[days] Tagen
}
forecast-was = Die Vorhersage: { $standing }.
forecast-between = { NUMBER($hours) } Stunden der Vorhersage von { $from } bis { $to } liegen zwischen ihren Schritten: Temperatur, Feuchte, Wind und Bewölkung laufen in geraden Linien, Niederschlag ist gleichmäßig verteilt.
forecast-short-steps = { NUMBER($steps) } Schritte der Vorhersage haben keine Temperatur zur vollen Stunde und wurden weggelassen.
forecast-gap = Die Vorhersage hat nach { $after } eine Lücke und wurde dort abgeschnitten.
forecast-dropped = { NUMBER($values) } Werte der Vorhersage, die kein Wetter haben kann, wurden weggelassen.
forecast-square = Das Gitterfeld des Ortes wurde von früher aufgehoben, denn { $why }.
forecast-ending = Der Dienst sagt, dass diese Form seiner Daten enden wird (203); nach einer neueren Fassung von Snowhum sehen.
forecast-cache-damaged = die aufgehobene Vorhersage { $file } ist beschädigt ({ $wrong }) und wurde weggelassen; mit der nächsten Antwort wird sie neu geschrieben
forecast-cache-unwritable = die Vorhersage lässt sich in { $file } nicht aufheben ({ $wrong }); den Ordner beschreibbar machen, denn sonst fragt jeder Lauf den Dienst neu

forecast-no-contact = { $service } will wissen, an wen zu schreiben ist; einen Kontakt angeben, eine Mailadresse oder die Adresse einer Website, die mit jeder Anfrage gesendet wird
forecast-unfit-contact = der Kontakt für { $service } { $wrong ->
    [long] ist länger als 200 Zeichen
    [letter] enthält ein Leerzeichen oder einen Buchstaben, den eine Adresse nicht haben kann
   *[neither] ist weder eine Mailadresse noch die Adresse einer Website
}; einen wie name@host.example oder https://host.example angeben
forecast-terms = Open-Meteo ist frei für nicht gewerbliche Nutzung; seine Bedingungen annehmen (https://open-meteo.com/en/terms), wenn das zutrifft, oder MET Norway fragen
forecast-not-covered = { $service } sagt für { $latitude }, { $longitude } nichts vorher; MET Norway fragen, das die ganze Welt abdeckt
forecast-position = { $what ->
    [latitude] die geografische Breite des Ortes ist nicht brauchbar; Grade von -90 bis 90 angeben, Nord positiv
    [longitude] die geografische Länge des Ortes ist nicht brauchbar; Grade von -180 bis 180 angeben, Ost positiv
   *[elevation] die Höhe des Ortes ist nicht brauchbar; Meter über dem Meer angeben, höchstens 9000
}
forecast-endpoint = die Adresse für { $service }, „{ $address }“, { $wrong ->
    [open] ist nicht verschlüsselt
    [server] ist keine Adresse eines Servers
   *[address] ist keine Adresse
}; eine angeben, die mit https:// beginnt
forecast-none = keine Vorhersage; die Antworten stehen auf dem Klima des Ortes. { $service }: { $why }; { $right }
forecast-none-kept = { $none }. { LIST($notes, between: ". ") }
forecast-not-laid = Keine Vorhersage: { $why }. Die Antworten stehen allein auf dem Klima des Ortes.

forecast-slow = keine Antwort innerhalb von { NUMBER($seconds) } s
forecast-unreachable = nicht zu erreichen ({ $detail })
forecast-refused = der Dienst lehnt die Anfrage ab (403)
forecast-too-often = der Dienst wird zu oft gefragt (429)
forecast-left-alone = der Dienst hat gebeten, bis { $until } in Ruhe gelassen zu werden
forecast-unknown-place = der Dienst kennt diesen Ort nicht (404)
forecast-status = der Dienst antwortete { NUMBER($status) }
forecast-elsewhere = der Dienst verweist auf { $to }, was ein anderer Ort oder nicht verschlüsselt ist
forecast-too-big = die Antwort ist größer als { NUMBER($megabytes) } MB
forecast-no-forecast = die Antwort ist keine Vorhersage: { $wrong }
forecast-over = die Vorhersage endete um { $end }
forecast-right = { $way ->
    [connection] die Verbindung prüfen und später noch einmal versuchen
    [contact] den Kontakt prüfen und in einer Stunde noch einmal versuchen, oder einen anderen Dienst fragen
    [place] den Ort prüfen, oder MET Norway fragen, das die ganze Welt abdeckt
    [changed] der Dienst hat sich vielleicht geändert, oder etwas steht dazwischen (eine Anmeldeseite des Netzes); später noch einmal versuchen, oder einen anderen Dienst fragen
   *[later] später noch einmal versuchen, oder einen anderen Dienst fragen
}
