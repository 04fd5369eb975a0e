## Milben in einer Probe.

mites-bees-in-sample = Bienen in der Probe
mites-days-of-board = Tage der Windel
mites-on-board = Milben auf der Windel
mites-region = die Region
mites-no-sample = keine Probe ist angegeben; gefundene Milben und geprüfte Bienen angeben
mites-two-ways = die Völker wurden auf verschiedene Arten gezählt; jede Art für sich abfragen
mites-swapped = { NUMBER($found) } { $found ->
    [one] Milbe lässt
   *[other] Milben lassen
} sich aus so kleiner Probe nicht lesen ({ NUMBER($bees) } Bienen); Fund und Bienen sind vielleicht vertauscht

mites-wash = Auswaschprobe
mites-roll = Puderzuckerprobe
mites-board = Windel
mites-a-day = Milben am Tag
mites-per-100-bees = Milben auf 100 Bienen

mites-under = unter der Schwelle
mites-likely-under = unter der Schwelle, aber eine Probe kann es nicht ausschließen
mites-near = nahe der Schwelle: bald noch einmal zählen
mites-likely-over = an oder über der Schwelle, soweit eine Probe es sagen kann
mites-over = über der Schwelle

mites-none-over = Keines liegt an oder über der Schwelle; { $worst } hat die meisten.
mites-one-over-though = { $colony } liegt an oder über der Schwelle, obwohl das Mittel des Standes darunter liegt: nach { $colony } richten, nicht nach dem Mittel.
mites-one-over = { $colony } liegt an oder über der Schwelle.
mites-several-over = { LIST($colonies, last: " und ") } liegen an oder über der Schwelle; { $worst } hat die meisten.
mites-too-few = { NUMBER($samples) } { $samples ->
    [one] Probe ist
   *[other] Proben sind
} zu wenig für eine Spanne um das Mittel des Standes.
mites-not-sampled = Nicht geprüfte Völker können schlimmer sein: an einem großen Stand { NUMBER($enough) } prüfen.

mites-together = Völker eines Standes gemeinsam behandeln: Verflug und Räuberei tragen Milben von Volk zu Volk.
mites-board-shows = Eine Windel zeigt, was fällt, nicht, was da ist: Ameisen, Wind und Brut verändern es. Wo es darauf ankommt, 300 Bienen auswaschen.
mites-take-from = Bienen aus dem Brutnest tragen etwa doppelt so viele Milben wie Bienen auf Honig; von einer Wabe mit offener Brut nehmen und darauf achten, dass die Königin nicht dabei ist.
mites-small-sample = Weniger als 200 Bienen sagen wenig: eine halbe US-Tasse, 118 mL, sind etwa 300.

mites-in-time = Die Winterbienen werden hier erst noch aufgezogen: eine bis zum { DAY($safe) } begonnene Behandlung schützt { $later ->
    [yes] diesen Winter (der { DAY($usual) } reicht in der Hälfte aller Jahre)
   *[no] diesen Winter
}. Eine später begonnene kommt für einen Teil von ihnen zu spät.
mites-safe-day-past = Der sichere Tag, hier eine Behandlung zu beginnen, der { DAY($safe) }, ist vorbei; der { DAY($usual) } reicht in der Hälfte aller Jahre. Jetzt beginnen: jede Woche später kommt für mehr der Winterbienen zu spät.
mites-being-raised = Die Winterbienen werden hier gerade aufgezogen, etwa vom { DAY($usual) } bis zum { DAY($raised) }: eine Behandlung jetzt ist für einen Teil von ihnen zu spät; sie schützt die übrigen, die Nachbarn und das nächste Jahr.
mites-raised = Die Winterbienen sind hier aufgezogen, die meisten etwa bis zum { DAY($raised) }: eine Behandlung jetzt schützt die Nachbarn und die Bienen des nächsten Jahres und rettet diese nicht mehr.
mites-count-monthly = Milben nehmen zu, solange Brut da ist: jeden Monat noch einmal zählen.

mites-july = Die Winterbienen werden bald aufgezogen: was vor ihnen geschieht, schützt diesen Winter.
mites-august = Die Winterbienen werden etwa ab Mitte August aufgezogen: was vorher geschieht, schützt diesen Winter; was danach geschieht, kommt für einen Teil von ihnen zu spät und schützt die Nachbarn und das nächste Jahr.
mites-september = Die Winterbienen werden gerade aufgezogen: eine Behandlung jetzt ist für einen Teil von ihnen zu spät; sie schützt die übrigen, die Nachbarn und das nächste Jahr.
mites-winter = Die Winterbienen sind aufgezogen: eine Behandlung jetzt schützt die Nachbarn und die Bienen des nächsten Jahres und rettet diese nicht mehr.
mites-any-month = Winterbienen werden von August bis Oktober aufgezogen: eine Behandlung vor ihnen schützt diesen Winter, eine danach die Nachbarn und das nächste Jahr.

mites-sources-intervals = Intervalle: Clopper und Pearson 1934, Wilson 1927, Garwood 1936
mites-sources-unevenness = Ungleichheit k = { NUMBER($k, digits: "all") }: Einschätzung ({ $source })
mites-sources-line = Schwelle: { $source } ({ $region })
mites-sources-found = Anteil gefunden: { $source }
mites-sources-sampling = Stichprobe: Lee, Moon, Burkness, Hutchison und Spivak 2010 (300 Bienen je Volk, 8 Völker je Stand)
