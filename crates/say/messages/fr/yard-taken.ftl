## Ce qu’un fichier de rucher laisse ouvert, et ce qui est pris.

yard-taken-hive = non dit de la ruche, donc pris : { LIST($taken) }
yard-taken-boxes = les corps où ce modèle hiverne d’ordinaire
yard-taken-floor = plancher plein
yard-taken-lid = la couverture habituelle du modèle, sans isolation
yard-taken-entrance = entrée réduite
yard-taken-upper-hole = pas de trou supérieur
yard-taken-wrap = pas d’emballage
yard-taken-facing = face au soleil de midi
yard-taken-pollen = le pollen qui y est se garde et ne fait bouger aucun couvain ici : le modèle ne connaît pas de loi du pollen
yard-taken-no-day-in = aucun jour d’entrée n’est écrit : elle reste dehors jusqu’à ce qu’il soit noté qu’elle a été rentrée
yard-taken-empty-room = aucune ruche ne doit y hiverner : écrire indoors = "{ $room }" à une ruche, ou sous [apiary] pour toutes
yard-taken-shelter = l’abri du vent n’est pas dit ; pris comme "windbreak"
yard-taken-sun = le soleil d’hiver n’est pas dit ; pris comme "partial"
yard-taken-prices = prix non donnés, donc pris en { $currency } : { LIST($prices) } ({ $source })
yard-taken-colony = on ne sait que des mots sur les abeilles et la nourriture, chaque fourchette est donc large ; compter et peser la resserre
yard-taken-mites = aucun compte de varroas n’est donné ; pris comme non compté
yard-taken-stores = ce que sont les provisions n’est pas dit ; pris comme sucre

yard-taken-line = ligne { NUMBER($line) }, { $field } : { $says }
