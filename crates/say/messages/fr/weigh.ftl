## Une ruche pesée.

weigh-other = autre poids (kg)
weigh-whole = la ruche entière (kg)
weigh-left = la lecture à gauche (kg)
weigh-right = la lecture à droite (kg)
weigh-width = largeur entre les points de levage (mm)
weigh-inset = retrait des appuis (mm)
weigh-lift = hauteur de levage (mm)
weigh-centre = hauteur du centre de gravité (mm)
weigh-empty = la ruche vide (kg)
weigh-bees = abeilles
weigh-frames = cadres
weigh-reading = la lecture (kg)
weigh-tips = soulevée à ce point, une telle ruche basculerait ; remesurer le levage
weigh-too-light = la ruche pèse moins que vide avec ses abeilles ; revoir --tare, --bees et --other

weigh-two-sided = levage des deux côtés
weigh-scale = balance
weigh-one-side = un seul côté : une tendance
weigh-counted = cadres comptés

weigh-part-boxes = { NUMBER($count) } corps { $count ->
    [one] vide
   *[other] vides
}
weigh-part-frames = { NUMBER($count) } { $count ->
    [one] cadre bâti
   *[other] cadres bâtis
}
weigh-part-floor = plancher
weigh-part-over = ce qui repose sur les cadres
weigh-part-roof = toit

weigh-lift-side = un côté, comme il a été levé
weigh-lift-waist = un corps plein de dix cadres à hauteur de taille
weigh-lift-low = le même depuis un support bas, en tournant
weigh-lift-box = corps { NUMBER($place) } depuis le bas ({ $size }) sur un support de 40 cm (16 po)

weigh-no-food = La nourriture ne peut être déterminée : donner la ruche vide avec --tare, ou son modèle avec --hive et --boxes.
weigh-wet = Du bois mouillé ajoute 1 à 3 kg (2 à 7 lb), de la neige mouillée sur le toit 0,5 à 1 kg par centimètre (3 à 6 lb par pouce) : la balayer, ou la donner comme autre poids.
weigh-brood = Couvain et pollen pèsent aussi : au printemps, le tout peut tenir pendant que la nourriture baisse.
weigh-frozen = On ne tire pas d’un coup sur une ruche prise par le gel à son support : casser d’abord la glace, ou attendre.
weigh-off-middle = La charge est loin du milieu : relire les deux côtés pour en être sûr.
weigh-side-no-weight = Un seul côté ne donne pas de poids : le milieu de la charge décalé d’un dixième de la largeur, le double de la lecture est faux de 20 %.
weigh-side-same = Lever le même côté chaque fois, depuis le même support et à la même hauteur, et s’en tenir au changement.
weigh-side-both = Pour un poids, lever les deux côtés : --left et --right.

weigh-sources-lifting = levage : Applications Manual for the Revised NIOSH Lifting Equation (1994, publication 94-110)
weigh-sources-sides = deux côtés : moments autour de l’appui éloigné ; erreurs de lecture : jugement
weigh-sources-parts = ruche vide : ses dimensions et son bois ; cadres, rayons et toit de mémoire
weigh-sources-own = ruche vide : chiffre propre au rucher
weigh-sources-bees = abeilles : environ { MASS(2) } (Bee Craft, septembre 2016)
weigh-sources-comb = 0,32 ± 0,03 kg/dm² de rayon operculé des deux côtés : apiculteurs suédois 0,30, wiki de la Bienen-Zeitung 0,35
