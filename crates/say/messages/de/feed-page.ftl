## Die Seite „Füttern“: eine Einkaufsliste für den Stand, und Schilder für die Deckel.

feed-page-heading = Füttern
feed-page-no-table = Die Tabelle des Üblichen ist nicht lesbar.
feed-page-wrong = { $text }: bitte schreiben, was das Futtergeschirr fasst, etwa 6 { $unit }.
feed-page-stood = Wie am { DAY($on) } gezählt; dieser Tag ist vorbei: für heute siehe <a href="/">Der Stand</a>.
feed-page-lede = Was dem Stand am { DAY($on) } fehlte, damit 9 von 10 solchen Völkern mit Futter in Reichweite ins Frühjahr kommen.
feed-page-labels = Schilder für die Deckel
feed-page-of-each = Futter für jedes Volk

feed-page-none-short = Keinem Volk fehlt etwas: nichts zu kaufen.
feed-page-none = Nichts zu kaufen.
feed-page-too-late = <strong>{ MASS($fondant, digits: 1, us: 0) } Futterteig</strong>, oder ebenso viel feuchter Zucker. Der Tag für Sirup war hier etwa der { DAY($on, style: "marked") }; die Bienen können ihn nicht mehr eindicken.
feed-page-buy-sugar = <strong>{ MASS($sugar, digits: 1, us: 0) } weißer Zucker</strong>, das gibt { VOLUME($syrup, digits: 1) } Sirup 3:2. Er muss fertig sein, nicht begonnen: bis zum { DAY($safe, style: "marked") }, um sicher zu sein (der { DAY($usual, style: "marked") } reicht in der Hälfte aller Jahre){ $left ->
    [days] ; { NUMBER($days) } Tage bleiben dafür.
    [past] ; der sichere Tag ist vorbei.
   *[not-told] .
}
feed-page-buy-fondant = <strong>{ MASS($fondant, digits: 1, us: 0) } Futterteig</strong>, oder ebenso viel feuchter Zucker, für das, was kein Futtergeschirr rechtzeitig gibt.
feed-page-buy-later = Bereithalten für das Wiegen mitten im Winter, weil der Bedarf weit über der Regel hier liegt: { MASS($fondant, digits: 1, us: 0) } Futterteig.
feed-page-spared = Waben aus schweren, gesunden Völkern dieses Standes können { MASS($food, digits: 1, us: 0) } der fehlenden Vorräte ersetzen; jede Wabe ist einmal gezählt.

feed-page-hive = Volk
feed-page-short = Fehlt
feed-page-fondant = Futterteig
feed-page-or-candy = Oder feuchter Zucker
feed-page-sugar = Zucker
feed-page-water = Wasser
feed-page-syrup = Sirup 3:2
feed-page-feeders = Füllungen
feed-page-begin-by = Beginnen bis
feed-page-or-frames = Oder Waben
feed-page-feed = Füttern
feed-page-mass = { MASS($mass, digits: 1, us: 0) }
feed-page-volume = { VOLUME($volume, digits: 1) }
feed-page-fills = { NUMBER($fills, digits: 1) }
feed-page-not-now = jetzt nichts; mitten im Winter wiegen, mit { MASS($fondant, digits: 1, us: 0) } Futterteig bereit
feed-page-candy = { MASS($candy, digits: 1, us: 0) }, { LENGTH($thick, us: 1) } dick
feed-page-solid = { MASS($fondant, digits: 1, us: 0) } Futterteig: kein Futtergeschirr ist jetzt schnell genug für Sirup
feed-page-sugar-and-fondant = { MASS($sugar, digits: 1, us: 0) }, und { MASS($fondant, digits: 1, us: 0) } Futterteig
feed-page-begin = { DAY($on, style: "marked") } mit { $feeder }
feed-page-begins = { LIST($feeders, between: "; ") }
feed-page-frames = { NUMBER($frames) } von { $hive } ({ MASS($food, digits: 1, us: 0) })
feed-page-no-frames = keine übrig
feed-page-feeder = Angenommen ist ein Futtergeschirr von { VOLUME($feeder, digits: 1) }.

feed-page-label-weigh = Mitten im Winter wiegen
feed-page-label-at-hand = Mit { MASS($fondant, digits: 1, us: 0) } Futterteig bereit.
feed-page-label-fondant = Futterteig { MASS($fondant, digits: 1, us: 0) }
feed-page-label-over = Direkt über die Bienen, ein Weg darum frei gelassen.
feed-page-label-syrup = Sirup 3:2, { VOLUME($syrup, digits: 1) }
feed-page-label-mix = { MASS($sugar, digits: 1, us: 0) } Zucker in { VOLUME($water, digits: 1) } Wasser, nach Gewicht.
feed-page-label-and-fondant = Und { MASS($fondant, digits: 1, us: 0) } Futterteig: für den Rest ist es zu spät für Sirup.
feed-page-label-by = Fertig bis zum { DAY($on, style: "marked") }.
feed-page-label-later = Mitten im Winter wiegen, mit { MASS($fondant, digits: 1, us: 0) } Futterteig bereit.
feed-page-label-given = Gegeben: ________  ________  ________

feed-page-holds = Was das Futtergeschirr fasst, { $is-us ->
    [yes] Gallonen
   *[no] Liter
}
feed-page-reckon = Füllungen rechnen

feed-page-cups = Tassen sind keine Kilogramm
feed-page-cups-thin = Geschütteter Zucker ist leichter als Wasser, also geben Tassen dünneren Sirup als dieselben Zahlen nach Gewicht.
feed-page-cups-are = { $volumes } nach Tassen ist { NUMBER($weight, digits: 2) }:1 nach Gewicht, { NUMBER($percent) } % Zucker, nicht { NUMBER($meant) } %.
feed-page-spring = 1:1 ist fürs Frühjahr, sobald die Bienen täglich fliegen und eintragen.
feed-page-slab = Ein Fladen über den Bienen
feed-page-slab-laid = { LENGTH($thick) } dick über eine ganze Zarge ({ $hive }) gelegt:
feed-page-slab-of = { CAPITAL($what) }: { MASS($mass, digits: 1, us: 0) }, nährt so viel wie { MASS($honey, digits: 1, us: 0) } Honig.
feed-page-before = Vor dem Füttern
feed-page-never = Nicht zu füttern
feed-page-never-of = { CAPITAL($what) }: { $why }.
