## Une plaque de sucre, un pain ou un nourrisseur sur une ruche.

food-body-made = { LIST($parts) }
food-body-food = { MASS($mass, digits: 1) } de { $kind }
food-body-food-pollen = { MASS($mass, digits: 1) } de { $kind } avec pollen
food-body-rim = cadre de { LENGTH($rim) }
food-body-over-cluster = au-dessus de la grappe
food-body-to-one-side = sur le côté
food-body-hole = trou de { LENGTH($hole) }

food-body-since-autumn = { $what }, en place depuis l’automne
food-body-since = { $what }, en place depuis le { DAY($since) }

food-body-reached = { $what } : la grappe l’a atteint ({ $chance }) ; { $left }
food-body-in-doubt = { $what } : personne ne sait si la grappe l’a atteint ({ $chance }) ; { $when } ; { $left }
food-body-not-reached = { $what } : pas atteint ({ $chance }), il ne nourrit donc encore personne ; { $when }
food-body-left = il en reste environ { MASS($middle, digits: 1) } (8 fois sur 10 entre { MASS($least, digits: 1) } et { MASS($most, digits: 1) })
food-body-never = dans 9 hivers sur 10, il ne l’est pas d’ici au { $goal }
food-body-hardly = plus probablement il ne l’est pas d’ici au { $goal } ; 1 sur 10 l’atteint d’ici le { DAY($early) }
food-body-by = la moitié de ces ruches l’atteignent d’ici le { DAY($middle) }, 1 sur 10 d’ici le { DAY($early) }, les plus lentes d’ici le { DAY($late) }
food-body-not-all = la moitié de ces ruches l’atteignent d’ici le { DAY($middle) }, 1 sur 10 d’ici le { DAY($early) }, les plus lentes pas d’ici au { $goal }
