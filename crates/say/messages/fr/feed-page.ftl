## La page « Nourrir » : une liste d’achats pour le rucher, et des étiquettes pour les toits.

feed-page-heading = Nourrir
feed-page-no-table = La table de ce qui est habituel ne peut être lue.
feed-page-wrong = { $text } : écrire ce que tient le nourrisseur, par exemple 6 { $unit }.
feed-page-stood = Comme compté le { DAY($on) } ; ce jour est passé : pour aujourd’hui voir <a href="/">Le rucher</a>.
feed-page-lede = Ce qui manquait au rucher le { DAY($on) }, pour que 9 ruches pareilles sur 10 arrivent au printemps avec de la nourriture à portée.
feed-page-labels = Étiquettes pour les toits
feed-page-of-each = Nourriture de chaque ruche

feed-page-none-short = Aucune colonie n’est à court : rien à acheter.
feed-page-none = Rien à acheter.
feed-page-too-late = <strong>{ MASS($fondant, digits: 1, us: 0) } de candi</strong>, ou autant de sucre humide. Le jour du sirop était ici vers le { DAY($on, style: "marked") } ; les abeilles ne peuvent plus le mûrir.
feed-page-buy-sugar = <strong>{ MASS($sugar, digits: 1, us: 0) } de sucre blanc</strong>, qui fait { VOLUME($syrup, digits: 1) } de sirop 3:2. Il doit être fini, non commencé, d’ici le { DAY($safe, style: "marked") } pour être sûr (le { DAY($usual, style: "marked") } est encore à temps une année sur deux){ $left ->
    [days] ; il reste { NUMBER($days) } jours pour cela.
    [past] ; le jour sûr est passé.
   *[not-told] .
}
feed-page-buy-fondant = <strong>{ MASS($fondant, digits: 1, us: 0) } de candi</strong>, ou autant de sucre humide, pour ce qu’aucun nourrisseur ne donne à temps.
feed-page-buy-later = Sous la main pour la pesée du milieu de l’hiver, puisque le besoin dépasse de loin la règle d’ici : { MASS($fondant, digits: 1, us: 0) } de candi.
feed-page-spared = Des cadres de ruches lourdes et saines de ce rucher peuvent remplacer { MASS($food, digits: 1, us: 0) } des provisions qui manquent ; chaque cadre est compté une fois.

feed-page-hive = Ruche
feed-page-short = Manque
feed-page-fondant = Candi
feed-page-or-candy = Ou sucre humide
feed-page-sugar = Sucre
feed-page-water = Eau
feed-page-syrup = Sirop 3:2
feed-page-feeders = Nourrisseurs pleins
feed-page-begin-by = Commencer d’ici
feed-page-or-frames = Ou cadres
feed-page-feed = Donner
feed-page-mass = { MASS($mass, digits: 1, us: 0) }
feed-page-volume = { VOLUME($volume, digits: 1) }
feed-page-fills = { NUMBER($fills, digits: 1) }
feed-page-not-now = rien maintenant ; la peser au milieu de l’hiver, avec { MASS($fondant, digits: 1, us: 0) } de candi sous la main
feed-page-candy = { MASS($candy, digits: 1, us: 0) }, { LENGTH($thick, us: 1) } d’épaisseur
feed-page-solid = { MASS($fondant, digits: 1, us: 0) } de candi : aucun nourrisseur n’est maintenant assez rapide pour du sirop
feed-page-sugar-and-fondant = { MASS($sugar, digits: 1, us: 0) }, et { MASS($fondant, digits: 1, us: 0) } de candi
feed-page-begin = { DAY($on, style: "marked") } avec { $feeder }
feed-page-begins = { LIST($feeders, between: " ; ") }
feed-page-frames = { NUMBER($frames) } de { $hive } ({ MASS($food, digits: 1, us: 0) })
feed-page-no-frames = aucun à céder
feed-page-feeder = On compte avec un nourrisseur de { VOLUME($feeder, digits: 1) }.

feed-page-label-weigh = Peser au milieu de l’hiver
feed-page-label-at-hand = Avec { MASS($fondant, digits: 1, us: 0) } de candi sous la main.
feed-page-label-fondant = Candi { MASS($fondant, digits: 1, us: 0) }
feed-page-label-over = Juste au-dessus des abeilles, un passage laissé libre autour.
feed-page-label-syrup = Sirop 3:2, { VOLUME($syrup, digits: 1) }
feed-page-label-mix = { MASS($sugar, digits: 1, us: 0) } de sucre dans { VOLUME($water, digits: 1) } d’eau, en poids.
feed-page-label-and-fondant = Et { MASS($fondant, digits: 1, us: 0) } de candi : trop tard pour du sirop pour le reste.
feed-page-label-by = Fini d’ici le { DAY($on, style: "marked") }.
feed-page-label-later = Peser au milieu de l’hiver, avec { MASS($fondant, digits: 1, us: 0) } de candi sous la main.
feed-page-label-given = Donné : ________  ________  ________

feed-page-holds = Ce que tient le nourrisseur, { $is-us ->
    [yes] gallons
   *[no] litres
}
feed-page-reckon = Calculer ses remplissages

feed-page-cups = Des tasses ne sont pas des kilogrammes
feed-page-cups-thin = Le sucre versé est plus léger que l’eau, si bien que des tasses font un sirop plus léger que les mêmes chiffres en poids.
feed-page-cups-are = { $volumes } en tasses, c’est { NUMBER($weight, digits: 2) }:1 en poids, { NUMBER($percent) } % de sucre, non { NUMBER($meant) } %.
feed-page-spring = Le 1:1 est pour le printemps, quand les abeilles volent chaque jour et rentrent de quoi vivre.
feed-page-slab = Une plaque au-dessus des abeilles
feed-page-slab-laid = Posée sur { LENGTH($thick) } d’épaisseur sur tout un corps { $hive } :
feed-page-slab-of = { CAPITAL($what) } : { MASS($mass, digits: 1, us: 0) }, qui nourrissent autant que { MASS($honey, digits: 1, us: 0) } de miel.
feed-page-before = Avant de nourrir
feed-page-never = À ne pas donner
feed-page-never-of = { CAPITAL($what) } : { $why }.
