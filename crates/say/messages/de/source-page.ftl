## Die Seite „Woher die Zahlen kommen“.

source-page-heading = Woher die Zahlen kommen
source-page-lede = Jede Zahl, auf der die Antworten beruhen: in einer genannten Veröffentlichung gelesen, übliche Praxis, aus der Erinnerung, oder eigene Einschätzung. Namen, Bedeutung und Quellen stehen auf Englisch da, wie in den Dateien des Programms.
source-page-find = Suchen nach
source-page-look = Suchen
source-page-title = { $file ->
    [winter_parameters] Das Wintermodell
    [winter_start] Wie ein Volk ins Wintermodell kommt
    [winter_hour] Eine Stunde und ein Tag des Wintermodells
    [watch_parameters] Was Zeichen sagen
    [watch_looks] Rundgänge und die Tage dazwischen
    [now] Worte und Deckel
    [indoors] Räume, in denen Völker überwintern
    [jobs] Arbeiten und Termine
    [spring_strength] Stärke im Frühjahr
    [weighing] Wiegen
    [empty_hive] Die leere Beute
    [edge_losses] Kanten der Beute
    [openings] Öffnungen
    [materials] Werkstoffe
    [feeds] Futter
    [fit] Bereit für den Winter
    [rules_of_thumb] Faustregeln der Imkerei
    [deadout] Tote Völker
    [losses] Verluste und Lehren
    [weather_generator] Wie Wetter gemacht wird
    [weather_limits] Wetter gelesen, ergänzt und beurteilt
    [wind] Wind an den Beuten
    [weather_files] Orte von Wetterdateien
    [looking_ahead] Wie weit Antworten vorausschauen und gelten
    [calibration] Das Modell an wirklichen Wintern gemessen
    [drawing] Zeichnungen
    [quick_start] Die vier ersten Angaben
   *[other] Weitere Zahlen
}
source-page-file = { $title }, { NUMBER($figures) }
source-page-all = Alle Zahlen
source-page-meaning = Bedeutung
source-page-unit = Einheit
source-page-fact = { $fact ->
    [low] Eins von zehn darunter
    [high] Eins von zehn darüber
    [varies] Jedes gerechnete Volk zieht seinen eigenen
    [value] Wert
    [values] Werte
    [status] Stand
    [source] Quelle
    [name] Name
    [material] Stoff
    [region] Gegend
    [range] Spanne
    [size] Größe
    [length] Länge
    [width] Breite
    [depth] Tiefe
    [frames] Waben
    [combs] Waben
    [comb] Wabe
    [boxes] Zargen
    [box] Zarge
    [wall] Wand
    [wall_r] Wärmewiderstand der Wand
    [other] Die andere Seite
    [other_r] Wärmewiderstand der anderen Seite
    [edge] Kante
    [conductivity] Wärmeleitfähigkeit
    [density] Dichte
    [specific_heat] Spezifische Wärme
    [vapour_resistance] Dampfwiderstand
    [absorptance] Aufgenommenes Sonnenlicht
    [breathes] Atmet
    [days] Tage
    [months] Monate
    [hour] Stunde
    [year] Jahr
    [winter] Winter
    [from] Von
    [to] Bis
    [place] Ort
    [hive] Beute
    [colony] Volk
    [yard] Stand
    [yards] Stände
    [belief] Glaube
    [word] Wort
    [words] Wörter
    [prior] Vor jedem Blick
    [given] Gegeben
    [share] Anteil
    [cold] Kalt
    [cool] Kühl
    [mild] Mild
    [warm] Warm
    [heat] Wärme
    [sugar] Zucker
    [currency] Währung
    [entrance] Flugloch
    [upper_hole] Oberes Flugloch
    [lid] Deckel
    [wrap] Hülle
   *[none] { $written }
}
source-page-unit-of = { $unit ->
    [C] °C
    [day] Tag im Jahr
    [days] Tage
    [hours] Stunden
    [years] Jahre
    [share] von 1
    [chance] von 1, eine Wahrscheinlichkeit
    [times] mal
    [degrees] Grad
    [bees] Bienen
    [cells] Zellen
    [frames] Waben
   *[seams] Wabengassen
}
