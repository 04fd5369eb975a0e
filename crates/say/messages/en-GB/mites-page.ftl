## The page "Mites": the yard's counts, and when a treatment can work.

mites-page-heading = Mites
mites-page-nobody = Nobody has counted in this yard. Seeing no mites says little: of samples of 100 bees 37 in 100 show none where 1 bee in 100 carries one.
mites-page-noted = Mites washed off bees are noted at the hive, such as <code>mites=14 of 300</code>; the last count stands here.

mites-page-one = { $colony }: { $verdict }.
mites-page-table = Mites, the worst first
mites-page-caption = Mites per 100 bees, the worst first, and between what 95 of 100 such samples leave it; the line is { $line } ({ $region }: { $source })
mites-page-colony = Colony
mites-page-counted = Counted
mites-page-rate = Per 100
mites-page-against = Against the line
mites-page-found = { NUMBER($found) } in { NUMBER($bees) }
mites-page-found-on = { NUMBER($found) } in { NUMBER($bees) }, { DAY($on, style: "marked") }
mites-page-rate-of = { NUMBER($rate, digits: 1) } ({ NUMBER($low, digits: 1) } to { NUMBER($high, digits: 1) })
mites-page-treated = { $verdict }; treated since, on { DAY($on) }: count again
mites-page-more = More of it, other lines, and says who
mites-page-line = { $region }: { $line } ({ $source })
mites-page-uncounted = <span class="label">Not counted</span> { LIST($colonies) }. They may be the worst.

mites-page-windows = When a treatment can work here
mites-page-begun = Begun by { DAY($safe, style: "marked") } to be safe
mites-page-begun-usual = Begun by { DAY($safe, style: "marked") } to be safe ({ DAY($usual, style: "marked") } is in time in half of all years)
mites-page-done = Done before about { DAY($on, style: "marked") }
mites-page-spares = { $begun }, a treatment spares the brood that becomes winter bees; each week later spares less of it, and after about { DAY($none, style: "marked") } none: then it protects the neighbours and next year's bees, not bees already hurt. A treatment in November alone is no cure for this winter.
mites-page-classes = Class by class
mites-page-class = { SENTENCE($says) } { CAPITAL($brood) }; { $supers }. { CAPITAL($weather) }.
mites-page-days = Days are from this site's weather, 8 in 10 between those in brackets.
