## Abeilles mortes : ce qui est courant, où elles sont, ce que dit un comptage.

dead-bees-usual = { NUMBER($least) } à { NUMBER($most) } sont courantes, 9 fois sur 10
dead-bees-usual-one = { NUMBER($count) } est courant, 9 fois sur 10

dead-bees-hardly-any = presque aucune n’est morte
dead-bees-lie = sur quelque { NUMBER($all) } mortes, environ { LIST($places) }
dead-bees-floor = { NUMBER($bees) } sur le plancher
dead-bees-before = { NUMBER($bees) } devant la ruche
dead-bees-snow = { NUMBER($bees) } là, sous la neige
dead-bees-flown = { NUMBER($bees) } parties en vol ou emportées
dead-bees-taken = { NUMBER($bees) } prises par les oiseaux et les souris

dead-bees-few = Peu d’abeilles mortes n’est pas mauvais signe : par temps froid elles restent dedans, et une petite colonie en perd peu.
dead-bees-normal = Normal. Une colonie d’abeilles d’hiver en perd chaque jour ; c’est ainsi qu’elle arrive au printemps.
dead-bees-many = Plus que d’habitude. Après une journée douce, les abeilles sortent d’un coup les mortes de plusieurs semaines : c’est un signe de vie.
dead-bees-far-more = Bien plus que ce qu’un hiver coûte de jour en jour. Après une première journée douce, ce peut encore être le grand nettoyage.

dead-bees-next-few = Rien à faire. Si les voisines en montrent beaucoup et cette ruche aucun signe, y coller l’oreille un jour sans vent.
dead-bees-next-normal = Garder l’entrée libre et noter le compte.
dead-bees-next-many = Dégager l’entrée. Chercher des ailes atrophiées, des traînées brunes sur la ruche, des abeilles rongées par une musaraigne ; noter et recompter.

dead-bees-sources-lives = vie des abeilles d’hiver : synthèse de Minaud 2024 (130 jours), Fukuda et Sekiguchi 1966 (154 jours)
dead-bees-sources-watch = comment les mortes se répartissent et se trouvent, selon le modèle des signes : data/watch_parameters.toml, jugement

