## Ein totes Volk untersucht: was jede Ursache ist und mit Waben und Vorräten macht, was zu jedem Zeichen gefragt wird, was noch zu tun ist.

deadout-table-sunken-cappings = Sind Brutdeckel eingesunken, fettig-dunkel oder mit ausgefransten Löchern?
deadout-table-sunken-cappings-seen = eingesunkene Deckel
deadout-table-ropy-larvae = Zieht eine tote Larve, mit einem Streichholz gerührt, einen Faden länger als 2 cm (3/4 in)?
deadout-table-ropy-larvae-seen = fadenziehende Larven
deadout-table-foul-smell = Riecht die Brut nach Leim oder Fäulnis?
deadout-table-foul-smell-seen = fauliger Geruch
deadout-table-black-scale = Klebt schwarzer Schorf fest an den unteren Zellwänden?
deadout-table-black-scale-seen = schwarzer Schorf

deadout-table-mites = Milben und die Viren, die sie tragen
deadout-table-mites-comb = verwenden: Milben sterben mit ihren Bienen; einfrieren schadet nicht
deadout-table-mites-stores = Bienen geben

deadout-table-starved = verhungert, kein Futter mehr
deadout-table-starved-comb = verwenden: die Toten ausbürsten und trocknen lassen
deadout-table-starved-stores = was übrig ist, Bienen geben

deadout-table-isolation = verhungert neben Futter, das es nicht erreichte
deadout-table-isolation-comb = verwenden: die Toten ausbürsten und trocknen lassen
deadout-table-isolation-stores = Bienen geben, wie sie sind

deadout-table-queen = eine Königin, die versagte
deadout-table-queen-comb = verwenden
deadout-table-queen-stores = Bienen geben

deadout-table-small = zu wenige Bienen, um sich warm zu halten
deadout-table-small-comb = verwenden: die Toten ausbürsten und trocknen lassen
deadout-table-small-stores = Bienen geben, wie sie sind

deadout-table-damp = Nässe unter dem Deckel
deadout-table-damp-comb = verwenden, was Bienen putzen können; den schlimmsten Schimmel ausschneiden
deadout-table-damp-stores = schimmelige oder gärende Vorräte: nein

deadout-table-dysentery = Ruhr, vielleicht Nosema
deadout-table-dysentery-comb = abkratzen; alte und verschmutzte Waben wegwerfen (Essigsäure oder Hitze desinfizieren und sind selbst eine Gefahr)
deadout-table-dysentery-stores = nicht unbehandelt an Bienen

deadout-table-mice = Mäuse
deadout-table-mice-comb = ausschneiden, was verschmutzt ist
deadout-table-mice-stores = verschmutzte Vorräte: nein

deadout-table-robbed = ausgeraubt
deadout-table-robbed-comb = verwenden, sobald die Brut angesehen ist
deadout-table-robbed-stores = nichts mehr da; was doch, Bienen nur geben, wenn die Brut sauber ist

deadout-table-poison = Vergiftung
deadout-table-poison-comb = Waben mit Pollen: nein
deadout-table-poison-stores = nein

deadout-table-other = etwas anderes
deadout-table-other-comb = die Brut noch einmal ansehen, bevor sie verwendet werden
deadout-table-other-stores = verschlossen halten, bis man es weiß

deadout-table-small-cluster = Ist die tote Traube klein, so groß wie eine Faust oder ein Softball?
deadout-table-hive-empty = Ist die Beute fast leer, ohne lebende und ohne tote Bienen?
deadout-table-hive-empty-yes = In der kalten Jahreshälfte ziehen Bienen selten aus. Eine leere Beute ist meist verebbt: eine nach der anderen flogen sie aus und kamen nicht zurück, und Milben sind der übliche Grund.
deadout-table-pile-of-dead = Liegt ein Haufen toter Bienen auf dem Boden, Tausende?
deadout-table-no-food = Ist nirgends in der Beute Honig?
deadout-table-food-near = Ist Honig eine Handbreit oder weniger von der toten Traube?
deadout-table-heads-in-cells = Stecken viele Bienen mit dem Kopf voran in leeren Zellen?
deadout-table-heads-in-cells-yes = Köpfe in Zellen beweisen keinen Hunger: Eine Traube, die durch Milben oder Kälte zu klein wurde, findet man ebenso.
deadout-table-spotty-brood = Ist verdeckelte Brut verstreut, mit Bienen, die beim Schlüpfen starben, die Zunge heraus?
deadout-table-white-crystals = Sind weiße, salzartige Kristalle an der Decke von Brutzellen? (Kot von Milben: sie waren da)
deadout-table-white-crystals-yes = Die Kristalle sagen, dass Milben da waren; sie beweisen nicht, dass Milben das Ende waren.
deadout-table-crumpled-wings = Gibt es tote Bienen mit verkrüppelten Flügeln oder kurzem Leib?
deadout-table-mites-over-line = War die letzte Zählung über 3 Milben auf 100 Bienen, oder zeigt eine halbe Tasse toter Bienen aus der Traube beim Auswaschen so viele?
deadout-table-died-before-midwinter = Ist es vor dem Jahreswechsel gestorben?
deadout-table-drone-cells = Ist Drohnenbrut in Arbeiterinnenzellen oder mehr als ein Ei in einer Zelle?
deadout-table-queen-cells = Gibt es Weiselzellen außerhalb ihrer Zeit?
deadout-table-queen-found = Ist die Königin unter den Toten?
deadout-table-droppings-inside = Sind innen, auf Rähmchen und Oberträgern, viele braune Streifen?
deadout-table-droppings-inside-yes = Streifen beweisen keine Nosema: nur ein Labor kann das sagen (Mussen 2011, University of California, Davis).
deadout-table-wet-mould = Sind Bienen und Waben nass oder schimmelig? (Schimmel wächst meist nach dem Tod)
deadout-table-wet-mould-yes = Schimmel hat sie nicht umgebracht: er wächst auf Bienen, die schon tot sind.
deadout-table-chewed-comb = Sind Waben weggenagt, mit Nest, Kot oder Geruch von Mäusen?
deadout-table-ragged-cappings = Sind Honigdeckel ausgefranst aufgerissen, mit Wachskrümeln auf dem Boden?
deadout-table-tongues-out = Starben viele auf einmal bei Flugwetter, die Zunge heraus, vielleicht in mehreren Beuten?
deadout-table-weak-in-autumn = War es im Herbst schwach, mit weniger Bienen als die Nachbarn?
deadout-table-light-in-autumn = War es im Herbst leicht oder nicht bis zu seinem Maß gefüttert?
deadout-table-queen-trouble = War seine Königin alt, spät im Jahr neu oder zweifelhaft?
deadout-table-long-cold = Gab es kurz davor eine lange Kältezeit?
deadout-table-pictures = Bilder
deadout-table-pictures-do = Bevor etwas bewegt wird: die Traube, beide Seiten der Waben, der Boden.
deadout-table-order = Reihenfolge
deadout-table-order-do = Von oben nach unten, der Boden zuletzt: was dort liegt, erzählt den ganzen Winter.
deadout-table-wash = Milben
deadout-table-wash-do = Eine halbe Tasse toter Bienen in Seifenwasser auswaschen und die Milben zählen. Aus der Traube nehmen, nicht vom Boden.
deadout-table-laboratory = Labor
deadout-table-laboratory-do = 30 bis 60 tote Bienen der Traube einfrieren. Nosema sagt nur ein Labor, und tote Bienen sagen womöglich anderes als lebende: in einer Studie widersprachen sich beide bei 36 von 100 Völkern, also wenn möglich beide einsenden.
deadout-table-wax-moth = Wachsmotte
deadout-table-wax-moth-do = Kälte tötet alle ihre Stadien: 2 Stunden bei -15 °C (5 °F), 3 bei -12 °C (10 °F), 4,5 bei -7 °C (19 °F), gezählt, sobald die Wabe selbst so kalt ist. Zwei Tage in der Tiefkühltruhe sind üblich; danach die Waben kalt und mottendicht halten.
