## Die Seite „Woher die Zahlen kommen“.

source-page-heading = Woher die Zahlen kommen
source-page-lede = Jede Zahl, auf der die Antworten beruhen: in einer genannten Veröffentlichung gelesen, übliche Praxis, aus der Erinnerung, oder eigene Einschätzung.
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
    [mites] Milben
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
source-page-low = Eines von zehn darunter
source-page-high = Eines von zehn darüber
source-page-varies = Jedes gerechnete Volk zieht seinen eigenen
source-page-value = Wert
source-page-unit = Einheit
source-page-status = Art
source-page-source = Quelle
source-page-all = Alle Zahlen
