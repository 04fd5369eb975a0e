## Eine gewogene Beute.

weigh-other = anderes Gewicht (kg)
weigh-whole = die ganze Beute (kg)
weigh-left = die Anzeige links (kg)
weigh-right = die Anzeige rechts (kg)
weigh-width = Abstand zwischen den Hebepunkten (mm)
weigh-inset = Einrückung der Auflagen (mm)
weigh-lift = Höhe des Anhebens (mm)
weigh-centre = Höhe des Schwerpunkts (mm)
weigh-empty = die leere Beute (kg)
weigh-bees = Bienen
weigh-frames = Rähmchen
weigh-reading = die Anzeige (kg)
weigh-tips = so weit angehoben, würde eine solche Beute umkippen; das Anheben noch einmal messen
weigh-too-light = die Beute wiegt weniger als leer mit ihren Bienen; --tare, --bees und --other ansehen

weigh-two-sided = zweiseitiges Anheben
weigh-scale = Waage
weigh-one-side = eine Seite: ein Trend
weigh-counted = Waben gezählt

weigh-part-boxes = { NUMBER($count) } { $count ->
    [one] Zarge
   *[other] Zargen
}, leer
weigh-part-frames = { NUMBER($count) } { $count ->
    [one] ausgebaute Wabe
   *[other] ausgebaute Waben
}
weigh-part-floor = Boden
weigh-part-over = was über den Rähmchen liegt
weigh-part-roof = Deckel

weigh-lift-side = eine Seite, wie sie angehoben wurde
weigh-lift-waist = eine volle große Zarge mit zehn Rähmchen auf Hüfthöhe
weigh-lift-low = dieselbe von einem niedrigen Bock, mit Drehung
weigh-lift-box = Zarge { NUMBER($place) } von unten ({ $size }) auf einem Bock von 40 cm (16 in)

weigh-no-food = Über das Futter lässt sich nichts sagen: die leere Beute mit --tare angeben, oder ihre Art mit --hive und --boxes.
weigh-wet = Nasses Holz bringt 1 bis 3 kg dazu (2 bis 7 lb), nasser Schnee auf dem Deckel 0,5 bis 1 kg je Zentimeter (3 bis 6 lb je Zoll): abkehren, oder als anderes Gewicht angeben.
weigh-brood = Auch Brut und Pollen wiegen: im Frühjahr kann das Ganze gleich bleiben, während das Futter abnimmt.
weigh-frozen = An einer Beute, die am Bock festgefroren ist, wird nicht gerissen: erst das Eis brechen, oder warten.
weigh-off-middle = Die Last sitzt weit aus der Mitte: beide Seiten noch einmal ablesen, um sicher zu sein.
weigh-side-no-weight = Eine Seite sagt kein Gewicht: liegt die Mitte der Last um ein Zehntel der Breite daneben, ist das Doppelte der Anzeige um 20 % falsch.
weigh-side-same = Jedes Mal dieselbe Seite anheben, vom selben Bock und auf dieselbe Höhe, und auf die Veränderung sehen.
weigh-side-both = Für ein Gewicht beide Seiten anheben: --left und --right.

weigh-sources-lifting = Heben: Applications Manual for the Revised NIOSH Lifting Equation (1994, Veröffentlichung 94-110)
weigh-sources-sides = zwei Seiten: Momente um die ferne Auflage; Ablesefehler: Einschätzung
weigh-sources-parts = leere Beute: ihre Maße und ihr Holz; Rähmchen, Waben und Deckel aus der Erinnerung
weigh-sources-own = leere Beute: eigene Angabe
weigh-sources-bees = Bienen: etwa { MASS(2) } (Bee Craft, September 2016)
weigh-sources-comb = 0,32 ± 0,03 kg/dm² beidseitig verdeckelter Wabe: Schwedischer Imkerverband 0,30, Wiki der Bienen-Zeitung 0,35
