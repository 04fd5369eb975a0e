## Der Winter erzählt, als Film.

tell-page-heading = Der Winter erzählt
tell-page-take = Als eine Datei mitnehmen
tell-page-of-hive = Der Winter von { $hive }
tell-page-of-hives = Der Winter von { NUMBER($hives) } Völkern
tell-page-lead = Ab dem { DAY($from, style: "full") } ist der Deckel zu. Was darunter vorgeht: bis zum { DAY($today, style: "full") } mit den Notizen, bis zum { DAY($to, style: "full") }, wie es kommen kann.
tell-page-invented = Völker und Notizen sind erfunden.
tell-page-foretold = Vorhergesagt am { DAY($on) }: { NUMBER($alive) } von 100 leben im Frühjahr; { $food }.
tell-page-seen-dead = Bis zum { DAY($on) } wurde es tot gesehen.
tell-page-came = Am { DAY($on) }: { NUMBER($alive) } von 100 leben. { SENTENCE($about) }
tell-page-food = Futter { MASS($stands, digits: 1) }; vorhergesagt { MASS($low, digits: 1) } bis { MASS($high, digits: 1) }: { $came ->
    [less] weniger
    [as-foretold] so kam es
   *[more] mehr
}.
tell-page-to-spring = Bis zum Frühjahr: lebend, mit Futter und Königin in { NUMBER($alive) } von 100.
