## Que faire d’un corps, d’après son indice de levage.

lifting-one = une personne peut le lever, tout contre soi et sans tourner
lifting-two = environ { NUMBER($index, digits: 1) } fois ce qu’une personne devrait lever : sortir des cadres ou trouver une seconde paire de mains
lifting-never = environ { NUMBER($index, digits: 1) } fois ce qu’une personne devrait lever : jamais entier, sortir d’abord les cadres
lifting-nobody = trop haut pour être levé par qui que ce soit : sortir les cadres sur place
