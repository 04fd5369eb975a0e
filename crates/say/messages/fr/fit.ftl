## Une colonie est-elle prête pour l’hiver : six échelles, un verdict et ses raisons, ce qu’il faut au rucher.

fit-what = { $what ->
    [bees] Abeilles
    [brood] Couvain
    [stores] Provisions
    [queen] Reine
    [mites] Varroas
   *[hive] Ruche
}
fit-stands = { $stands ->
    [not-known] inconnu
    [no-range] aucune fourchette habituelle connue ici
    [under] sous la normale
    [perhaps-under] peut-être sous la normale
    [perhaps-over] peut-être au-dessus de la normale
    [over] au-dessus de la normale
   *[usual] dans la normale
}
fit-stands-short = { $stands ->
    [not-known] inconnu
    [no-range] aucune fourchette habituelle connue ici
    [under] dessous
    [perhaps-under] peut-être dessous
    [perhaps-over] peut-être au-dessus
    [over] au-dessus
   *[usual] normal
}
fit-verdict = { $kind ->
    [stop] halte : la loque d’abord
    [shake-out] secouer
    [unite] réunir
    [look-again] revoir s’il y a des œufs
    [wait] attendre un jour doux
    [treat] les varroas d’abord
    [boost] renfort couvain operculé
    [company] au chaud d’une voisine
   *[alone] hiverner seule
}
fit-verdict-queen = { $queen } : { $verdict }
fit-unfed = À court, et pourtant pas sur cette liste, puisque leurs abeilles vont à d’autres ou sont secouées : { LIST($names) }.

fit-parts = { LIST($parts, between: " ; ") }
fit-any-hive = toute ruche

fit-bees = environ { COUNT($bees) } abeilles ({ COUNT($low) } à { COUNT($high) }), sur { NUMBER($combs, digits: "all") } { $combs ->
    [one] cadre ou ruelle
   *[other] cadres ou ruelles
} de cette ruche
fit-bees-hive = { $is-nucleus ->
    [yes] nucléus
   *[no] ruche entière
}
fit-bees-other = 4 cadres se tiennent chaud pendant un hiver de sept mois, mais se développent lentement au printemps (hauteurs du Colorado) ({ $source })
fit-bees-unknown-air = la température lors du comptage n’est pas connue : compter les ruelles le matin, entre 5 et 10 °C (41 à 50 °F), quand la grappe montre sa taille
fit-bees-warm = compté à { TEMPERATURE($air) } : des abeilles dispersées couvrent plus de ruelles qu’une grappe ; recompter entre 5 et 10 °C (41 à 50 °F)
fit-bees-cold = compté à { TEMPERATURE($air) } : une grappe serrée couvre moins de ruelles qu’elle n’a d’abeilles pour

fit-brood-not-looked = personne n’a regardé
fit-brood-none = aucun
fit-brood = environ { NUMBER($frames, digits: 1) } cadres entiers de couvain operculé
fit-brood-region = ce lieu à cette date
fit-brood-usual = { NUMBER($low, digits: "all") } à { NUMBER($high, digits: "all") } cadres tant que les journées atteignent { TEMPERATURE($warmth) }
fit-brood-look = chercher du couvain operculé en plaques entières, des œufs à côté, aucune cellule affaissée, percée ou filante ; des mâles élevés en cellules d’ouvrières annoncent une reine qui faiblit

fit-stores = { MASS($food, digits: 1) } ({ MASS($low, digits: 1) } à { MASS($high, digits: 1) }) ; calculé pour cette ruche, ici : { MASS($need, digits: 1) }{ $is-short ->
    [yes] , il manque donc { MASS($short, digits: 1) }
   *[no] {""}
}
fit-stores-nucleus-region = Amérique du Nord
fit-stores-nucleus = 14 lb (6,4 kg) ou plus dans quatre cadres de grande taille
fit-stores-boxes = { $boxes ->
    [one] un corps
   *[other] { $boxes } corps
}
fit-stores-region = ce lieu
fit-stores-no-rule = aucune règle du métier n’est connue ici pour les seules provisions ; le besoin calculé en tient lieu
fit-stores-computed = calculé d’après le temps de ce lieu : 9 sur 10 arrivent au printemps avec de la nourriture à portée
fit-stores-whole-hive = { $region } : { $says } ({ $source }) ; ce n’est pas un poids de provisions
fit-stores-honeydew = miellat : ses cendres encrassent des abeilles qui ne peuvent voler pendant des mois ; le garder pour le printemps et donner maintenant du sucre par-dessus
fit-stores-heather = bruyère : les abeilles se souillent lors d’une longue claustration ; donner maintenant du sucre par-dessus
fit-stores-hard = il durcit : des abeilles peuvent mourir de faim à côté, faute d’eau ; donner le sucre en dernier, pour qu’il soit mangé d’abord

fit-queen-born = de { NUMBER($year) }
fit-queen-no-year = son année n’est pas connue
fit-queen-late = { $born }, fécondée en août ou plus tard : de telles reines faillissent plus souvent
fit-queen-introduced = introduite cet automne : chercher son propre couvain avant de s’y fier
fit-queen-cast = un essaim tardif : seul son propre couvain d’ouvrières operculé la prouve
fit-queen-region = partout
fit-queen-young = une jeune reine, de cette année ou de la dernière
fit-queen-other = une reine de deux hivers qui pondait bien est gardée par beaucoup (pratique courante)
fit-queen-unseen = elle n’a pas été vue : chercher des œufs ou du couvain d’ouvrières operculé ; { $too-late ->
    [yes] une reine donnée après le { DAY($last) } environ réussit rarement ici (jugement) : si elle manque, réunir
   *[no] si elle manque, donner une reine fécondée d’ici le { DAY($last) } environ ici (jugement)
}

fit-mites-not-counted = personne n’a compté
fit-mites = { NUMBER($found) } sur { NUMBER($bees) } abeilles le { DAY($on) } : { NUMBER($rate, digits: 1) } pour 100 ({ NUMBER($low, digits: 1) } à { NUMBER($high, digits: 1) }), { $verdict }
fit-mites-treated = { $says } ; traitée depuis, le comptage n’est donc plus ce qu’il y a
fit-mites-wash = laver 300 abeilles d’un cadre de couvain ouvert. Ne voir aucun varroa dit peu : sur 100 prélèvements de 100 abeilles, 37 n’en montrent aucun là où 1 abeille sur 100 en porte un
fit-mites-again = recompter en octobre, avant que les abeilles forment la grappe vers le { DAY($cluster) } : les pillardes rapportent des varroas

fit-hive-lid = { RESISTANCE($lid) } au-dessus des abeilles
fit-hive-region = pays froids
fit-hive-lids = R 0,9 à 3,5 m² K/W (R 5 à R 20) au-dessus des abeilles
fit-hive-sealed-top = d’autres ferment le haut par-dessus une mousse et ne laissent pas de trou supérieur ; les deux écoles ne veulent aucune surface froide au-dessus de la grappe
fit-hive-breathing-top = d’autres mettent de la paille ou un panneau qui boit l’eau sous un toit aéré ; les deux écoles ne veulent aucune surface froide au-dessus de la grappe
fit-hive-excluder = ôter la grille à reine : la grappe monte et laisse la reine dessous
fit-hive-feeder = ôter le nourrisseur vide : un creux froid au-dessus de la grappe
fit-hive-empty-super = ôter la hausse vide : une pièce froide au-dessus de la grappe
fit-hive-guard = une grille à fentes de { LENGTH(0.008, us: 2) } au plus ou à trous de { LENGTH(0.009, us: 2) } au plus
fit-hive-mice = l’entrée a { LENGTH($high, us: 2) } de haut, et les souris passent : { $guard }
fit-hive-large = { NUMBER($combs) } cadres, dont { NUMBER($bees) } occupés par les abeilles : où les hivers sont doux, on resserre l’espace sur les abeilles ; au Minnesota trois corps restent ; un corps vide au-dessus de la grappe est à la pire place
fit-hive-lean = pas au fichier du rucher : vérifier que la ruche penche un peu vers l’avant
fit-hive-not-noted = pas au fichier du rucher : s’il reste une grille à reine, un nourrisseur ou une hausse vide ; regarder, et vérifier que la ruche penche un peu vers l’avant

fit-stop = fermer { $name }, ne déplacer ni abeilles, ni cadres, ni outils d’une ruche à l’autre, et prévenir les services vétérinaires avant toute autre chose
fit-stop-why = des signes de loque ont été notés ; elle est à déclaration obligatoire dans la plupart des pays, et chaque cadre déplacé la porte plus loin
fit-queen-first = chercher des œufs cette semaine ; s’il n’y en a pas : { $too-late ->
    [yes] la réunir, car il est trop tard pour donner une reine ici
   *[no] une reine fécondée d’ici le { DAY($last) } environ, ou la réunir
}. S’il y a des œufs : { $verdict }
fit-queen-first-why = ni reine vue ni couvain le { DAY($today) } : les chances du plan comptent sur une reine qui pond
fit-want-of-queen = sur 100 ruches pareilles laissées telles quelles, { NUMBER($end) } finissent faute de reine avant le printemps, et { NUMBER($come) } y arrivent avec une reine
fit-sick-too = elle est malade aussi ({ $why })
fit-too-late-for-queen = le dernier jour raisonnable pour donner une reine ici était vers le { DAY($last) } (jugement)

fit-count-again = recompter avant toute autre chose : elle a été traitée, mais avec tant de varroas il faut voir que le traitement a agi ; le temps hors couvain est la prochaine bonne occasion
fit-treat-late = traiter maintenant dans le respect de la notice et de la loi, tout le rucher le même jour, et de nouveau hors couvain si le comptage le demande
fit-treat = traiter maintenant dans le respect de la notice et de la loi, tout le rucher le même jour, avant que ses abeilles d’hiver soient élevées
fit-treat-why = { NUMBER($rate, digits: 1) } varroas pour 100 abeilles au dernier comptage ; le seuil est { $line } ({ $region })
fit-viruses = le modèle compte les varroas comme une vie plus courte des abeilles dont ils se sont nourris, et presque rien des virus, que personne n’a mesurés ici : à un tel comptage, se fier au comptage avant la chance calculée
fit-treat-by-chance = dans le modèle, un traitement aujourd’hui ne change pas cet hiver-ci plus que ne le fait le hasard
fit-treat-gain = dans le modèle, un traitement aujourd’hui amène { NUMBER($gain) } ± { NUMBER($plus-minus) } ruches sur 100 de plus au printemps, une fois nourries de ce qui leur manque
fit-already-hurt = ses abeilles d’hiver sont élevées, toutes ou en partie : un traitement maintenant protège les voisines et les abeilles de l’année prochaine, non les abeilles déjà atteintes

fit-weak = environ { COUNT($bees) } abeilles ; sous { COUNT($company) }, une colonie veut de la compagnie dans { $country }
fit-together = ensemble, dans le modèle : { NUMBER($come) } sur 100 arrivent au printemps, en une seule colonie
fit-unite = la réunir à { $with }
fit-boost = y suspendre un cadre de couvain operculé sans ses abeilles, pris à { $giver }, d’ici le { DAY($last) } environ
fit-boost-gain = dans le modèle, un cadre de couvain operculé pris à { $giver } amène au printemps { NUMBER($gain) } ± { NUMBER($plus-minus) } ruches sur 100 de plus, les deux comptées
fit-boost-by-chance = { $gain } : pas plus que ne le fait le hasard
fit-boost-too-late = il est trop tard pour du couvain operculé : il doit éclore avant le { DAY($cluster) } environ
fit-boost-none = aucune colonie saine du rucher n’a de couvain operculé à céder

fit-alone = { LIST($needs, between: ", et ") }
fit-alone-nothing = elle n’a besoin de l’aide d’aucune autre colonie
fit-beside = la mettre à côté ou au-dessus de { $strong }, paroi contre paroi, pour partager sa chaleur ; une ruche se déplace quand ses abeilles ne volent plus
fit-no-company = il lui faut une voisine forte pour la chauffer, et aucune ici n’y convient
fit-feed-to-rule = la nourrir d’abord jusqu’à la règle, { MASS($food, digits: 1) } de provisions, et la peser au milieu de l’hiver
fit-has-rule = elle a ce que demande la règle et le modèle demande plus : la peser au milieu de l’hiver
fit-feed = la nourrir d’abord : il manque { MASS($food, digits: 1) } de provisions
fit-once-fed = une fois donné ce qui lui manque, { $chance } vivent avec leur reine
fit-chance = { $chance } arrivent ainsi au printemps en vie, nourries, avec reine
fit-chance-ends = { $chance } arrivent ainsi au printemps en vie, nourries, avec reine ; de quoi meurent la plupart des autres : { $cause }

fit-against-sick = elle est malade ({ $why }) : une colonie malade n’est jamais réunie à une autre
fit-against-none = aucune colonie du rucher, saine, avec reine et dont les varroas sont sous le seuil ou vus traités, n’est plus forte : deux faibles n’en font pas une forte
fit-against-late = il est trop tard : après le { DAY($last) } environ, les colonies d’ici sont en grappe et ne se mêlent plus, en décembre moins que jamais
fit-step-look = regarder d’abord tout le couvain des colonies { $weak } et { $strong } ; { $foulbrood }
fit-step-keep = garder la reine de la colonie { $strong } ; s’assurer qu’il ne reste aucune reine chez { $weak }
fit-step-choose = garder la reine de la colonie { $kept } : trouver et ôter la veille celle de la colonie { $gone } ; des abeilles qu’on laisse choisir peuvent perdre les deux
fit-step-choose-year = garder la reine de la colonie { $kept } (de { NUMBER($year) }) : trouver et ôter la veille celle de la colonie { $gone } ; des abeilles qu’on laisse choisir peuvent perdre les deux
fit-step-paper = vers le soir, poser une feuille de journal à peine entaillée sur la colonie { $strong } et mettre dessus le corps de la colonie { $weak }
fit-step-frames = leurs cadres diffèrent : secouer ou brosser les abeilles de la faible dans un corps vide au format de l’autre, par-dessus la feuille, et laisser les cadres qui ne vont pas
fit-step-leave = les laisser une semaine, puis retirer ce qui est vide ; la place de la faible est débarrassée, pour que les retardataires aillent chez une voisine
fit-step-by = à finir ici d’ici le { DAY($last) } environ ({ DAY($early) } au { DAY($late) }), avant qu’elles forment la grappe{ $is-close ->
    [yes] : c’est maintenant ou pas du tout
   *[no] {""}
}

fit-say-strong = Forte à l’automne n’est pas sauvée : les grandes colonies élèvent le plus de varroas, et personne n’a compté ici.
fit-say-clean = Un prélèvement net n’est pas une colonie nette : recompter.
fit-say-robbed = Pillée ou assaillie de guêpes : réduire l’entrée au passage d’une abeille ou deux, la nourrir en dernier, et la repeser.
fit-say-no-room = Avec ce qui lui manque elle tiendrait { MASS($wanted) }, et ses cadres en prennent environ { MASS($room) } en laissant de la place aux abeilles : lui donner un corps de cadres bâtis, ou le reste en candi l’hiver.
fit-say-nucleus = Un nucléus se nourrit et se défend d’abord : entrée au passage d’une abeille.
fit-say-feeding = Pendant qu’on nourrit : d’abord les entrées, d’abord les nucléus et les ruches faibles, tous le même soir.
fit-say-mites-now = Les varroas maintenant : un traitement après le { DAY($all) } environ vient trop tard pour une partie des abeilles d’hiver, après le { DAY($none) } environ pour toutes. Il protège les voisines et les abeilles de l’année prochaine, non les abeilles déjà atteintes ; un traitement en novembre seulement ne guérit pas cet hiver.
fit-say-count-again = Compter une seconde fois en octobre, avant que les abeilles forment la grappe vers le { DAY($cluster) } : les pillardes rapportent des varroas des ruches mourantes.
fit-say-queens = Reines : le dernier jour raisonnable pour en donner une ici est vers le { DAY($last) } ({ DAY($early) } au { DAY($late) }), d’après le dernier temps de vol de ce lieu ; jugement. Une reine vierge après cela, c’est réunir.
fit-say-uniting = Réunir : ici d’ici le { DAY($last) } environ, la faible sur la forte, et jamais avec quoi que ce soit de malade. Faible sur faible ne fait pas une forte.
fit-say-left-on = Le fichier du rucher ne dit d’aucune ruche s’il y reste une grille à reine, un nourrisseur ou une hausse vide. Regarder avant le premier gel.

fit-window = peut encore agir si commencé ici d’ici le { DAY($last) } environ ({ DAY($early) } au { DAY($late) }) ; ne protège les abeilles de cet hiver qu’avant le { DAY($winter-bees) } environ
fit-window-hot = { $window } ; des { NUMBER($days) } jours qui en restent, { NUMBER($hot) } sont trop chauds
fit-window-past = son dernier jour pour commencer ici était vers le { DAY($last) } ; il est passé
fit-window-no-broodless = aucun temps hors couvain ne ressort des jours de ce plan : regarder avant de traiter
fit-window-broodless = aucune ruche n’a de couvain du { DAY($from) } environ au { DAY($until) } environ
fit-window-look = { $window } ; aucun jour n’est sans couvain neuf hivers sur dix : regarder avant de traiter
fit-window-sure = { $window }, 9 hivers sur 10 au moins du { DAY($from) } au { DAY($until) } : de ces { NUMBER($days) } jours, environ { NUMBER($mild) } sont assez doux
