## Der Winter erzählt, als Film.

tell-page-heading = Der Winter erzählt
tell-page-take = Als eine Datei mitnehmen
tell-page-of-hive = Der Winter von { $hive }
tell-page-of-hives = Der Winter von { NUMBER($hives) } Völkern
tell-page-lead = Ab dem { DAY($from, style: "full") } ist der Deckel zu. Was darunter vorgeht, gerechnet bis zum { DAY($to, style: "full") }: bis zum { DAY($today, style: "full") } mit dem, was notiert wurde, danach, wie es kommen kann.
tell-page-invented = Völker und Notizen sind erfunden.
tell-page-foretold = Vorhergesagt am { DAY($on) }: im Frühjahr leben { NUMBER($alive) } von 100 solchen Völkern; { $food }.
tell-page-seen-dead = Bis zum { DAY($on) } wurde es tot gesehen.
tell-page-came = Am { DAY($on) }: es leben { NUMBER($alive) } von 100 solchen Völkern. { SENTENCE($about) }
tell-page-food = Futter { MASS($stands, digits: 1) }; vorhergesagt für diesen Tag { MASS($low, digits: 1) } bis { MASS($high, digits: 1) }: { $came ->
    [less] weniger als vorhergesagt
    [as-foretold] wie vorhergesagt
   *[more] mehr als vorhergesagt
}.
tell-page-to-spring = Bis zum Frühjahr: lebend, mit Futter und Königin in { NUMBER($alive) } von 100.
