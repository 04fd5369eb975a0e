## Le verdict unique sur une colonie : quand, quoi faire, pourquoi, et ce qui vient ensuite.

verdict-today = aujourd’hui
verdict-this-week = sous 7 j
verdict-by = au { DAY($on, style: "short") }
verdict-look-inside = voir dedans
verdict-leave-alone = en paix
verdict-lost = perdue

verdict-amount = { $amount } : { $task }
verdict-step-by = { $task }, d’ici le { DAY($by) }
verdict-nothing-due = rien à faire
verdict-nothing-due-but = rien à faire ; { LIST($why) }
verdict-why = { LIST($why) }

verdict-tell-inspector = signes de loque : fermer, ne rien déplacer, prévenir les services vétérinaires
verdict-let-out = ouvrir la ruche : ses abeilles sont enfermées
verdict-clear-openings = dégager les ouvertures de la glace et des mortes
verdict-close-dead = morte : la fermer aux pillardes, chercher la cause
verdict-count-mites = compter les varroas (300 abeilles) ; au-dessus du seuil, tout traiter
verdict-count-mites-again = recompter les varroas avant la grappe
verdict-treat-mites = au-dessus du seuil : tout traiter le même jour, selon la notice
verdict-treat-once-broodless = traiter contre le varroa dès qu’un coup d’œil ne montre plus de couvain, selon la notice
verdict-treat-broodless = traiter contre le varroa hors couvain, selon la notice et la loi
verdict-look-for-eggs = chercher des œufs ; s’il n’y en a pas, donner une reine ou réunir
verdict-queen-look-again = { $trouble } : chercher des œufs
verdict-queen-wait = { $trouble } : rien par le froid ; regarder quand il fait doux
verdict-queen-shake-out = { $trouble } : la secouer un jour chaud, ne pas donner de reine
verdict-queen-join-or-give = { $trouble } : { $join } ou donner une reine fécondée
verdict-queen-join = { $trouble } : { $join }, trop tard pour une reine
verdict-unite-it = la réunir
verdict-unite = la réunir à { $with }
verdict-give-brood = donner un cadre de couvain operculé pris à { $from }
verdict-set-beside = la mettre à côté de { $with }, paroi contre paroi, quand les abeilles ne volent plus
verdict-feed-syrup = commencer le sirop, 3:2
verdict-feed-thin-syrup = sirop léger, 1:1, environ { VOLUME(0.001, us: 1) } à la fois
verdict-feed-solid = candi juste sur les abeilles
verdict-bring-near = suspendre les provisions éloignées contre les abeilles
verdict-insulate-lid = poser { LENGTH(0.05) } de mousse sur le couvre-cadres
verdict-wrap = emballer les parois de feutre bitumé
verdict-close-mesh = glisser le tiroir sous le grillage
verdict-listen = écouter à la paroi ; silence : regarder un jour doux
verdict-look-in = regarder dedans le premier jour doux
verdict-see-food = la soupeser ou la peser : sa nourriture décide
verdict-see-food-near = le premier jour doux, vérifier que la nourriture touche les abeilles
verdict-see-size = le premier jour doux, compter ses ruelles d’abeilles : la taille décide
verdict-see-queen = le premier jour doux, chercher des œufs : sa reine décide
verdict-see-mites = le premier jour doux, regarder dedans et compter les varroas : ils décident

verdict-why-seen-dead = vue morte
verdict-why-put-to = réunie à { $into }
verdict-why-foulbrood = signes de loque
verdict-why-shut-in = ses abeilles sont enfermées
verdict-why-blocked = une ouverture bouchée
verdict-why-queen-in-doubt = reine en doute
verdict-why-life-in-doubt = peut-être morte
verdict-why-mites-not-counted = varroas non comptés
verdict-why-mites = { NUMBER($per-100) } { $per-100 ->
    [one] varroa
   *[other] varroas
} pour 100
verdict-why-hungry = affamée dès le { DAY($from, style: "short") }
verdict-why-little-left = peu au printemps
verdict-why-food-not-weighed = nourriture non pesée
verdict-why-few-bees = peu d’abeilles
verdict-why-ends-of = la plupart perdues : { $cause }
verdict-why-sign = un signe demande un coup d’œil

verdict-later-count-mites = { DAY($on, style: "short") } recompter les varroas
verdict-later-guards = { DAY($on, style: "short") } grilles à souris posées, grilles à reine et nourrisseurs ôtés
verdict-later-broodless = { DAY($on, style: "short") } plus de couvain : traiter si un comptage le demande
verdict-later-weigh = { DAY($on, style: "short") } peser ou soupeser chaque ruche
verdict-later-look-through = { DAY($on, style: "short") } visite complète, premières fleurs
