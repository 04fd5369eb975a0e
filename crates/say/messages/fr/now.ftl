## Où en est une colonie.

now-gone-examined = morte et examinée : { $found }
now-gone-sold = vendue : plus suivie
now-gone-disaster = emportée par un sinistre : plus suivie

now-beside-mites = { NUMBER($rate, digits: 1) } varroas pour 100 abeilles le { DAY($on) }, au-dessus du seuil d’ici, et aucun traitement noté depuis : les chances tiennent peu compte des virus qu’ils apportent, donc se fier au comptage avant la chance calculée
now-beside-opening = { $opening ->
    [entrance] entrée
   *[upper-hole] trou supérieur
} : { $state }, noté le { DAY($on) } ; { $drifted ->
    [yes] on compte avec moins d’air à travers la neige, jusqu’à ce que ce soit noté dégagé
   *[no] on compte que presque pas d’air ni aucune abeille n’y passe, jusqu’à ce que ce soit noté dégagé
}
now-beside-room = ce qui a été noté le { DAY($on) } ne se voit que dehors, et d’après le plan elle est rentrée ({ $room }) : noter le jour où on la rentre
now-beside-mouse = une souris a été notée le { DAY($on) } : un jour doux, vérifier qu’il n’y en a pas dedans, puis { $guard }
now-beside-drones = des mâles ont été notés le { DAY($on) } : hors saison, ils annoncent une reine qui faiblit ou qui manque ; chercher du couvain d’ouvrières le premier jour chaud
now-beside-no-pollen = aucun pollen n’est rentré le { DAY($on) } alors que d’autres en rentraient : sa reine est en doute ; l’ouvrir en premier dès qu’il fait chaud

now-moved-dead = abeilles mortes { $against } : { $usual }
now-moved-unexplained = ne correspond à rien que le modèle tenait pour possible ; pris avec réserve. Est-ce exact ?
now-moved-alive = en vie : de { NUMBER($before) } à { NUMBER($after) } sur 100
now-moved-food = nourriture de { MASS($before, digits: 1) } à { MASS($after, digits: 1) }
now-moved-queen = avec une reine : de { NUMBER($before) } à { NUMBER($after) } sur 100 des vivantes
now-moved-several = { LIST($ways) }
now-moved-noted = noté
now-moved-little = dit guère plus que ce qu’on savait

now-look-first-nothing-helps = Rien de ce qui a été essayé dans le modèle n’aide plus que le hasard.
now-look-first-queen = Pas besoin de peser d’abord : ce qu’on fait pour sa reine ne dépend que de son couvain.
now-look-first-listen = Écouter d’abord ; si on les entend, le faire maintenant.
now-look-first-dear = Cela vaut moins que cela ne coûte dans la plupart des ruches pareilles ; le choix est libre.
now-look-first-no-need = Pas besoin de regarder ou de peser d’abord : cela ne changerait pas ce qui est à faire.
now-look-first-weigh = La peser d’abord : { $open ->
    [yes] ce qui est à faire reste ouvert
   *[no] cela peut changer ce qui est à faire
}.
now-look-first-life = Chercher d’abord un signe de vie : { $open ->
    [yes] ce qui est à faire reste ouvert
   *[no] cela peut changer ce qui est à faire
}.

now-open-first-well = a bien volé
now-open-first-thin = a peu volé : peu d’abeilles, ou une reine en doute
now-open-first-soiled = a souillé sa ruche : longtemps enfermée, ou sa nourriture est mauvaise
now-open-first-not-noted = rien n’a été noté pendant que d’autres volaient
now-open-first-did-not-fly = n’a pas volé alors que d’autres volaient

now-round = { DAY($on) } vers { NUMBER($hour) } h, par { TEMPERATURE($air) } : { $hives }
now-round-nothing = du dehors, il y a peu à apprendre cette semaine (en doute, { $hardly ->
    [yes] moins d’une
   *[no] { NUMBER($doubt) }
} sur 100 au plus)
now-round-hive = { $name } ({ $look })
now-round-hives = { LIST($hives) }
now-round-hives-more = { LIST($hives) } et { NUMBER($more) } { $more ->
    [one] autre
   *[other] autres
}
now-round-dead-bees = compter les abeilles mortes devant
now-round-dead-on-floor = compter au crochet les abeilles mortes sur son plancher
now-round-poke = tâter le trou avec une paille
now-round-hole = chercher du givre au trou supérieur
now-round-hum = l’oreille contre la paroi
now-round-flight = voir si elle vole

now-lid = Par { TEMPERATURE($air) } et un vent de { SPEED($wind) } aux ruches, { $may ->
    [look] on peut sortir des cadres pour un bref coup d’œil, le couvain tenu au chaud
    [minutes] le couvercle peut être ôté quelques minutes ; laisser les cadres où ils sont
    [minute] le couvercle peut être ôté une minute : la nourriture posée, le couvercle remis
    [seconds] seulement pour sauver une colonie affamée : quelques secondes, tout prêt en main
   *[shut] laisser fermé : trop froid ou trop de vent
}.
now-lid-other-school = Certains apiculteurs de la Prairie attendent { TEMPERATURE($zero) }, mieux { TEMPERATURE($mild) } ; certains donnent du sucre à { TEMPERATURE($frost) } en quelques secondes.

now-alert-nothing = Plus rien n’appelle au rucher.
now-alert-hive = { $name } : { $about }.
