## Les colonies d’un fichier de rucher, et celles comptées un nouvel automne.

colony-fault-needs-name = donner un nom à la colonie, par exemple name = "Alder"
colony-fault-needs-hive = nommer sa ruche, ou pour un départ rapide son modèle, par exemple kind = "Langstroth 10"
colony-fault-hive-and-kind = est à côté de kind
colony-fault-hive-and-kind-right = donner soit le nom de la ruche soit, pour un départ rapide, son modèle
colony-fault-of-hive = appartient à la ruche
colony-fault-of-hive-right = écrire { $key } dans la table [[hive]]
colony-fault-hive-right = nommer une ruche de ce fichier, ou ajouter une table [[hive]] pour elle
colony-fault-hive-there = une ruche du nom de la colonie est déjà décrite
colony-fault-hive-there-right = écrire hive = "{ $name }" au lieu de kind
colony-fault-same-hive = vit dans la même ruche que la colonie « { $other } »
colony-fault-same-hive-right = donner à chaque colonie sa propre ruche ; deux dans un corps sont deux ruches côte à côte

colony-fault-needs-bees = compter les ruelles ou cadres d’abeilles (frames_of_bees = 8), ou pour un départ rapide strength = "middling"
colony-fault-needs-likeliest = donner le nombre le plus probable à côté du plus bas et du plus haut
colony-fault-outside = est hors de ses propres bornes
colony-fault-outside-right = bees_low, bees et bees_high doivent croître
colony-fault-crowded = { NUMBER($bees, digits: "all") } abeilles, c’est plus que les { NUMBER($hold) } environ que tiennent les { NUMBER($combs) } rayons de la ruche
colony-fault-crowded-right = recompter, sans les abeilles qui pendent dessous, ou corriger les corps de la ruche
colony-fault-frames-and-seams = est à côté de seams_of_bees
colony-fault-frames-and-seams-right = donner l’un des deux ; ils comptent les mêmes abeilles
colony-fault-frames = { NUMBER($frames, digits: "all") } est plus que les { NUMBER($combs) } rayons de la ruche
colony-fault-frames-right = compter les rayons couverts des deux côtés, ou corriger les corps de la ruche
colony-fault-no-brood = « { $written } » n’est pas une quantité de couvain
colony-fault-brood-right = écrire { LIST($words) }, "1.5 frames" ou "3000 cells"

colony-fault-needs-stores = peser (stores = "18 kg"), compter (stores_frames = 6), ou pour un départ rapide food = "fair"
colony-fault-two-ways = { $second } est à côté de { $first }
colony-fault-two-ways-right = donner la nourriture d’une seule façon
colony-fault-word = « { $word } » est un mot, pas un poids
colony-fault-heavy = { MASS($food, digits: 1) } est plus que ce que tiennent les rayons de cette ruche, { MASS($most) }
colony-fault-heavy-right = écrire la nourriture seule, sans ruche ni abeilles ; ou corriger les corps de la ruche
colony-fault-shares = les parts font en tout { NUMBER($sum, digits: 3) }
colony-fault-shares-right = les faire totaliser 1, par exemple { $example }

colony-fault-mites = { NUMBER($found) } varroas sur { NUMBER($bees) } abeilles ne peut pas être
colony-fault-mites-right = écrire les varroas trouvés et les abeilles de l’échantillon
colony-fault-no-count = « { $written } » n’est pas un compte de varroas avec son jour
colony-fault-no-count-right = écrire mites = "2 of 300 on 2025-08-28", ou mites = { $example }
colony-fault-not-counted = { $example }, ou "not counted"
colony-fault-needs-count-day = écrire le jour du compte, par exemple on = 2025-08-28
colony-fault-count-late = { $on } est après le jour où les colonies ont été regardées
colony-fault-count-late-right = écrire le jour du compte
colony-fault-queen-year = { $year } ne peut pas être l’année d’une reine vivante en { $now }
colony-fault-queen-year-right = écrire l’année de sa naissance, de { $oldest } à { $youngest }
colony-fault-queen-year-such = par exemple 2024
colony-fault-treatments = liste { NUMBER($treatments) } traitements
colony-fault-treatments-right = lister ceux depuis l’été, au plus { NUMBER($most) }
colony-fault-disorder = { $first } est avant { $then } : pas dans l’ordre
colony-fault-disorder-right = lister d’abord le plus ancien, ou corriger la date
colony-fault-needs-begun = écrire le jour où il a commencé, par exemple on = 2025-09-15
colony-fault-needs-class = écrire formic, thymol, oxalic, strips ou other
colony-fault-late = { $day } est après as_of, { $as-of }
colony-fault-late-right = écrire un jour jusqu’au { $as-of }, ou déplacer as_of
colony-fault-early = { $day } est longtemps avant as_of, { $as-of }
colony-fault-early-right = donner ce qui est de cette saison ; corriger l’année

colony-fault-line-right = écrire ses abeilles ; nourriture ; varroas ; reine, par exemple "Alder=8 frames; 14 kg; 3/300; laying"
colony-fault-short-line = « { $line } » ne dit pas les abeilles et la nourriture
colony-fault-same-winter = { $as-of } est de l’hiver pour lequel les colonies ont été comptées, le { $counted }
colony-fault-same-winter-right = écrire un jour de l’automne suivant ; son année commence le { DAY($begins) }
colony-fault-none-counted = aucune colonie n’est comptée
colony-fault-none-counted-right = compter celles qui vivent
colony-fault-counted-twice = est comptée deux fois
colony-fault-counted-twice-right = la compter une fois
colony-fault-earlier = il a été compté le { $counted }, et les registres tiennent l’automne { $year }
colony-fault-earlier-right = prendre le rucher des registres, ou un fichier de cet automne
colony-fault-no-bees = « { $written } » ne dit pas un nombre d’abeilles
colony-fault-bees-right = écrire les cadres qu’elles couvrent, jusqu’à { NUMBER($most) }, ou weak, middling ou strong
colony-fault-no-food = « { $written } » n’est pas une nourriture que cette ruche peut tenir
colony-fault-food-right = écrire la nourriture seule, de 0 à { MASS($most) }, sans ruche ni abeilles
colony-fault-after-look = { $on } est après le jour regardé, { $as-of }
colony-fault-no-queen = « { $written } » ne dit rien d’une reine
