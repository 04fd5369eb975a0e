## Ein Winter im Rückblick.

season-frames-of-stores = Futterwaben
season-syrup-3-to-2 = Sirup 3:2
season-syrup-2-to-1 = Sirup 2:1
season-syrup-1-to-1 = Sirup 1:1
season-fondant = Futterteig
season-candy = Zuckertafel
season-sugar = trockener Zucker

season-known-frames = Waben gezählt
season-known-scale = gewogen
season-known-two-sided-lift = beide Seiten angehoben
season-known-heft = von Hand angehoben
season-known-stated = wie angegeben

season-mites-not-counted = nicht gezählt
season-mites = { NUMBER($found) } auf { NUMBER($bees) } Bienen, { $on }

season-queen = von { NUMBER($year) }, { $seen ->
    [yes] gesehen oder in Eilage
    [no] nicht gesehen, keine Eier
   *[not-looked-for] nicht gesucht
}
season-queen-year-unknown = Jahr nicht bekannt, { $seen ->
    [yes] gesehen oder in Eilage
    [no] nicht gesehen, keine Eier
   *[not-looked-for] nicht gesucht
}
season-queen-mated-late = { $queen }, spät begattet
