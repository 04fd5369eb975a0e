## L’hiver raconté, comme un film.

tell-page-heading = L’hiver raconté
tell-page-take = L’emporter en un seul fichier
tell-page-of-hive = L’hiver de { $hive }
tell-page-of-hives = L’hiver de { NUMBER($hives) } ruches
tell-page-lead = Le couvercle est fermé à partir du { DAY($from, style: "full") }. Ce qui se passe dessous, calculé jusqu’au { DAY($to, style: "full") } : jusqu’au { DAY($today, style: "full") } avec ce qui a été noté, après comme cela peut venir.
tell-page-invented = Les ruches et leurs notes sont inventées.
tell-page-foretold = Prédit le { DAY($on) } : vivantes au printemps, { NUMBER($alive) } ruches pareilles sur 100 ; { $food }.
tell-page-seen-dead = Le { DAY($on) } au plus tard, elle a été vue morte.
tell-page-came = Le { DAY($on) } : vivantes, { NUMBER($alive) } ruches pareilles sur 100. { SENTENCE($about) }
tell-page-food = Nourriture { MASS($stands, digits: 1) } ; prédit pour ce jour { MASS($low, digits: 1) } à { MASS($high, digits: 1) } : { $came ->
    [less] moins que prédit
    [as-foretold] comme prédit
   *[more] plus que prédit
}.
tell-page-to-spring = Jusqu’au printemps : en vie, nourries et avec reine, { NUMBER($alive) } sur 100.
