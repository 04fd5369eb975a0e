## Le printemps : quelle ruche soupeser d’abord, quand ouvrir, que chercher, que donner, quelle force est forte.

spring-hungry = affamée
spring-may-run-short = peut manquer
spring-fed = nourrie
spring-lasts = la nourriture dure jusqu’au { $goal } dans au moins 9 hivers sur 10
spring-lasts-most = 1 sur 10 a de la nourriture pour { NUMBER($early) } { $early ->
    [one] jour
   *[other] jours
} ou moins ; le plus probable, jusqu’au { $goal }
spring-lasts-days = de la nourriture pour environ { NUMBER($days) } { $days ->
    [one] jour
   *[other] jours
} ; 1 sur 10 pour { NUMBER($early) } ou moins
spring-lasts-if-alive = { $lasts } ; en vie : { $alive }

spring-danger = Le danger ne finit pas en février. Le couvain prend deux à trois fois la nourriture du milieu de l’hiver, et les jours froids empêchent les abeilles d’aller en chercher : la plupart des colonies qui meurent de faim le font en mars, en avril ou, dans le nord, début mai.
spring-danger-until = Ici il n’est pas passé avant le { DAY($until) } environ.
spring-danger-none = Il est peu probable qu’une ruche du rucher soit à court d’ici là ; les soupeser toutes quand même.
spring-danger-none-by = Il est peu probable qu’une ruche du rucher soit à court d’ici au { $goal } ; les soupeser toutes quand même.
spring-danger-hives = Dans au moins 1 hiver sur 10, la nourriture s’épuise ici : { LIST($hives) }.

spring-open-likely = Le prochain jour bon pour une première visite est le plus probablement le { DAY($on) }, selon { $share } des temps possibles.
spring-open-any = Des { NUMBER($days) } prochains jours, aucun à lui seul n’est probablement bon pour une première visite, mais { $any } des temps possibles en ont un ou plus ; le { DAY($on) }, selon { $share }.
spring-open-cold = Les jours qui viennent sont trop froids pour les cadres ; un couvercle ôté une minute est autre chose.
spring-open-usual = Ici le premier de ces jours vient { $when }.
spring-open-others = Une première visite à partir de { TEMPERATURE($first) }, chaque cadre à partir de { TEMPERATURE($full) }, temps calme et sec ; d’autres disent aucun cadre sous { TEMPERATURE($least) }. Certains ôtent un couvercle quelques secondes, même par gel, pour sauver une colonie affamée.

spring-look-pollen = Avant d’ouvrir : les abeilles rentrent-elles du pollen ?
spring-look-pollen-why = Une colonie qui rentre du pollen a très probablement une reine qui pond ; on peut laisser son couvain en paix aujourd’hui.
spring-look-pollen-else = Pas de pollen alors que les voisines en rentrent : ouvrir celle-ci d’abord.
spring-look-seams = Combien de ruelles d’abeilles, et où dans la ruche ?
spring-look-seams-why = La force et la place avant de rien déplacer.
spring-look-seams-else = Aucune vivante : la fermer aussitôt contre les pillardes, et chercher la loque avant de rien réutiliser.
spring-look-food = Nourriture : un à deux cadres pleins à côté du couvain
spring-look-food-why = C’est maintenant que le couvain mange le plus, et les jours froids retiennent les abeilles.
spring-look-food-else = Moins que cela : nourrir aujourd’hui, au-dessus ou à côté de la grappe.
spring-look-eggs = Des œufs ou du jeune couvain, en cellules d’ouvrières
spring-look-eggs-why = Une reine était là il y a trois jours ; pas besoin de la voir.
spring-look-eggs-else = Du couvain de mâles seulement, ou des mâles dès le début du printemps : la reine faiblit ou n’est plus là ; réunir la colonie si elle est saine.
spring-look-brood = Opercules bombés, secs et entiers ; larves nacrées
spring-look-brood-why = Ce qui est contagieux se montre d’abord dans le couvain.
spring-look-droppings = Des déjections sur les rayons et les têtes de cadres
spring-look-droppings-why = Longue claustration ou mauvaise nourriture ; de l’extérieur, personne ne peut en distinguer la nosémose.
spring-look-droppings-else = Beaucoup : un échantillon au laboratoire, les cadres souillés retirés plus tard.
spring-look-floor = Plancher net, pas d’humidité au-dessus de la grappe
spring-look-floor-why = Les mortes de l’hiver moisissent et bouchent le passage. Un peu de moisi sur les cadres de rive ne fait pas de mal : les abeilles le nettoient.
spring-look-floor-else = Changer ou racler le plancher ; sécher le couvercle.

spring-solid = Nourriture solide
spring-solid-waits = La faim, par tout froid qui permet d’ôter le couvercle une minute.
spring-solid-how = Candi, sucre en plaque ou sucre humide sur les têtes de cadres, juste au-dessus de la grappe ; un cadre de provisions d’une ruche saine du même rucher vaut encore mieux. Jamais du côté éloigné : les abeilles ne traversent pas de rayons froids.
spring-syrup = Sirop léger, 1:1
spring-syrup-how = Seulement où la nourriture manque ; il stimule le couvain. Environ { VOLUME(0.001, us: 1) } à la fois, entrée réduite.
spring-pollen = Apport de pollen
spring-pollen-after-syrup = Pas avant que l’on puisse donner du sirop, dans cet ordre ; d’après les fleurs seules, ce serait vers le { DAY($on) }.
spring-pollen-only = Seulement où il n’en rentre pas.
spring-pollen-how = Un pollen précoce fait commencer un couvain qu’il faut nourrir et tenir chaud jusqu’au bout ; une aide donnée trop tôt les affame.

spring-very-weak = très faible
spring-below-usual = sous la normale d’ici
spring-usual = dans la normale d’ici
spring-above-usual = au-dessus de la normale d’ici
spring-usual-not-known = aucun chiffre habituel n’est connu pour ce lieu et cette date

spring-weak-why = Chercher d’abord pourquoi. Ne jamais réunir une colonie malade : la maladie va avec. Ailes atrophiées, couvain en mosaïque ou affaissé, déjections partout, cela veut dire ne pas réunir.
spring-weak-room = Réduire son espace : abeilles, couvain et nourriture sur peu de cadres derrière une partition, petite entrée, emballage et couvercle chaud laissés en place.
spring-weak-unite = Deux colonies faibles n’en font pas une forte. Une faible saine se met sur une forte avec une feuille de journal entre elles, quand les abeilles volent presque chaque jour ; de deux reines, garder la meilleure.
spring-weak-feed = Ne donner ni couvain à chauffer ni sirop stimulant au-delà de sa force ; la nourriture tout contre son couvain.
