## Un regard en arrière sur un hiver.

season-frames-of-stores = cadres de provisions
season-syrup-3-to-2 = sirop 3:2
season-syrup-2-to-1 = sirop 2:1
season-syrup-1-to-1 = sirop 1:1
season-fondant = candi
season-candy = sucre en plaque
season-sugar = sucre sec

season-known-frames = cadres comptés
season-known-scale = pesée
season-known-two-sided-lift = soulevée des deux côtés
season-known-heft = soupesée à la main
season-known-stated = comme déclaré

season-mites-not-counted = pas comptés
season-mites = { NUMBER($found) } sur { NUMBER($bees) } abeilles, { $on }

season-queen = de { NUMBER($year) }, { $seen ->
    [yes] vue ou en ponte
    [no] pas vue, pas d’œufs
   *[not-looked-for] pas cherchée
}
season-queen-year-unknown = année inconnue, { $seen ->
    [yes] vue ou en ponte
    [no] pas vue, pas d’œufs
   *[not-looked-for] pas cherchée
}
season-queen-mated-late = { $queen }, fécondée tard
