## La page « Sur papier », et ses feuilles.

paper-page-heading = Sur papier
paper-page-lede = Ouvrir une feuille et l’imprimer ; chacune est complète en noir et blanc.
paper-page-yard = Feuille du rucher
paper-page-yard-what = Chaque ruche dans l’ordre de la tournée : un mot, une date, une chose à faire.
paper-page-round = Feuille de tournée
paper-page-round-what = Des signes à entourer au crayon et en gants, à saisir à la maison.
paper-page-cards = Fiches de ruche
paper-page-cards-what = Une par ruche, avec un code qui ouvre sa page.
paper-page-treatments = Registre des traitements
paper-page-treatments-what = Ce qui a été donné, comme le demande un inspecteur.
paper-page-season = Bilan de la saison
paper-page-season-what = Chaque ruche depuis l’automne : ce qu’elle était, ce qui a été fait, ce que disait l’estimation.
paper-page-terminal = Dans un terminal, <code>snowhum print --out FOLDER</code> les écrit toutes comme fichiers.
paper-page-no-estimate = L’estimation est en route ; imprimer cette page quand elle est là.
paper-page-invented = Un rucher inventé.

paper-page-cut = Découper, plastifier, et épingler à l’intérieur du toit ou au support.
paper-page-here-alone = Cette page a été ouverte sur la machine qui la sert, si bien que ces codes ne mènent nulle part depuis un téléphone. Servir les pages au rucher et imprimer les fiches depuis l’adresse que prend le téléphone.
paper-page-code = La page de { $hive }
paper-page-card-invented = { $yard } (inventé)
paper-page-boxes = { $kind }, corps : { NUMBER($boxes) }
paper-page-registration = N° d’enregistrement { $number }
paper-page-queen = Reine : { $year }  Marquée : ______

paper-page-yard-line = D’ici : le dernier jour de la prochaine chose. Air ______  neige ______  vent ______  tournée du ____________
paper-page-yard-heading = { $yard }, { DAY($on, style: "full") }
paper-page-hive = Ruche
paper-page-verdict = Mot
paper-page-by = D’ici
paper-page-next = Ensuite
paper-page-done = Fait
paper-page-see-flight = voir si elle vole
paper-page-listen-indoors = écouter, racler ses mortes, lire le thermomètre du local
paper-page-listen = écouter et compter les mortes devant

paper-page-season-heading = { $yard } : la saison
paper-page-season-days = Du { DAY($from, style: "full") } au { DAY($until, style: "full") }.
paper-page-autumn = À l’automne
paper-page-stood = environ { $bees } abeilles sur { NUMBER($frames) } cadres ; nourriture { $food }, { $known } ; varroas { $mites } ; reine { $queen }.
paper-page-visits = Passages notés
paper-page-fed = Donné
paper-page-treated = Traité
paper-page-nothing = Rien de noté.
paper-page-given = { MASS($food, digits: 1, us: 0) } de { $what }.
paper-page-treatment = { DAY($on, style: "marked") } : { $class }.
paper-page-months = Ce que disait l’estimation après le dernier passage de chaque mois
paper-page-after = Après
paper-page-alive = Sur 100 ruches pareilles, vivantes
paper-page-food = Nourriture, si vivante
paper-page-mass = { MASS($food, digits: 1, us: 0) }
