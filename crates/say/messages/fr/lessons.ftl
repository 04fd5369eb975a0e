## Pertes et leçons : ce qu’est devenue chaque colonie dans un hiver, ce qui est à faire l’automne prochain.

lessons-alive = vivante
lessons-weak = vivante mais faible
lessons-queen-failed = reine défaillante
lessons-dead = morte
lessons-disaster = emportée par un sinistre
lessons-sold = vendue
lessons-united = réunie à une autre
lessons-not-told = pas encore renseigné

lessons-line = { LIST($parts, between: " ; ") }
lessons-not-told-seen = pas encore renseigné ; vue vivante en dernier le { DAY($on) }
lessons-noted = { $fate }, noté le { DAY($on) }
lessons-not-examined = pas examinée
lessons-first-sign = premier signe : { $what }, { DAY($on) }
lessons-now = maintenant : { $next }
lessons-next-autumn = l’automne prochain : { $next }

lessons-kept-foulbrood = signes de loque : ne rien déplacer, prévenir les services vétérinaires ou l’autorité
lessons-kept-likeliest = le plus probable : { $cause }, { NUMBER($hives) } ruches pareilles sur 100
lessons-kept-no-cause = aucune cause n’a été gardée

lessons-trouble-mites = { NUMBER($mites) } { $mites ->
    [one] varroa
   *[other] varroas
} sur { NUMBER($bees) } abeilles
lessons-trouble-stores = { MASS($stores, digits: 1) } de provisions quand la règle d’ici en demande { MASS($least, unit: "no") }
lessons-trouble-small = { NUMBER($bees) } abeilles à l’automne
lessons-trouble-queen-late = une reine fécondée tard
lessons-trouble-queen-old = une reine de { NUMBER($year) }
lessons-trouble-wings = ailes atrophiées
lessons-trouble-light = légère quand on l’a soupesée
lessons-trouble-queen-dead = une reine morte sur la planche
lessons-trouble-drones = des mâles hors saison
lessons-trouble-streaks = des traînées sur la ruche
lessons-trouble-mouse = une souris ou ses traces
lessons-trouble-robbers = pillardes ou guêpes
lessons-trouble-entrance = l’entrée bouchée
lessons-trouble-upper-entrance = le trou supérieur bouché
lessons-trouble-silence = plus aucun bruit d’abeilles

lessons-next-foulbrood = d’abord l’avis de l’autorité
lessons-next-mites = les varroas d’abord : compter début { DAY($early, style: "month") }, et traiter avant que les abeilles d’hiver soient élevées
lessons-next-starved = peser en { DAY($late, style: "month") } et nourrir jusqu’au repère du plan
lessons-next-isolation = rapprocher la nourriture tout contre les abeilles avant le grand gel, et les hiverner sur moins de cadres
lessons-next-queen = remplacer la reine d’ici { DAY($early, style: "month") }, ou réunir en { DAY($late, style: "month") } si les abeilles sont saines
lessons-next-small = si elle est saine mais petite, la réunir à une forte en { DAY($late, style: "month") }, pas en hiver
lessons-next-damp = habiller le couvercle : d’abord de la chaleur au-dessus des abeilles, et une issue pour l’eau
lessons-next-dysentery = hiverner sur du sucre plutôt que sur du miel foncé, et envoyer un échantillon d’abeilles au printemps
lessons-next-mice = grilles posées avant que les nuits gèlent, sans personne dedans
lessons-next-robbed = une entrée étroite pendant qu’on nourrit, les plus faibles d’abord
lessons-next-poison = demander à l’autorité ce qui a été pulvérisé près d’ici, et garder un échantillon congelé
lessons-next-never-counted = ses varroas n’ont jamais été comptés, et vivre ne prouve rien à leur sujet : compter au printemps
lessons-next-lived-with = elle a vécu avec { NUMBER($mites) } { $mites ->
    [one] varroa
   *[other] varroas
} sur { NUMBER($bees) } abeilles le { DAY($on) } : compter au printemps, ils ne sont pas partis

lessons-remember = { $colony }, hiver { $winter }, { $found }.
lessons-remember-next = { $colony }, hiver { $winter }, { $found } : { $next }.

lessons-open = { NUMBER($not-told) } sur { NUMBER($at-risk) } pas encore renseignées : { $over ->
    [yes] les compter pour clore l’hiver
   *[no] l’hiver n’est pas fini
}. La perte est entre { NUMBER($least) } et { NUMBER($most) } sur { NUMBER($at-risk) }.
lessons-winter-ends = L’hiver finit ici vers le { DAY($on) } ; le danger ne finit pas en février.
lessons-no-proof = Avoir survécu ne prouve pas qu’il y a peu de varroas : compter au printemps.

lessons-forecast-better = La prévision a été moins surprise par cet hiver que le taux de base.
lessons-forecast-worse = Le taux de base a été moins surpris par cet hiver que la prévision.
lessons-forecast-alike = Prévision et taux de base ont été également surpris.
lessons-forecast-failed = Un score au-dessus de { NUMBER($high, digits: 2) } vient moins de 1 hiver sur 20 si ses chances sont justes : la prendre ici avec réserve.
lessons-forecast-lucky = Le résultat est meilleur que ses propres chances ne le laissaient attendre : de la chance, aussi.
lessons-forecast-helped = Nourries ou habillées depuis ce jour : { LIST($colonies) }. La prévision vaut pour des ruches laissées seules, si bien qu’une mort évitée compte contre elle.
lessons-forecast-hives = { $hives ->
    [1] Une ruche
    [2] Deux ruches
    [3] Trois ruches
    [4] Quatre ruches
    [5] Cinq ruches
    [6] Six ruches
    [7] Sept ruches
    [8] Huit ruches
    [9] Neuf ruches
    [10] Dix ruches
    [11] Onze ruches
    [12] Douze ruches
   *[other] { $hives } ruches
}
lessons-forecast-too-few = { $hives } : pas de quoi distinguer une bonne prévision du hasard ; il en faudrait environ { NUMBER($needed) } comme celles-ci, sur plusieurs hivers.
lessons-forecast-enough = Autant de ruches commencent à distinguer une bonne prévision du hasard ; celles d’un même hiver partagent son temps, et comptent pour moins.
lessons-forecast-same = { $hives } sous une prévision qui dit ce que dit le taux de base : cela n’apprend rien sur elle.

lessons-survey-before = Colonies avant l’hiver, { DAY($on, style: "full") }
lessons-survey-added = Achetées ou issues de divisions depuis
lessons-survey-removed = Vendues ou réunies depuis : moins à risque, non perdues
lessons-survey-alive = Vivantes à la fin de l’hiver ici, { DAY($on, style: "full") }
lessons-survey-weak = Dont faibles mais vivantes
lessons-survey-queen-failed = Perdues : problème de reine irréparable
lessons-survey-disaster = Perdues : sinistre (feu, inondation, chute, ours, vol)
lessons-survey-dead = Perdues : mortes ou vides
lessons-survey-not-told = Pas encore renseignées
lessons-survey-lost-by = Connues perdues d’ici le { DAY($on) }, comme le demandent les enquêtes à jours fixes
lessons-survey-empty = Parmi les mortes : ruche vide
lessons-survey-starved = Parmi les mortes : abeilles mortes dans les cellules et pas de nourriture
lessons-survey-with-food = Parmi les mortes : mortes avec de la nourriture dans la ruche
lessons-survey-not-known = Parmi les mortes : inconnu
lessons-survey-queens = Reines de cette année, parmi celles dont l’année est connue
lessons-survey-counted = Colonies dont les varroas ont été comptés
lessons-survey-months = Mois de traitement contre le varroa
lessons-survey-mesh = Ruches à plancher grillagé
lessons-survey-forage = Butinage, transhumances, cadres renouvelés
lessons-survey-number = { NUMBER($number) }
lessons-survey-of = { NUMBER($number) } sur { NUMBER($all) }
lessons-survey-treated = { LIST($months) }
lessons-survey-month = { DAY($on, style: "short-month") } ({ $class })
