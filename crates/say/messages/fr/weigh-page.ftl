## La page où l’on pèse une ruche sur place.

weigh-page-heading = Peser { $hive }
weigh-page-back = Retour à { $hive }
weigh-page-lede = Lever un côté bien droit jusqu’à ce qu’il quitte juste l’appui, lire le plus petit chiffre stable ; puis l’autre côté.

weigh-page-food = Nourriture : { $mass }
weigh-page-whole = Ruche entière
weigh-page-tare = Vide, avec cadres
weigh-page-tare-parts = { $mass }, calculé d’après ses parties : en peser une vide pour mieux savoir
weigh-page-bees = Abeilles
weigh-page-two-sides = Deux côtés
weigh-page-lifted = leur somme multipliée par { NUMBER($factor, digits: 3) } pour des appuis en retrait et un côté levé
weigh-page-keep = Enregistrer comme note
weigh-page-kept = Enregistré avec son erreur : l’estimation en tient compte à sa mesure.
weigh-page-who = Qui le dit ?

weigh-page-left = Un côté, plus petite lecture stable, { $unit }
weigh-page-right = L’autre côté, { $unit }
weigh-page-inset = Du bord levé jusqu’où la ruche repose, { $unit }
weigh-page-lift = De combien le côté a été levé, { $unit }
weigh-page-width = Entre les points de levage, si ce n’est la largeur de la ruche, { $unit }
weigh-page-scale = Ou la ruche entière sur une balance, { $unit }
weigh-page-own-tare = La ruche vide avec ses cadres, si elle a été pesée, { $unit }
weigh-page-other = Neige, nourrisseur, emballage, autre poids, { $unit }
weigh-page-reckon = Calculer

weigh-page-says = Ce que dit une pesée
weigh-page-one-side = Un seul côté n’est pas un poids ; le même côté chaque fois est une tendance.
weigh-page-supports = Des appuis en retrait des bords font lire les deux côtés 4 à 14 % trop bas : donner le retrait, et c’est corrigé.
weigh-page-by-hand = Légère, correcte, lourde veulent dire quelque chose une fois qu’une ruche du rang a été soupesée puis pesée : la soupeser d’abord chaque fois, et nommer les autres d’après elle.

weigh-page-no-box = La ruche n’a pas de corps.
weigh-page-one-way = Donner les deux côtés, ou la ruche entière sur une balance.
weigh-page-wrong = { $text } : écrire un chiffre, par exemple 21,5 { $unit }.
