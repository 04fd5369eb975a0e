## Ob ein Volk winterfest ist: sechs Maße, ein Urteil mit seinen Gründen, und was der Stand braucht.

fit-what = { $what ->
    [bees] Bienen
    [brood] Brut
    [stores] Vorräte
    [queen] Königin
    [mites] Milben
   *[hive] Beute
}
fit-stands = { $stands ->
    [not-known] nicht bekannt
    [no-range] hier ist keine übliche Spanne bekannt
    [under] unter dem Üblichen
    [perhaps-under] vielleicht unter dem Üblichen
    [perhaps-over] vielleicht über dem Üblichen
    [over] über dem Üblichen
   *[usual] üblich
}
fit-stands-short = { $stands ->
    [not-known] nicht bekannt
    [no-range] hier ist keine übliche Spanne bekannt
    [under] darunter
    [perhaps-under] vielleicht darunter
    [perhaps-over] vielleicht darüber
    [over] darüber
   *[usual] üblich
}
fit-verdict = { $kind ->
    [stop] Halt: zuerst die Faulbrut
    [shake-out] abkehren
    [unite] vereinigen
    [look-again] noch einmal nach Eiern sehen
    [wait] auf einen milden Tag warten
    [treat] zuerst die Milben
    [boost] mit verdeckelter Brut verstärken
    [company] warme Nachbarschaft
   *[alone] allein überwintern
}
fit-verdict-queen = { $queen }: { $verdict }
fit-unfed = Knapp, doch nicht auf dieser Liste, da ihre Bienen zu anderen kommen oder abgekehrt werden: { LIST($names) }.

fit-parts = { LIST($parts, between: "; ") }
fit-any-hive = jede Beute

fit-bees = etwa { COUNT($bees) } Bienen ({ COUNT($low) } bis { COUNT($high) }), auf { NUMBER($combs, digits: "all") } { $combs ->
    [one] Wabe
   *[other] Waben oder Wabengassen
} dieser Beute
fit-bees-hive = { $is-nucleus ->
    [yes] Ableger
   *[no] volle Beute
}
fit-bees-other = 4 Waben halten sich in einem Winter von sieben Monaten warm, wachsen im Frühling aber langsam (Hochland von Colorado) ({ $source })
fit-bees-unknown-air = die Lufttemperatur bei der Zählung ist nicht bekannt: Wabengassen morgens bei 5 bis 10 °C (41 bis 50 °F) zählen, wenn die Traube ihre Größe zeigt
fit-bees-warm = bei { TEMPERATURE($air) } gezählt: locker sitzende Bienen belegen mehr Wabengassen als eine Traube; bei 5 bis 10 °C (41 bis 50 °F) noch einmal zählen
fit-bees-cold = bei { TEMPERATURE($air) } gezählt: eine enge Traube belegt weniger Wabengassen, als ihre Bienen füllen könnten

fit-brood-not-looked = niemand hat nachgesehen
fit-brood-none = keine
fit-brood = etwa { NUMBER($frames, digits: 1) } große Waben voll verdeckelter Brut
fit-brood-region = dieser Standort zu dieser Zeit
fit-brood-usual = { NUMBER($low, digits: "all") } bis { NUMBER($high, digits: "all") } Waben, solange die Tage { TEMPERATURE($warmth) } erreichen
fit-brood-look = nach verdeckelter Brut in geschlossenen Flächen sehen, Eiern daneben, keinen eingesunkenen, durchlöcherten oder fadenziehenden Zellen; Drohnen in Arbeiterinnenzellen heißen: die Königin versagt

fit-stores = { MASS($food, digits: 1) } ({ MASS($low, digits: 1) } bis { MASS($high, digits: 1) }); für dieses Volk hier berechnet: { MASS($need, digits: 1) }{ $is-short ->
    [yes] , also fehlen { MASS($short, digits: 1) }
   *[no] {""}
}
fit-stores-nucleus-region = Nordamerika
fit-stores-nucleus = 14 lb (6,4 kg) oder mehr in vier Rähmchen voller Größe
fit-stores-boxes = { $boxes ->
    [one] eine Zarge
   *[other] { $boxes } Zargen
}
fit-stores-region = dieser Standort
fit-stores-no-rule = für Vorräte allein ist hier keine Regel der Imkerei bekannt; der berechnete Bedarf steht dafür
fit-stores-computed = aus dem Wetter dieses Standorts berechnet: 9 von 10 erreichen das Frühjahr mit Futter in Reichweite
fit-stores-whole-hive = { $region }: { $says } ({ $source }); das ist kein Gewicht der Vorräte
fit-stores-honeydew = Honigtau: seine Mineralstoffe bringen Bienen, die monatelang nicht fliegen können, zum Abkoten in der Beute; fürs Frühjahr aufheben und jetzt Zucker darüber füttern
fit-stores-heather = Heidehonig: bei langer Gefangenschaft verkoten sich Bienen daran; jetzt Zucker darüber füttern
fit-stores-hard = er wird hart: Bienen können daneben aus Wassermangel verhungern; Zucker zuletzt füttern, damit er zuerst gefressen wird

fit-queen-born = von { NUMBER($year) }
fit-queen-no-year = ihr Jahr ist nicht bekannt
fit-queen-late = { $born }, im August oder später begattet: solche Königinnen versagen öfter
fit-queen-introduced = in diesem Herbst zugesetzt: erst nach ihrer eigenen Brut sehen, dann ihr trauen
fit-queen-cast = ein später Schwarm: nur eigene verdeckelte Arbeiterinnenbrut beweist sie
fit-queen-region = überall
fit-queen-young = eine junge Königin, von diesem oder vom letzten Jahr
fit-queen-other = eine Königin mit zwei Wintern, die gut gelegt hat, behalten viele (übliche Praxis)
fit-queen-unseen = sie wurde nicht gesehen: nach Eiern oder verdeckelter Arbeiterinnenbrut sehen; { $too-late ->
    [yes] eine Königin, die nach etwa dem { DAY($last) } zugesetzt wird, gedeiht hier selten (Einschätzung): fehlt sie, vereinigen
   *[no] fehlt sie, hier bis etwa zum { DAY($last) } eine begattete Königin zusetzen (Einschätzung)
}

fit-mites-not-counted = niemand hat gezählt
fit-mites = { NUMBER($found) } auf { NUMBER($bees) } Bienen am { DAY($on) }: { NUMBER($rate, digits: 1) } auf 100 ({ NUMBER($low, digits: 1) } bis { NUMBER($high, digits: 1) }), { $verdict }
fit-mites-treated = { $says }; seither behandelt, die Zählung gilt also nicht mehr für das, was da ist
fit-mites-wash = 300 Bienen von einer Wabe mit offener Brut auswaschen. Keine Milben zu sehen sagt wenig: von Proben mit 100 Bienen zeigen 37 von 100 keine, wenn 1 von 100 Bienen eine trägt
fit-mites-again = im Oktober noch einmal zählen, ehe die Bienen um den { DAY($cluster) } die Traube bilden: Räuber bringen Milben heim

fit-hive-lid = { RESISTANCE($lid) } über den Bienen
fit-hive-region = kalte Länder
fit-hive-lids = R 0,9 bis 3,5 m² K/W (R 5 bis R 20) über den Bienen
fit-hive-sealed-top = andere dichten oben über der Dämmung ab und lassen kein oberes Flugloch; beide Schulen wollen keine kalte Fläche über der Traube
fit-hive-breathing-top = andere legen Stroh oder eine feuchtesaugende Platte unter einen belüfteten Deckel; beide Schulen wollen keine kalte Fläche über der Traube
fit-hive-excluder = das Absperrgitter herausnehmen: die Traube wandert nach oben und lässt die Königin darunter zurück
fit-hive-feeder = die leere Futterzarge abnehmen: ein kalter Hohlraum über der Traube
fit-hive-empty-super = den leeren Honigraum abnehmen: ein kalter Raum über der Traube
fit-hive-guard = ein Gitter mit Schlitzen bis { LENGTH(0.008, us: 2) } oder Löchern bis { LENGTH(0.009, us: 2) }
fit-hive-mice = das Flugloch ist { LENGTH($high, us: 2) } hoch, da kommen Mäuse durch: { $guard }
fit-hive-large = { NUMBER($combs) } Waben für Bienen auf { NUMBER($bees) }: wo Winter mild sind, wird der Raum auf die Bienen eingeengt, in Minnesota bleiben drei Zargen; eine leere Zarge über der Traube ist der schlechteste Platz dafür
fit-hive-lean = steht nicht in der Standdatei: nachsehen, dass sich die Beute etwas nach vorn neigt
fit-hive-not-noted = steht nicht in der Standdatei: ob noch Absperrgitter, Futtergeschirr oder ein leerer Honigraum aufliegt; nachsehen, auch dass sich die Beute etwas nach vorn neigt

fit-stop = bei { $name } alles schließen, keine Bienen, Waben oder Werkzeuge zwischen Völkern bewegen und vor allem anderen das Veterinäramt benachrichtigen
fit-stop-why = Anzeichen von Faulbrut wurden notiert; sie ist in den meisten Ländern anzeigepflichtig, und jede bewegte Wabe trägt sie weiter
fit-queen-first = diese Woche nach Eiern sehen; keine: { $too-late ->
    [yes] vereinigen, denn für eine neue Königin ist es hier zu spät
   *[no] bis etwa zum { DAY($last) } eine begattete Königin zusetzen, oder vereinigen
}. Sind Eier da: { $verdict }
fit-queen-first-why = keine Königin gesehen und keine Brut am { DAY($today) }: die Aussichten des Plans rechnen mit einer legenden Königin
fit-want-of-queen = von 100 solchen Völkern, so belassen, enden { NUMBER($end) } vor dem Frühjahr, weil eine Königin fehlt, und { NUMBER($come) } kommen mit einer ins Frühjahr
fit-sick-too = es ist auch krank ({ $why })
fit-too-late-for-queen = der letzte sinnvolle Tag, hier eine Königin zuzusetzen, war etwa der { DAY($last) } (Einschätzung)

fit-count-again = vor allem anderen noch einmal zählen: es wurde behandelt, aber bei so vielen Milben muss sich zeigen, dass es gewirkt hat; die nächste gute Zeit ist die brutfreie
fit-treat-late = jetzt im Rahmen von Etikett und Gesetz behandeln, den ganzen Stand an einem Tag, und in der brutfreien Zeit noch einmal, wenn die Zählung es verlangt
fit-treat = jetzt im Rahmen von Etikett und Gesetz behandeln, den ganzen Stand an einem Tag, ehe seine Winterbienen aufgezogen werden
fit-treat-why = { NUMBER($rate, digits: 1) } Milben auf 100 Bienen bei der letzten Zählung; die Schwelle ist { $line } ({ $region })
fit-viruses = das Modell rechnet Milben als kürzeres Leben der Bienen, an denen sie saugten, und weiß von Viren, die hier niemand gemessen hat, so gut wie nichts: bei so vielen Milben der Zählung mehr trauen als der Aussicht
fit-treat-by-chance = im Modell ändert eine Behandlung heute an diesem Winter nicht mehr als der Zufall
fit-treat-gain = im Modell bringt eine Behandlung heute { NUMBER($gain) } ± { NUMBER($plus-minus) } von 100 Völkern mehr ins Frühjahr, gefüttert mit dem, was ihnen fehlt
fit-already-hurt = seine Winterbienen sind ganz oder zum Teil aufgezogen: eine Behandlung jetzt schützt die Nachbarn und die Bienen des nächsten Jahres, nicht die schon geschädigten

fit-weak = etwa { COUNT($bees) } Bienen; mit weniger als { COUNT($company) } braucht ein Volk in einer { $country } Nachbarschaft
fit-together = zusammen im Modell: { NUMBER($come) } von 100 kommen als ein Volk ins Frühjahr
fit-unite = mit { $with } vereinigen
fit-boost = bis etwa zum { DAY($last) } eine Wabe mit verdeckelter Brut ohne ihre Bienen von { $giver } einhängen
fit-boost-gain = im Modell bringt eine Wabe mit verdeckelter Brut von { $giver } bei den beiden { NUMBER($gain) } ± { NUMBER($plus-minus) } von 100 Völkern mehr ins Frühjahr
fit-boost-by-chance = { $gain }: nicht mehr als der Zufall
fit-boost-too-late = für verdeckelte Brut ist es zu spät: sie muss vor etwa dem { DAY($cluster) } schlüpfen
fit-boost-none = kein gesundes Volk am Stand hat verdeckelte Brut übrig

fit-alone = { LIST($needs, between: ", und ") }
fit-alone-nothing = es braucht keine Hilfe eines anderen Volkes
fit-beside = neben oder über { $strong } stellen, Wand an Wand, um dessen Wärme zu teilen; versetzt wird eine Beute, wenn ihre Bienen nicht mehr fliegen
fit-no-company = es braucht einen starken Nachbarn zum Wärmen, und keiner ist hier dazu geeignet
fit-feed-to-rule = erst nach der Regel füttern, { MASS($food, digits: 1) } Vorräte, und mitten im Winter wiegen
fit-has-rule = es hat, was die Regel verlangt, und das Modell verlangt mehr: mitten im Winter wiegen
fit-feed = erst füttern: { MASS($food, digits: 1) } Vorräte fehlen
fit-once-fed = bekommt es, was ihm fehlt, leben { $chance } mit ihrer Königin
fit-chance = { $chance } kommen so lebend, mit Futter und Königin ins Frühjahr
fit-chance-ends = { $chance } kommen so lebend, mit Futter und Königin ins Frühjahr; die meisten, die sterben: { $cause }

fit-against-sick = es ist krank ({ $why }): ein krankes Volk kommt nie zu einem anderen
fit-against-none = kein gesundes, weiselrichtiges Volk am Stand, dessen Milben unter der Schwelle oder nachweislich behandelt sind, ist stärker: zwei schwache ergeben kein starkes
fit-against-late = es ist zu spät: nach etwa dem { DAY($last) } sitzen die Völker hier in der Traube und verschmelzen nicht mehr, im Dezember am wenigsten
fit-step-look = zuerst die Brut von { $weak } und { $strong } durchsehen; { $foulbrood }
fit-step-keep = bei { $strong } die Königin behalten; sicherstellen, dass in { $weak } keine Königin bleibt
fit-step-choose = die Königin von { $kept } behalten: die von { $gone } am Tag vorher suchen und entnehmen; lässt man die Bienen wählen, können beide verlorengehen
fit-step-choose-year = die Königin von { $kept } (von { NUMBER($year) }) behalten: die von { $gone } am Tag vorher suchen und entnehmen; lässt man die Bienen wählen, können beide verlorengehen
fit-step-paper = gegen Abend ein Blatt Zeitung mit einigen Schlitzen über { $strong } legen und die Zarge von { $weak } daraufsetzen
fit-step-frames = die Rähmchen passen nicht zueinander: die Bienen des schwachen in eine leere Zarge vom Maß des anderen über dem Blatt schütteln oder kehren, und was an Waben nicht passt, zurücklassen
fit-step-leave = eine Woche in Ruhe lassen, dann wegnehmen, was leer ist; der Platz des schwachen wird geräumt, damit Nachzügler zu einem Nachbarn gehen
fit-step-by = hier bis etwa zum { DAY($last) } ({ DAY($early) } bis { DAY($late) }) fertig sein, ehe sie die Traube bilden{ $is-close ->
    [yes] : also jetzt oder gar nicht
   *[no] {""}
}

fit-say-strong = Im Herbst stark heißt nicht sicher: große Völker ziehen die meisten Milben heran, und hier hat niemand gezählt.
fit-say-clean = Eine saubere Probe ist kein sauberes Volk: noch einmal zählen.
fit-say-robbed = Beraubt oder von Wespen bedrängt: das Flugloch auf ein bis zwei Bienenbreiten verschließen, zuletzt füttern und noch einmal wiegen.
fit-say-no-room = Mit dem, was fehlt, hätte es { MASS($wanted) }, und seine Waben fassen etwa { MASS($room) }, wenn den Bienen Platz bleibt: eine Zarge mit ausgebauten Waben geben, oder den Rest als Futterteig im Winter.
fit-say-nucleus = Ein Ableger wird zuerst gefüttert und zuerst geschützt: Flugloch eine Bienenbreite.
fit-say-feeding = Beim Füttern: erst die Fluglöcher, Ableger und schwache Völker zuerst, alle an einem Abend.
fit-say-mites-now = Milben jetzt: eine Behandlung nach etwa dem { DAY($all) } kommt für einen Teil der Winterbienen zu spät, nach etwa dem { DAY($none) } für alle. Sie schützt die Nachbarn und die Bienen des nächsten Jahres, nicht die schon geschädigten; eine Behandlung im November allein heilt diesen Winter nicht.
fit-say-count-again = Ein zweites Mal im Oktober zählen, ehe die Bienen um den { DAY($cluster) } die Traube bilden: Räuber bringen Milben aus sterbenden Völkern heim.
fit-say-queens = Königinnen: der letzte sinnvolle Tag, hier eine zuzusetzen, ist etwa der { DAY($last) } ({ DAY($early) } bis { DAY($late) }), nach dem letzten Flugwetter dieses Standorts; Einschätzung. Eine unbegattete danach heißt vereinigen.
fit-say-uniting = Vereinigen: hier bis etwa zum { DAY($last) }, das schwache auf das starke, und nie mit etwas Krankem. Schwach auf schwach wird nicht stark.
fit-say-left-on = Die Standdatei sagt von keiner Beute, ob noch ein Absperrgitter, ein Futtergeschirr oder ein leerer Honigraum aufliegt. Vor dem ersten Frost nachsehen.

fit-window = kann noch wirken, wenn hier bis etwa zum { DAY($last) } ({ DAY($early) } bis { DAY($late) }) begonnen; schützt die Bienen dieses Winters nur vor etwa dem { DAY($winter-bees) }
fit-window-hot = { $window }; von den { NUMBER($days) } Tagen, die davon bleiben, sind { NUMBER($hot) } zu heiß
fit-window-past = der letzte Tag, hier zu beginnen, war etwa der { DAY($last) }; er ist vorbei
fit-window-no-broodless = aus den Tagen dieses Plans ergibt sich keine brutfreie Zeit: vor dem Behandeln nachsehen
fit-window-broodless = kein Volk hat Brut von etwa dem { DAY($from) } bis etwa zum { DAY($until) }
fit-window-look = { $window }; kein Tag ist in neun von zehn Wintern brutfrei: vor dem Behandeln nachsehen
fit-window-sure = { $window }, in 9 von 10 Wintern zumindest vom { DAY($from) } bis zum { DAY($until) }: von diesen { NUMBER($days) } Tagen sind etwa { NUMBER($mild) } mild genug
