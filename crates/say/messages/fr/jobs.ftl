## Travaux et dates : ce qui est à faire dans l’année au rucher, et quand.

jobs-note-usual-year = Les dates valent pour une année ordinaire ici, non pour celle-ci : regarder aussi le ciel et les jours qui viennent.
jobs-note-not-counted = Aucune colonie n’est encore comptée pour cette saison : couvain et faim ne reposent que sur les règles du métier.
jobs-hive = { $hive } : { $verdict } : { $says }
jobs-hive-then = { $hive } : { $says }
jobs-sentence = { SENTENCE($of) }

jobs-due-now = à faire maintenant
jobs-due-soon = d’ici un mois
jobs-due-later = plus tard
jobs-due-past = passé

jobs-when = { LIST($parts, between: " ; ") }
jobs-when-safe = d’ici le { DAY($safe) } pour être sûr
jobs-when-half = le { DAY($half) } est encore à temps une année sur deux
jobs-when-from = à partir du { DAY($on) } environ
jobs-when-from-until = à partir du { DAY($on) } environ, jusqu’au { DAY($until) } environ
jobs-when-about = vers le { DAY($on) }
jobs-when-about-until = vers le { DAY($on) }, jusqu’au { DAY($until) } environ
jobs-when-between = entre le { DAY($earliest) } et le { DAY($latest) } 8 hivers sur 10
jobs-when-before = 1 hiver sur 10 avant le { DAY($earliest) }
jobs-when-seldom = ne vient que dans { $winters }
jobs-when-never = ici, dans { $winters }
jobs-winters-none = aucun des hivers tirés
jobs-winters-fewest = moins de 1 hiver sur 10
jobs-winters = { $tenths ->
    [one] 1 hiver sur 10
   *[other] { NUMBER($tenths) } hivers sur 10
}

jobs-mite-count-summer = Compter les varroas partout
jobs-mite-count-summer-waits = { NUMBER($days) } jours avant le traitement qui épargne les abeilles d’hiver.
jobs-mite-count-summer-why = Compter maintenant dit si le miel peut rester. Une moyenne du rucher cache la pire des ruches.
jobs-mite-count-summer-missed = Compter quand même : cela dit encore quelles ruches traiter.

jobs-winter-bees-waits = { NUMBER($days) } jours avant que la moyenne de quinze jours passe sous { TEMPERATURE($air) } et que peu de couvain soit commencé ; ou que le jour dure moins de { NUMBER($hours) } heures, si cela vient d’abord.
jobs-honey-off = Retirer le miel
jobs-honey-off-why = Les hausses gênent la plupart des traitements et le nourrissement d’hiver ; le plus précoce des deux décide ici.
jobs-honey-off-others = Là où la grande miellée finit plus tard, sur tilleul, verge d’or ou bruyère, on retire le miel quand elle finit et on traite la même semaine : chaque semaine de retard élève plus d’abeilles d’hiver parmi les varroas. Là où elle finit plus tôt, l’attente aussi.
jobs-honey-off-missed = Le retirer maintenant : traitement et nourriture l’attendent tous deux.

jobs-treat-mites = Traitement varroa commencé
jobs-treat-mites-why = Les abeilles élevées à partir de maintenant doivent vivre jusqu’au printemps. Un traitement plus tardif protège les voisines et l’année prochaine, mais non les abeilles déjà atteintes.
jobs-treat-mites-belief = Traiter en novembre suffit.
jobs-treat-mites-so = À ce moment, les abeilles d’hiver sont déjà élevées, atteintes ou non ; le traitement hors couvain suit celui-ci et ne le remplace pas.
jobs-treat-mites-missed = Même tard, cela protège les voisines et les abeilles de l’année prochaine, non celles déjà atteintes. Le traitement hors couvain vient en plus.

jobs-mite-count-autumn = Recompter les varroas
jobs-mite-count-autumn-waits = Quand les heures les plus chaudes de quinze jours restent en moyenne sous { TEMPERATURE($air) } et que les abeilles ne prennent plus guère de sirop.
jobs-mite-count-autumn-why = Les pillardes rapportent des varroas des ruches mourantes. Passé ce jour, on n’ouvre plus pour un prélèvement.
jobs-mite-count-autumn-missed = Laisser maintenant les ruches fermées ; un lange sous un plancher grillagé montre encore ce qui tombe.

jobs-feeding-waits = { NUMBER($days) } jours de nourrissement avant que le sirop doive être fini.
jobs-feed-begun = Commencer à nourrir
jobs-feed-begun-why = Le sirop doit être fini à temps, non commencé à temps ; un grand manque dans un petit nourrisseur prend des semaines.
jobs-feed-begun-missed = Commencer aujourd’hui si cela peut encore être fini au jour limite du sirop ; sinon donner une nourriture solide au-dessus des abeilles.
jobs-entrance-reduced = Réduire les entrées
jobs-entrance-reduced-why = La nourriture attire pillardes et guêpes ; d’abord les nucléus et les ruches faibles.
jobs-entrance-reduced-missed = En vaut encore la peine, de l’extérieur et en une minute.

jobs-syrup-finished = Sirop fini et operculé
jobs-syrup-finished-waits = { NUMBER($days) } jours avant que les heures les plus chaudes de quinze jours restent en moyenne sous { TEMPERATURE($air) } et que les abeilles ne prennent plus guère de sirop.
jobs-syrup-finished-why = Une nourriture liquide ni mûrie ni operculée fermente. Nourrisseurs et hausses vides partent avec.
jobs-syrup-finished-others = Certains donnent du candi comme nourriture principale d’automne : il est mangé plutôt que stocké et peut se donner plus tard.
jobs-syrup-finished-custom = { SENTENCE($custom) }
jobs-syrup-finished-belief = Du sirop en janvier aide.
jobs-syrup-finished-so = Des abeilles en grappe ne le prennent ni ne le mûrissent, et l’humidité les refroidit. Trop tard pour le sirop, cela veut dire candi, sucre en plaque ou cadres de provisions.
jobs-syrup-finished-missed = Retirer ce qui reste et donner une nourriture solide au-dessus des abeilles, ou des cadres de provisions d’une ruche saine du rucher.

jobs-excluder-out = Ôter la grille à reine
jobs-excluder-out-waits = La moyenne d’une semaine passe sous { TEMPERATURE($air) } : les abeilles forment la grappe.
jobs-excluder-out-why = La grappe monte au cours de l’hiver ; une reine restée sous une grille y meurt.
jobs-excluder-out-missed = L’ôter le prochain jour doux et calme, sans sortir de cadre : une reine restée dessous meurt.

jobs-combs-waits = Les heures les plus chaudes d’une semaine passent en moyenne sous { TEMPERATURE($air) }.
jobs-consolidate = Corps ajustés à la grappe
jobs-consolidate-why = Dernier jour pour sortir des cadres : autant de corps que les abeilles en remplissent, la nourriture au-dessus et à côté. Un corps vide au-dessus de la grappe est un grenier froid.
jobs-consolidate-others = Le nombre de corps varie : en Grande-Bretagne on resserre l’espace sur les abeilles ; au Minnesota on hiverne sur trois corps.
jobs-consolidate-missed = Trop froid pour les cadres : laisser les corps comme ils sont, et veiller au couvercle et à la nourriture au-dessus des abeilles.
jobs-top-and-straps = Toit chaud, pente, sangles
jobs-top-and-straps-why = Un isolant sur le couvre-cadres empêche l’eau de se former au-dessus de la grappe ; une pente vers l’avant la laisse couler ; les sangles tiennent dans les tempêtes d’hiver et sur un sol qui gonfle au gel.
jobs-top-and-straps-missed = Même tard, c’est encore bon : couvercle, pente et sangles se font en une minute, n’importe quel jour calme.

jobs-bear-fence-on = Clôture à ours, si besoin
jobs-bear-fence-on-waits = La première nuit de gel ; c’est avant l’hiver que les ours mangent le plus.
jobs-bear-fence-on-why = Un ours qui a mangé une fois revient. Vérifier la clôture avec un testeur.
jobs-bear-fence-on-missed = En vaut encore la peine jusqu’à ce que la neige tienne, et de nouveau avant le dégel.

jobs-mouse-guard = Poser la grille à souris
jobs-mouse-guard-waits = { NUMBER($nights) } nuits de gel en quinze jours : les souris entrent.
jobs-mouse-guard-why = Avant que la souris soit dedans ; vérifier d’abord qu’il n’y en a pas. Une fente de { LENGTH(0.008, us: 2) } ou moins, et assez large pour ne pas se boucher.
jobs-mouse-guard-others = En Finlande, on pose les grilles quand les journées restent sous { TEMPERATURE($air) }.
jobs-mouse-guard-others-about = En Finlande, on pose les grilles quand les journées restent sous { TEMPERATURE($air) }, ici vers le { DAY($on) }, pour qu’aucun pollen ne soit arraché.
jobs-mouse-guard-missed = Vérifier d’abord qu’aucune souris n’est dedans, puis la poser : une grille enferme une souris aussi bien qu’elle l’arrête.

jobs-wrap = Emballer les ruches
jobs-fortnight-falls = La moyenne de quinze jours passe sous { TEMPERATURE($air) }.
jobs-wrap-why = Emballées trop tôt, les abeilles restent au chaud et élèvent du couvain tard. Le dessus compte plus que les côtés. Un emballage ou un filet tenu à distance des parois écarte aussi les pics.
jobs-wrap-others = Au Manitoba, on attend des nuits de { TEMPERATURE($night) } et des journées sous zéro ; beaucoup de ruches ne sont jamais emballées.
jobs-wrap-missed = Même tard, c’est encore bon : n’importe quel jour calme, sans coups.

jobs-winter-yard = Aller au rucher d’hiver
jobs-winter-yard-waits = Quinze jours sans une heure à { TEMPERATURE($air) }.
jobs-winter-yard-why = Des abeilles qui ne volent plus ne retournent pas à l’ancien emplacement. Plus tard, par fort gel, une secousse rompt la grappe.
jobs-winter-yard-missed = Par fort gel, les laisser où elles sont : une secousse rompt la grappe.

jobs-cellar-in = En cave, s’il y en a une
jobs-cellar-in-room = Rentrer : { $room }
jobs-cellar-in-why = Assez froid pour rester en grappe, et sombre ; après le dernier bon vol si l’on a le choix.
jobs-cellar-in-dark = Là où le local est sombre et aéré, on les rentre et on les laisse en paix.
jobs-cellar-in-missed = Un jour froid et calme, on peut encore les rentrer sans secousse ; sinon les laisser dehors.
jobs-own-day = Le jour inscrit au fichier du rucher.
jobs-by-weather = D’après le temps seul : { $when }.

jobs-broodless = Hors couvain : traiter
jobs-broodless-waits = { NUMBER($days) } jours après la première nuit sous { TEMPERATURE($night) }.
jobs-broodless-waits-model = Plus aucune colonie n’a { NUMBER($cells) } cellules de couvain, selon le modèle, et { NUMBER($days) } jours après la première nuit sous { TEMPERATURE($night) }.
jobs-broodless-why = Certains traitements n’atteignent que les varroas sur les abeilles : avec du couvain, d’un quart à deux cinquièmes d’entre eux ; sans, presque tous. S’assurer d’abord qu’il n’y a pas de couvain ; traiter tout le rucher ensemble. Un dégouttement se fait une fois par hiver : répété, il nuit aux abeilles.
jobs-broodless-belief = Un traitement à l’acide oxalique répare tout, couvain ou non.
jobs-broodless-so = Il n’atteint pas les varroas sous les opercules.
jobs-broodless-missed = Le couvain revenu, il atteint moins de varroas : consulter la notice, et compter dès que l’on ouvre les ruches.

jobs-midwinter-weighing = La pesée de l’hiver
jobs-midwinter-weighing-waits = { NUMBER($days) } jours avant que le couvain revienne.
jobs-midwinter-weighing-why = Un mois sans couvain prend environ { MASS(1) }, un mois avec couvain { MASS(3) }. Pesé juste avant, il reste le temps de mettre une nourriture solide au-dessus de la grappe.
jobs-midwinter-weighing-missed = Les soupeser quand même le prochain jour calme : c’est à partir de maintenant que se mange le plus de nourriture.

jobs-brood-begins = Le couvain commence
jobs-brood-begins-waits = Une paume de couvain, selon le modèle.
jobs-brood-begins-why = Dès lors le nid est tenu chaud jour et nuit, et une colonie mange deux à trois fois plus.

jobs-starvation-watch = Soupeser tous les { NUMBER($days) } jours
jobs-starvation-watch-waits = Du premier couvain à la première miellée.
jobs-starvation-watch-why = La plupart des colonies affamées meurent avec du couvain au printemps, non au mois le plus froid.
jobs-starvation-watch-flowers = Un hiver sur dix, rien ne fleurit avant le { DAY($on) }.
jobs-starvation-watch-belief = Le danger finit en février.
jobs-starvation-watch-so = C’est là qu’il commence : du couvain, des nuits froides et pas encore de fleurs. C’est dans les dernières semaines que se mange le plus de nourriture.

jobs-food-runs-out = Provisions peut-être à bout
jobs-food-runs-out-waits = Dans le modèle des ruches du rucher, la nourriture à portée est finie.
jobs-food-runs-out-hive = { $hive } : { $lasts }
jobs-food-runs-out-why = { LIST($hives, between: " ; ") }.

jobs-clean-floor = Premier vol, planchers nets
jobs-clean-floor-waits = La première heure calme et sèche à { TEMPERATURE($air) } après le milieu de l’hiver.
jobs-clean-floor-why = Les mortes de l’hiver sur le plancher bouchent l’entrée et moisissent. Les ruches qui ne volent pas s’ouvrent d’abord.
jobs-clean-floor-missed = En vaut encore la peine le prochain jour de vol.

jobs-melt-check = Fonte, ruches penchées
jobs-melt-check-waits = La neige de l’hiver est descendue à { NUMBER($percent) } % de son plus haut.
jobs-melt-check-why = De l’eau sur le plancher, de la glace devant l’entrée, un support enfoncé d’un côté.
jobs-melt-check-missed = Un coup d’œil ne vient jamais trop tard : de l’eau sur le plancher, un support qui penche.

jobs-bear-fence-thaw = Remettre la clôture à ours
jobs-bear-fence-thaw-waits = La moyenne de quinze jours reste au-dessus de { TEMPERATURE($air) }.
jobs-bear-fence-thaw-why = Les ours se réveillent affamés et les ruches sentent le couvain.
jobs-bear-fence-thaw-missed = La mettre aujourd’hui : les ours rôdent.

jobs-cellar-out = Sortir de cave, si rentrées
jobs-cellar-out-room = Sortir : { $room }
jobs-cellar-out-waits = La moyenne de quinze jours atteint { TEMPERATURE($air) }.
jobs-cellar-out-why = Le soir avant un jour de vol, chacune à son ancien emplacement.
jobs-cellar-out-dark = Aussi tard que le local reste froid, aussi tôt que vient le pollen.
jobs-cellar-out-missed = Les sortir le soir avant le prochain jour de vol.

jobs-first-look = Première visite des cadres
jobs-first-look-waits = La première heure calme et sèche à { TEMPERATURE($air) } une fois que le jour dure { NUMBER($hours) } heures.
jobs-first-look-why = Quelques minutes, et pas plus de cadres qu’il ne faut : nourriture, œufs ou couvain, place.
jobs-first-look-others = Certains ne regardent qu’à partir de { TEMPERATURE($full) } ; personne ne sort de cadre de couvain sous { TEMPERATURE($least) }.
jobs-first-look-missed = Quand même, le prochain jour chaud et calme : nourriture, œufs ou couvain, place.

jobs-spring-syrup = Sirop léger, si à court
jobs-spring-syrup-waits = Les heures les plus chaudes d’une semaine restent en moyenne au-dessus de { TEMPERATURE($air) }.
jobs-spring-syrup-why = Jusque-là une nourriture solide, au-dessus de la grappe. Les abeilles ne vont chercher le sirop et ne le mûrissent que par journées chaudes.

jobs-before-flow = { NUMBER($days) } jours avant la première miellée.
jobs-pollen = Pollen d’appoint, si besoin
jobs-pollen-why = En dernier des trois : nourriture solide, puis sirop, puis pollen. Le couvain qu’il fait commencer doit être nourri et tenu chaud jusqu’au bout.
jobs-pollen-others = Au Minnesota, les ruches fortes reçoivent du pollen dès début mars, pour être divisées tôt.
jobs-pollen-belief = Des galettes de pollen, tôt, aident toujours.
jobs-pollen-so = Elles font commencer un couvain que les nuits froides et les rayons vides affament ensuite.
jobs-pollen-missed = Les abeilles en rapportent sans doute déjà elles-mêmes : regarder d’abord l’entrée.

jobs-unwrap = Déballer les ruches
jobs-unwrap-waits = Les nuits de quinze jours restent en moyenne au-dessus de { TEMPERATURE($air) }, une fois que le jour dure { NUMBER($hours) } heures.
jobs-unwrap-why = D’abord les ruches fortes. Une faible garde le sien plus longtemps : c’est elle qui a le plus de couvain à chauffer pour ses abeilles.
jobs-unwrap-missed = L’ôter à la prochaine visite.

jobs-first-flow = Miellée : saule, aulne
jobs-first-flow-waits = { WARMER($degree-days, unit: "no") } degrés-jours au-dessus de { TEMPERATURE(5) } depuis le milieu de l’hiver : saule et aulne.
jobs-first-flow-why = La nourriture commence à rentrer les jours de vol. La faim dure encore quinze jours après.

jobs-dandelion-waits = Pissenlits en fleur, vers { WARMER($degree-days, unit: "no") } degrés-jours au-dessus de { TEMPERATURE(5) }.
jobs-mite-count-spring = Compter les varroas
jobs-mite-count-spring-why = Une colonie qui a passé l’hiver n’est pas sans varroas : peu au printemps, c’est beaucoup à l’automne.
jobs-mite-count-spring-belief = Elle a survécu, donc elle n’a pas de varroas.
jobs-mite-count-spring-so = Compter à la floraison du pissenlit, et de nouveau avant de retirer le miel.
jobs-mite-count-spring-missed = Compter maintenant : un comptage dit quelque chose tant qu’il y a du couvain.
jobs-reverse = Inverser les corps, possible
jobs-reverse-why = Seulement si le corps du bas est vide et qu’aucun couvain n’est à cheval sur les deux ; sinon cela déchire le nid en deux.
jobs-reverse-missed = Encore possible tant que le corps du bas est vide et qu’aucun couvain n’est à cheval sur les deux.

jobs-source-none = aucune
jobs-source-brood = le modèle d’hiver des colonies du rucher sous le temps de ce lieu
jobs-source-hunger = le modèle d’hiver, les comptages et les notes
jobs-source-own-day = le fichier du rucher
jobs-source-syrup = 13 °C (55 °F) : feuillet de vulgarisation apicole de l’Ontario ; trois semaines pour mûrir : feuillet des apiculteurs finlandais
jobs-source-flow = notre propre calcul ; la date observée de la première miellée peut figurer au fichier du rucher

jobs-calendar-name = { $yard } : travaux et dates
jobs-calendar-title = { $what } ({ $yard })
jobs-calendar-invented = Un rucher inventé.
jobs-calendar-look = Aller voir
jobs-calendar-look-says = Vers { NUMBER($hour) } h : { $hives }.
jobs-calendar-round = Tournée du rucher
jobs-calendar-round-says = Deux semaines après le dernier passage : un coup d’œil à chaque entrée, et à ce qui se trouve devant.
jobs-calendar-belief = Il n’en est rien : « { $belief } » { $so }
