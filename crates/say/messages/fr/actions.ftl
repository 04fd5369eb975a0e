## Ce qui vaut la peine d’être fait pour une colonie, pourquoi, la règle du métier à côté, et d’où cela vient.

actions-clear = dégager { $openings ->
    [entrance] l’entrée
    [upper-hole] le trou supérieur
   *[both] l’entrée et le trou supérieur
} de la glace et des abeilles mortes
actions-clear-why = { $openings ->
    [entrance] notée bouchée : l’humidité reste dedans, et les abeilles ne peuvent sortir le prochain jour doux
    [upper-hole] noté bouché : l’humidité reste sous le couvercle
   *[both] les deux notés bouchés : l’humidité et l’air vicié restent dedans, et les abeilles ne peuvent sortir le prochain jour doux
}
actions-clear-rule = laisser la neige : elle est poreuse et tient la ruche au chaud ; une plaque de glace, non

actions-treat = la traiter contre le varroa avec ce que permettent ici la notice et la loi, tout le rucher le même jour
actions-treat-why = { NUMBER($rate, digits: 1) } varroas pour 100 abeilles à son comptage, au-dessus du seuil : { $in-time ->
    [yes] commencé d’ici le { DAY($all) }, il épargne toutes les abeilles de cet hiver
   *[no] trop tard pour une partie des abeilles de cet hiver, et pour toutes après le { DAY($none) }
} ; évalué dans une colonie à qui l’on donne ce qui lui manque ; le prix du produit n’est pas compté

actions-near = suspendre contre la grappe les { MASS($food, digits: 1) } du côté éloigné
actions-near-why = de la nourriture à deux cadres nus de distance pourrait aussi bien ne pas être là par grand froid

actions-frames = suspendre { $frames } { $frames ->
    [one] cadre plein
   *[other] cadres pleins
} de provisions operculées, pris à { $giver } ({ MASS($stores, digits: 1) })
actions-frames-why = { $giver } a plus qu’il ne lui faut même dans l’hiver le plus gourmand sur dix, et ses cadres vont (ce qu’elle peut céder se donne une fois dans ce rucher, à la ruche la plus à court)
actions-frames-rule = un cadre de provisions operculées contre la grappe est le premier remède quand il y en a un

actions-syrup = donner { MASS($sugar, digits: 1) } de sucre, soit { VOLUME($syrup) } de sirop 3:2, fini d’ici le { DAY($finish) }{ $is-all ->
    [yes] {""}
   *[no] ; les { MASS($rest, digits: 1) } de provisions restants en cadres, en candi ou en sucre humide
}
actions-syrup-safe = avec { $feeder }, commencer d’ici le { DAY($begin) } : donné, pris et operculé avant que les abeilles cessent ici de prendre du sirop (le { DAY($half) } est encore à temps une année sur deux)
actions-syrup-late = commencer aussitôt avec { $feeder } : le { DAY($half) } est encore à temps une année sur deux, le { DAY($safe) } aurait été sûr{ $is-all ->
    [yes] {""}
   *[no] ; il n’en donne pas plus dans les jours qui restent
}
actions-syrup-custom = { $said }. { $custom }

actions-thin-syrup = donner { MASS($sugar, digits: 1) } de sucre, soit { VOLUME($syrup) } de sirop léger, 1:1, environ { VOLUME(0.001, us: 1) } à la fois
actions-thin-syrup-hungry = une colonie pareille sur dix a faim d’ici le { DAY($by) } si les fleurs ne donnent rien ; les journées sont assez chaudes pour que les abeilles le prennent
actions-thin-syrup-little = il reste peu au dixième le plus mal loti si les fleurs ne donnent rien ; les journées sont assez chaudes pour que les abeilles le prennent
actions-thin-syrup-rule = nourriture solide, puis sirop léger quand les journées sont chaudes, puis pollen ; pas plus qu’il ne manque

actions-fondant = mettre { MASS($fondant, digits: 1) } de candi juste au-dessus de la grappe
actions-fondant-hungry = une colonie pareille sur dix a faim d’ici le { DAY($by) } ; fixé trois semaines avant
actions-fondant-little = peu ont faim avant le printemps, mais le dixième le plus mal loti y arrive avec { MASS($left, digits: 1) } à portée ou moins
actions-fondant-rule = du sucre solide aide quand les abeilles peuvent s’en servir ; des provisions d’automne valent mieux (University of Minnesota Extension)

actions-lid = poser { LENGTH(0.05) } de mousse sur le couvre-cadres
actions-lid-why = déplace l’eau du couvercle, d’où elle goutte sur la grappe, vers les parois, et garde la chaleur
actions-lid-rule = les deux écoles s’accordent : isoler le dessus avant les côtés, aucune surface froide au-dessus de la grappe

actions-wrap = emballer les parois de feutre bitumé
actions-wrap-why = tient le vent loin des joints et prend le soleil ; par lui-même il ne retient guère de chaleur
actions-wrap-rule = peu après le 1er novembre au Minnesota ; trop tôt, les abeilles continuent d’élever du couvain

actions-tray = glisser le tiroir sous le grillage
actions-tray-why = moins de vent dans la ruche ; vider le tiroir quand les abeilles mortes le couvrent
actions-tray-rule = beaucoup laissent le grillage ouvert : il a réduit les pertes dans une enquête (Mazur 2022, Pologne)

actions-by-practice = pratique courante
actions-by-lines = seuils de data/mites.toml
actions-by-nine-in-ten = neuf sur dix partis : jugement
actions-by-isolation = famine par isolement telle que le modèle y arrive
actions-by-run-out = épuisement calculé
actions-by-limit = limite de 55 F : vulgarisation apicole de l’Ontario
actions-by-sugar = le sucre fait 1,1 fois son poids de provisions, fourchette 1,0 à 1,2
actions-by-covers = essai de housses de ruches : St. Clair et al. 2022, PLoS ONE 17:e0266219
actions-by-poster = affiche 163 de l’université du Minnesota
actions-by-iso-6946 = ISO 6946
actions-by-air-flow = débit d’air calculé
