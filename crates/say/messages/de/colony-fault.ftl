## Völker einer Standdatei, und die in einem neuen Herbst gezählten.

colony-fault-needs-name = dem Volk einen Namen geben, etwa name = "Alder"
colony-fault-needs-hive = seine Beute nennen, oder für einen schnellen Anfang ihre Art, etwa kind = "Langstroth 10"
colony-fault-hive-and-kind = steht neben kind
colony-fault-hive-and-kind-right = entweder den Namen der Beute angeben oder, für einen schnellen Anfang, ihre Art
colony-fault-of-hive = gehört zur Beute
colony-fault-of-hive-right = { $key } in die Tabelle [[hive]] schreiben
colony-fault-hive-right = eine Beute dieser Datei nennen, oder eine Tabelle [[hive]] für sie anfügen
colony-fault-hive-there = eine Beute mit dem Namen des Volkes ist schon beschrieben
colony-fault-hive-there-right = hive = "{ $name }" statt kind schreiben
colony-fault-same-hive = lebt in derselben Beute wie das Volk „{ $other }“
colony-fault-same-hive-right = jedem Volk eine eigene Beute geben; zwei in einer Zarge sind zwei Beuten nebeneinander

colony-fault-needs-bees = Gassen oder Waben mit Bienen zählen (frames_of_bees = 8), oder für einen schnellen Anfang strength = "middling"
colony-fault-needs-likeliest = neben der tiefsten und höchsten Zahl die wahrscheinlichste angeben
colony-fault-outside = liegt außerhalb der eigenen tiefsten und höchsten Zahl
colony-fault-outside-right = bees_low, bees und bees_high müssen steigen
colony-fault-crowded = { NUMBER($bees, digits: "all") } Bienen sind mehr als die etwa { NUMBER($hold) }, die auf die { NUMBER($combs) } Waben der Beute passen
colony-fault-crowded-right = noch einmal zählen, ohne die Bienen, die unten hängen, oder die Zargen der Beute berichtigen
colony-fault-frames-and-seams = steht neben seams_of_bees
colony-fault-frames-and-seams-right = eines von beiden angeben; sie zählen dieselben Bienen
colony-fault-frames = { NUMBER($frames, digits: "all") } ist mehr als die { NUMBER($combs) } Waben der Beute
colony-fault-frames-right = beidseitig besetzte Waben zählen, oder die Zargen der Beute berichtigen
colony-fault-no-brood = „{ $written }“ ist keine Menge Brut
colony-fault-brood-right = { LIST($words) }, "1.5 frames" oder "3000 cells" schreiben

colony-fault-needs-stores = wiegen (stores = "18 kg"), zählen (stores_frames = 6), oder für einen schnellen Anfang food = "fair"
colony-fault-two-ways = { $second } steht neben { $first }
colony-fault-two-ways-right = das Futter nur auf eine Art angeben
colony-fault-word = „{ $word }“ ist ein Wort, kein Gewicht
colony-fault-heavy = { MASS($food, digits: 1) } ist mehr, als die Waben dieser Beute fassen, { MASS($most) }
colony-fault-heavy-right = das Futter allein schreiben, ohne Beute und Bienen; oder die Zargen der Beute berichtigen
colony-fault-shares = die Anteile ergeben zusammen { NUMBER($sum, digits: 3) }
colony-fault-shares-right = sie zusammen 1 ergeben lassen, etwa { $example }

colony-fault-mites = { NUMBER($found) } Milben auf { NUMBER($bees) } Bienen kann nicht sein
colony-fault-mites-right = die gefundenen Milben und die Bienen der Probe schreiben
colony-fault-no-count = „{ $written }“ ist keine Milbenzählung mit ihrem Tag
colony-fault-no-count-right = mites = "2 of 300 on 2025-08-28" schreiben, oder mites = { $example }
colony-fault-not-counted = { $example } oder "not counted"
colony-fault-needs-count-day = den Tag der Zählung schreiben, etwa on = 2025-08-28
colony-fault-count-late = { $on } liegt nach dem Tag, an dem die Völker durchgesehen wurden
colony-fault-count-late-right = den Tag der Zählung schreiben
colony-fault-queen-year = { $year } kann nicht das Jahr einer { $now } lebenden Königin sein
colony-fault-queen-year-right = das Jahr schreiben, in dem sie geboren wurde, von { $oldest } bis { $youngest }
colony-fault-queen-year-such = etwa 2024
colony-fault-treatments = führt { NUMBER($treatments) } Behandlungen auf
colony-fault-treatments-right = die seit dem Sommer aufführen, höchstens { NUMBER($most) }
colony-fault-disorder = { $first } steht vor { $then }: nicht in der Reihenfolge
colony-fault-disorder-right = die früheste zuerst aufführen, oder das Datum berichtigen
colony-fault-needs-begun = den Tag schreiben, an dem sie begann, etwa on = 2025-09-15
colony-fault-needs-class = formic, thymol, oxalic, strips oder other schreiben
colony-fault-late = { $day } liegt nach as_of, { $as-of }
colony-fault-late-right = einen Tag bis { $as-of } schreiben, oder as_of verschieben
colony-fault-early = { $day } liegt lange vor as_of, { $as-of }
colony-fault-early-right = angeben, was zu dieser Saison gehört; das Jahr berichtigen

colony-fault-line-right = Bienen; Futter; Milben; Königin schreiben, etwa "Alder=8 frames; 14 kg; 3/300; laying"
colony-fault-short-line = „{ $line }“ sagt Bienen und Futter nicht
colony-fault-same-winter = { $as-of } gehört zu dem Winter, für den die Völker gezählt wurden, am { $counted }
colony-fault-same-winter-right = einen Tag des nächsten Herbstes schreiben; sein Jahr beginnt am { DAY($begins) }
colony-fault-none-counted = kein Volk ist gezählt
colony-fault-none-counted-right = die lebenden zählen
colony-fault-counted-twice = ist zweimal gezählt
colony-fault-counted-twice-right = einmal zählen
colony-fault-earlier = gezählt wurde am { $counted }, und die Aufzeichnungen halten den Herbst { $year }
colony-fault-earlier-right = den Stand der Aufzeichnungen nehmen, oder eine Datei jenes Herbstes
colony-fault-no-bees = „{ $written }“ sagt keine Zahl von Bienen
colony-fault-bees-right = die Waben schreiben, die sie besetzen, bis { NUMBER($most) }, oder weak, middling oder strong
colony-fault-no-food = „{ $written }“ ist kein Futter, das diese Beute fassen kann
colony-fault-food-right = das Futter allein schreiben, von 0 bis { MASS($most) }, ohne Beute und Bienen
colony-fault-after-look = { $on } liegt nach dem Tag der Durchsicht, { $as-of }
colony-fault-no-queen = „{ $written }“ sagt nichts von einer Königin
