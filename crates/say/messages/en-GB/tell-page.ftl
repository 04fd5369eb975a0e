## The winter told, as a film.

tell-page-heading = The winter told
tell-page-take = Take it along as one file
tell-page-of-hive = The winter of { $hive }
tell-page-of-hives = The winter of { NUMBER($hives) } hives
tell-page-lead = The lid is shut from { DAY($from, style: "full") } on. What goes on beneath it, reckoned to { DAY($to, style: "full") }: up to { DAY($today, style: "full") } with what was noted, after that as it may come.
tell-page-invented = The hives and their notes are invented.
tell-page-foretold = Foretold on { DAY($on) }: alive in spring in { NUMBER($alive) } of 100 such hives; { $food }.
tell-page-seen-dead = By { DAY($on) } it was seen dead.
tell-page-came = On { DAY($on) }: alive in { NUMBER($alive) } of 100 such hives. { SENTENCE($about) }
tell-page-food = Food { MASS($stands, digits: 1) }; foretold for that day { MASS($low, digits: 1) } to { MASS($high, digits: 1) }: { $came ->
    [less] less than foretold
    [as-foretold] as foretold
   *[more] more than foretold
}.
tell-page-to-spring = To spring: alive, fed and queenright in { NUMBER($alive) } of 100.
