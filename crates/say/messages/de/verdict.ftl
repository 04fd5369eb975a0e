## Das eine Urteil über ein Volk: wie bald, was zu tun ist, warum, und was später kommt.

verdict-today = heute
verdict-this-week = diese Woche
verdict-by = bis { DAY($on, style: "short") }
verdict-look-inside = hineinsehen
verdict-leave-alone = belassen
verdict-lost = verloren

verdict-amount = { $amount }: { $task }
verdict-step-by = { $task }, bis zum { DAY($by) }
verdict-nothing-due = nichts steht an
verdict-nothing-due-but = nichts steht an; { LIST($why) }
verdict-why = { LIST($why) }

verdict-tell-inspector = Anzeichen von Faulbrut: schließen, nichts bewegen, Veterinäramt benachrichtigen
verdict-let-out = die Beute öffnen: die Bienen sind eingesperrt
verdict-clear-openings = die Öffnungen von Eis und toten Bienen freimachen
verdict-close-dead = tot: gegen Räuber schließen, nach der Ursache sehen
verdict-count-mites = Milben zählen (300 Bienen); über der Schwelle alle behandeln
verdict-count-mites-again = Milben vor der Traube neu zählen
verdict-treat-mites = über der Milbenschwelle: alle an einem Tag behandeln, nach Etikett
verdict-treat-once-broodless = gegen Milben behandeln, wenn ein Blick keine Brut zeigt, nach Etikett
verdict-treat-broodless = in der brutfreien Zeit gegen Milben behandeln, nach Etikett und Gesetz
verdict-look-for-eggs = nach Eiern sehen; wenn keine, umweiseln oder vereinigen
verdict-queen-look-again = { $trouble }: nach Eiern sehen
verdict-queen-wait = { $trouble }: nichts in der Kälte; hineinsehen, wenn es mild ist
verdict-queen-shake-out = { $trouble }: an einem warmen Tag abkehren, keine Königin zusetzen
verdict-queen-join-or-give = { $trouble }: { $join } oder eine begattete Königin zusetzen
verdict-queen-join = { $trouble }: { $join }, zu spät für eine Königin
verdict-unite-it = vereinigen
verdict-unite = mit { $with } vereinigen
verdict-give-brood = eine Wabe mit verdeckelter Brut von { $from } geben
verdict-set-beside = neben { $with } stellen, Wand an Wand, sobald die Bienen nicht mehr fliegen
verdict-feed-syrup = mit Sirup beginnen, 3:2
verdict-feed-thin-syrup = dünner Sirup, 1:1, etwa { VOLUME(0.001, us: 1) } auf einmal
verdict-feed-solid = Futterteig direkt über die Bienen
verdict-bring-near = die fernen Vorräte neben die Bienen hängen
verdict-insulate-lid = { LENGTH(0.05) } Schaumdämmung auf den Innendeckel legen
verdict-wrap = die Wände mit Dachpappe umwickeln
verdict-close-mesh = den Bodenschieber unter das Gitter schieben
verdict-listen = an der Wand horchen; still: an einem milden Tag hineinsehen
verdict-look-in = am ersten milden Tag hineinsehen
verdict-see-food = anheben oder wiegen: das Futter entscheidet
verdict-see-food-near = am ersten milden Tag sehen, dass Futter die Bienen berührt
verdict-see-size = am ersten milden Tag die Wabengassen mit Bienen zählen: die Größe entscheidet
verdict-see-queen = am ersten milden Tag nach Eiern sehen: die Königin entscheidet
verdict-see-mites = am ersten milden Tag hineinsehen und Milben zählen: sie entscheiden

verdict-why-seen-dead = tot gesehen
verdict-why-put-to = zu { $into } gegeben
verdict-why-foulbrood = Anzeichen von Faulbrut
verdict-why-shut-in = die Bienen sind eingesperrt
verdict-why-blocked = eine Öffnung verstopft
verdict-why-queen-in-doubt = Königin in Zweifel
verdict-why-life-in-doubt = vielleicht tot
verdict-why-mites-not-counted = Milben nicht gezählt
verdict-why-mites = { NUMBER($per-100) } { $per-100 ->
    [one] Milbe
   *[other] Milben
} auf 100
verdict-why-hungry = hungrig ab { DAY($from, style: "short") }
verdict-why-little-left = wenig bis zum Frühjahr
verdict-why-food-not-weighed = Futter nicht gewogen
verdict-why-few-bees = wenige Bienen
verdict-why-ends-of = die meisten verloren: { $cause }
verdict-why-sign = ein Zeichen verlangt einen Blick

verdict-later-count-mites = { DAY($on, style: "short") } Milben noch einmal zählen
verdict-later-guards = { DAY($on, style: "short") } Mäusegitter an, Absperrgitter und Futtergeschirr ab
verdict-later-broodless = { DAY($on, style: "short") } keine Brut: behandeln, wenn eine Zählung es verlangt
verdict-later-weigh = { DAY($on, style: "short") } jedes Volk wiegen oder anheben
verdict-later-look-through = { DAY($on, style: "short") } durchsehen, erste Blüten
