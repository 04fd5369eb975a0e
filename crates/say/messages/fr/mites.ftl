## Les varroas d’un prélèvement.

mites-bees-in-sample = abeilles du prélèvement
mites-days-of-board = jours de lange
mites-on-board = varroas sur le lange
mites-region = la région
mites-no-sample = aucun prélèvement n’est donné ; donner les varroas trouvés et les abeilles prélevées
mites-two-ways = les colonies ont été comptées de façons différentes ; demander chaque façon à part
mites-swapped = { NUMBER($found) } varroas ne peuvent se lire dans un si petit prélèvement ({ NUMBER($bees) } abeilles) ; trouvés et abeilles sont peut-être intervertis

mites-wash = lavage
mites-roll = sucre glace
mites-board = lange
mites-a-day = varroas par jour
mites-per-100-bees = varroas pour 100 abeilles

mites-under = sous le seuil
mites-likely-under = sous le seuil, mais un seul prélèvement ne peut exclure qu’il soit atteint
mites-near = près du seuil : recompter bientôt
mites-likely-over = au seuil ou au-dessus, autant qu’un seul prélèvement peut le dire
mites-over = au-dessus du seuil

mites-none-over = Aucune n’est au seuil ou au-dessus ; { $worst } en a le plus.
mites-one-over-though = { $colony } est au seuil ou au-dessus alors que la moyenne du rucher est dessous : s’en tenir à { $colony }, non à la moyenne.
mites-one-over = { $colony } est au seuil ou au-dessus.
mites-several-over = { LIST($colonies, last: " et ") } sont au seuil ou au-dessus ; { $worst } en a le plus.
mites-too-few = { NUMBER($samples) } { $samples ->
    [one] prélèvement est trop peu
   *[other] prélèvements sont trop peu
} pour une fourchette de la moyenne du rucher.
mites-not-sampled = Les colonies non prélevées sont peut-être pires : dans un grand rucher, en prélever { NUMBER($enough) }.

mites-together = Traiter ensemble les colonies d’un rucher : les varroas passent d’une ruche à l’autre, par dérive et par pillage.
mites-board-shows = Un lange montre ce qui tombe, non ce qu’il y a : fourmis, vent et couvain le changent. Quand cela compte, laver 300 abeilles.
mites-take-from = Les abeilles du nid à couvain portent environ deux fois plus de varroas que celles sur le miel ; les prendre sur un cadre de couvain ouvert, et vérifier que la reine n’est pas parmi elles.
mites-small-sample = Moins de 200 abeilles disent peu : une demi-tasse américaine, 118 mL, en fait environ 300.

mites-in-time = Les abeilles d’hiver sont encore à élever ici : un traitement commencé d’ici le { DAY($safe) } protège { $later ->
    [yes] cet hiver (le { DAY($usual) } est encore à temps une année sur deux)
   *[no] cet hiver
}. Commencé plus tard, il vient trop tard pour une partie d’entre elles.
mites-safe-day-past = Le jour sûr pour commencer un traitement ici, le { DAY($safe) }, est passé ; le { DAY($usual) } est encore à temps une année sur deux. Commencer maintenant : chaque semaine de plus vient trop tard pour davantage d’abeilles d’hiver.
mites-being-raised = Les abeilles d’hiver s’élèvent ici en ce moment, du { DAY($usual) } environ au { DAY($raised) } environ : un traitement maintenant est trop tardif pour une partie d’entre elles ; il protège les autres, les voisines et l’année prochaine.
mites-raised = Les abeilles d’hiver ont été élevées ici, la plupart d’ici le { DAY($raised) } environ : un traitement maintenant protège les voisines et les abeilles de l’année prochaine, et ne répare plus celles-ci.
mites-count-monthly = Les varroas augmentent tant qu’il y a du couvain : recompter chaque mois.

mites-july = Les abeilles d’hiver vont bientôt être élevées : ce qui est fait avant elles protège cet hiver.
mites-august = Les abeilles d’hiver s’élèvent à partir de la mi-août environ : ce qui est fait avant protège cet hiver ; ce qui est fait après vient trop tard pour une partie d’entre elles, et protège les voisines et l’année prochaine.
mites-september = Les abeilles d’hiver s’élèvent en ce moment : un traitement maintenant est trop tardif pour une partie d’entre elles ; il protège les autres, les voisines et l’année prochaine.
mites-winter = Les abeilles d’hiver sont élevées : un traitement maintenant protège les voisines et les abeilles de l’année prochaine, et ne répare plus celles-ci.
mites-any-month = Les abeilles d’hiver s’élèvent d’août à octobre : un traitement avant elles protège cet hiver, un traitement après elles les voisines et l’année prochaine.

mites-sources-intervals = intervalles : Clopper et Pearson 1934, Wilson 1927, Garwood 1936
mites-sources-unevenness = inégalité k = { NUMBER($k, digits: "all") } : jugement ({ $source })
mites-sources-line = seuil : { $source } ({ $region })
mites-sources-found = part trouvée : { $source }
mites-sources-sampling = prélèvement : Lee, Moon, Burkness, Hutchison et Spivak 2010 (300 abeilles par colonie, 8 colonies par rucher)
