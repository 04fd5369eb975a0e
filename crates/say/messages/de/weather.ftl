## Worauf ein Wetter steht, und was davon zu wissen ist.

weather-drawn = Wetter, gezogen aus { $climate }
weather-built-in = eingebautem Klima, ERA5-Monatsmitteln 2000–2025 auf ein halbes Grad
weather-given = Monatsmitteln, wie angegeben
weather-of-file = Wetterdatei, { NUMBER($years) } { $years ->
    [one] Jahr
   *[other] Jahre
}
weather-files = { $files }: { $weather }
weather-several = { LIST($weathers, between: "; ") }
weather-foretold = { $forecast } für { NUMBER($hours) } Stunden ({ $standing }), danach { $then }

weather-coarse = Das eingebaute Klima ist hier grob: sein Boden liegt auf { HEIGHT($ground) }, der Ort { HEIGHT($off) } { $above ->
    [yes] darüber
   *[no] darunter
}. Temperaturen werden um 5 K/km berichtigt; eine Wetterdatei des Ortes wäre besser.
weather-laws = Tage und Stunden werden um die Monatsmittel gezogen; Wind, Sonne und Feuchte nach allgemeinen Gesetzen.
weather-few-winters = Die Datei enthält { NUMBER($winters) } { $winters ->
    [one] Winter
   *[other] Winter
}; jeder Verlauf verschiebt seine Temperatur um einen gezogenen langsamen Anteil und einen täglichen Rest. Ein typisches Jahr allein verfehlt die Kälte um bis zu 5 K: nie den Vorrat danach bemessen.
weather-no-whole-year = Die Wetterdateien enthalten kein ganzes Jahr; das Klima des Ortes steht dafür.
weather-bent = Durch { NUMBER($readings) } an den Beuten notierte Temperaturen geführt.
weather-typical-year = Ihre Monate stammen aus verschiedenen Jahren: ein typisches Jahr, dessen Kälte um bis zu 5 K milder ist als die wirkliche.
weather-daily = Stunden werden zwischen höchster und tiefster Temperatur des Tages nach dem Lauf der Sonne gezogen.
weather-dropped = { NUMBER($values) } Werte von { $column }, die kein Wetter haben kann, wurden weggelassen

weather-quantity = { $of ->
    [humidity] Feuchte
    [wind] Wind
    [cloud] Bewölkung
    [precipitation] Niederschlag
    [pressure] Luftdruck
   *[temperature] Temperatur
}
weather-filled = { $quantity }: { NUMBER($hours) } fehlende Stunden wurden durch gerade Linien gefüllt (Lücken bis { NUMBER($longest) } h).
weather-lacking = { $quantity }: { $all ->
    [yes] alle
   *[no] { NUMBER($hours) }
} Stunden ohne Wert; { $taken }.
weather-dew-point-taken = der Taupunkt wird nahe der tiefsten Temperatur des Tages angenommen
weather-wind-taken = angenommen werden stetige { SPEED($wind, digits: 1) }
weather-cover-taken = die Bedeckung folgt aus der Sonne des Tages, wo es sie gibt, sonst aus der Temperaturspanne des Tages
weather-pressure-taken = angenommen wird die Standardatmosphäre auf der Höhe des Ortes
weather-mean-taken = angenommen wird das Mittel der anderen
weather-sun-derived = Sonne: { NUMBER($hours) } Stunden ohne Wert; sie folgt aus Bewölkung und Sonnenhöhe.
weather-sun-split = Sonne: { NUMBER($hours) } Stunden wurden nach ihrer Klarheit in direkt und diffus geteilt.
weather-rain-lacking = Niederschlag: die meisten Stunden sind ohne Wert; { $taken }.
weather-rain-blind = Niederschlag: die Datei hat an { NUMBER($days) } Tagen so gut wie nichts, wie Messer ohne Heizung bei Frost; { $taken }.
weather-rain-taken = { $known ->
    [yes] die Monatssummen des eingebauten Klimas werden gleichmäßig verteilt
   *[no] angenommen werden { LENGTH(0.05) } im Monat
}
weather-snow-derived = der Schnee am Boden ist aus Temperatur und Niederschlag abgeleitet.
