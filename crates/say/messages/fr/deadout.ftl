## Une ruche morte examinée : les causes les plus probables, où regarder ensuite, ce qui peut resservir.

deadout-sure = Le plus probable : { $first }
deadout-unsure = Le plus probable : { $first }, puis { $second } ; on ne peut être sûr de l’ordre
deadout-only = { CAPITAL($cause) }
deadout-look = { $ask } Un oui indique { $yes }, un non { $no }.

deadout-mites = { NUMBER($mites) } { $mites ->
    [one] varroa
   *[other] varroas
} sur { NUMBER($bees) } abeilles le { DAY($on) }
deadout-seen-dead = vue morte le { DAY($on) }
deadout-seen-living = vue vivante le { DAY($on) }
deadout-light = légère quand on l’a soupesée le { DAY($on) }
deadout-stores = { MASS($stores, digits: 1) } de provisions ; la règle d’ici demande { MASS($asked) }
deadout-stores-range = { MASS($stores, digits: 1) } de provisions ; la règle d’ici demande { MASS($least, unit: "no") } à { MASS($most) }
deadout-strength = { NUMBER($own) } abeilles à l’automne ; la colonie médiane du rucher en avait { NUMBER($middle) }
deadout-queen-dead = une reine morte le { DAY($on) }
deadout-queen-late = fécondée tard dans la saison
deadout-queen-old = une reine de { NUMBER($year) }
deadout-wings = ailes atrophiées le { DAY($on) }
deadout-mouse = une souris ou ses traces le { DAY($on) }

deadout-nothing-told = Aucun signe n’est encore donné : ce n’est là que ce que sont d’ordinaire les ruches mortes des petits apiculteurs du nord.
deadout-food-twice = Pas de nourriture du tout et de la nourriture près de la grappe ne vont pas ensemble : regarder encore.
deadout-chain = Des varroas à l’automne laissent une petite grappe, qui meurt ensuite de froid ou à côté de sa nourriture : les deux peuvent être vrais, et c’est ce qui a commencé qui est à corriger.
deadout-close = Fermer la ruche aujourd’hui, pour qu’elle ne soit pas pillée.

deadout-brood-first = seulement après avoir regardé le couvain : { $what }
deadout-rules = { LIST($rules, between: " ; ", alike: "once") }
deadout-comb-stays = non : rien ne quitte la ruche avant que les services vétérinaires l’aient vue
deadout-stores-stay = non : pas aux abeilles
deadout-people = Ni à vendre ni à manger par des gens : du miel de corps qui ont été nourris ou traités.

deadout-sources-foulbrood = signes de loque : sûrs quand on les voit, souvent manqués (Milbrath) ; les spores vivent des dizaines d’années
deadout-sources-signs = quel signe va avec quelle cause : Milbrath 2016 (Michigan State University Extension), Caron 2018 (Bee Culture)
deadout-sources-counts = combien souvent : jugement, chaque table valant 10 ruches ; les fourchettes sont ce que cela pourrait être si d’autres l’avaient remplie
deadout-contradiction = ces signes se contredisent ; regarder encore

deadout-stop-why = Ce peut être la loque américaine ou européenne, qui se propage par les rayons, le miel, les outils et les pillardes. Les spores vivent des dizaines d’années.
deadout-stop-do = Fermer la ruche pour qu’aucune abeille n’y entre. Ne rien déplacer, ne rien prêter, laver mains et outils. Appeler les services vétérinaires ou l’autorité : en bien des lieux, la loi l’exige aussitôt.
deadout-stop-first = Avant toute autre chose, regarder le couvain : opercules affaissés, gras ou percés, larves qui filent, odeur de colle, écaille noire collée à la paroi inférieure des cellules. Un seul de ces signes : s’arrêter.
deadout-stop-clean = Ne voir aucun des quatre ne blanchit pas le couvain : de tels signes sont sûrs quand on les voit et échappent souvent.
