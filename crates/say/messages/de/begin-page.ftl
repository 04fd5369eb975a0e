## Die Seite „Der eigene Stand“.

begin-page-heading = Der eigene Stand
begin-page-lede = Die Beute ausstatten, wie sie steht. Was nicht gesagt ist, wird angenommen, grau, und lässt sich später berichtigen.
begin-page-kept-already = { $yard } liegt hier schon. Für einen anderen Stand eine Datei speichern und <code>snowhum serve --apiary my-yard.toml</code> starten.
begin-page-to-mend = { $faults ->
    [one] Eines ist zu berichtigen
   *[other] Einiges ist zu berichtigen
}
begin-page-whose = { $hive }: { SENTENCE($fault) }
begin-page-same-name = Der jetzt gezeigte Stand heißt so; dem eigenen einen anderen Namen geben.
begin-page-no-town = Die Stadt wählen, die den Beuten am nächsten liegt, oder darunter deren eigenen Ort schreiben.

begin-page-begin = Beginnen
begin-page-name = Wie der Stand heißt
begin-page-last-looked = Der Tag des letzten Blicks
begin-page-town = Die nächste Stadt bei den Beuten
begin-page-choose = wählen
begin-page-far = Weit von all diesen, oder viel höher?
begin-page-latitude = Grad Nord
begin-page-longitude = Grad Ost; West ist negativ
begin-page-elevation = Höhe über dem Meer, { $unit }
begin-page-zone = Zeitzone, etwa Europe/Helsinki
begin-page-add = Ein Volk hinzufügen
begin-page-fewer = Ein Volk weniger
begin-page-save = Als Standdatei speichern

begin-page-hive = Volk { NUMBER($number) }
begin-page-my-yard = Mein Stand
begin-page-hive-name = Name
begin-page-kind = Art der Beute
begin-page-dress = Ausstatten
begin-page-show = So zeigen
begin-page-bees = Bienen
begin-page-food = Futter
begin-page-mites = Milben in einer Probe; leer, wenn nicht gezählt
begin-page-mites-of = Bienen in der Probe
begin-page-counted = Gezählt oder gewogen?
begin-page-frames = Waben, auf beiden Seiten mit Bienen besetzt
begin-page-weight = Futter ohne Beute und Bienen, { $unit }
begin-page-mites-on = Der Tag der Milbenprobe

begin-page-kept-one = Die Aufzeichnungen enthalten schon einen Stand; `snowhum serve` zeigt ihn. Für einen anderen Stand hier eine Datei speichern und `snowhum serve --apiary FILE` starten.
