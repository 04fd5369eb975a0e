## Les pages d’un club.

club-page-week = Cette semaine
club-page-sharing = Partage
club-page-losses = Pertes
club-page-night = La nuit
club-page-language = Langue
club-page-who = Connecté : { $member }
club-page-back = Rien n’a été changé. <a href="/">À la première page</a>.
club-page-missing = Cette page n’existe pas ici, ou elle est destinée à d’autres.
club-page-unreadable = Les données du club ne peuvent être lues en ce moment. Réessayer dans une minute ; si cela dure, le dire à qui tient la machine du club.

## L’entrée.

club-page-sign-in = Se connecter
club-page-sign-in-lede = Ce sont les pages d’un club. Elles s’ouvrent avec la clé que le club a remise.
club-page-key = Clé
club-page-key-lost = Ce navigateur reste alors connecté 30 jours après son dernier passage, 180 jours au plus. Perdue ? Qui tient la machine du club en fait une autre avec <code>snowhum club member NAME</code> ; l’ancienne n’ouvre alors plus rien.
club-page-key-wrong = Ce n’est pas une clé de ce club. Rien n’a été ouvert.

## Qui a besoin d’aide cette semaine.

club-page-help-heading = Qui a besoin d’aide cette semaine
club-page-read = Lue ici : la nuit du { DAY($on, style: "full") }, la dernière qui soit complète.
club-page-old = C’était il y a { NUMBER($days) } jours. Ce qui est venu depuis n’y est pas.
club-page-no-night = Aucune nuit n’est encore complète ; rien n’est donc connu ici.
club-page-no-yards = Cette nuit n’a interrogé aucun rucher à soi ni partagé.
club-page-help-needed = { $yards ->
    [one] <strong>{ NUMBER($yards) }</strong> rucher sur { NUMBER($of) } a besoin de quelqu’un
   *[other] <strong>{ NUMBER($yards) }</strong> ruchers sur { NUMBER($of) } ont besoin de quelqu’un
} d’ici une semaine.
club-page-help-none = { $yards ->
    [one] Le seul rucher ici n’a besoin de personne d’ici une semaine.
   *[other] Aucun des { NUMBER($yards) } ruchers n’a besoin de quelqu’un d’ici une semaine.
}
club-page-help-none-known = { $yards ->
    [one] Le seul rucher connu n’a besoin de personne d’ici une semaine.
   *[other] Aucun des { NUMBER($yards) } ruchers connus n’a besoin de quelqu’un d’ici une semaine.
}
club-page-help-unknown = { $yards ->
    [one] D’un rucher, rien n’est connu pour cette semaine.
   *[other] De { NUMBER($yards) } ruchers, rien n’est connu pour cette semaine.
}
club-page-first = D’abord : { NUMBER($yards) }
club-page-then = Ensuite : { NUMBER($yards) }
club-page-unknown = Inconnu pour cette semaine : { NUMBER($yards) }
club-page-alone = À laisser en paix, ou partis : { NUMBER($yards) }
club-page-invented = { $keeper }, un rucher inventé
club-page-other-day = Réponse pour le { DAY($of, style: "full") } : elle ne dit rien de cette semaine.
club-page-failed = Pas de réponse : { $why }
club-page-later = Plus tard, pour tout le rucher
club-page-well = Bien au printemps : { $is-same ->
    [yes] { NUMBER($now) } sur 100.
   *[no] { NUMBER($now) } sur 100 en l’état, { NUMBER($done) } si tout est fait.
}

## Ce qui est partagé.

club-page-sharing-heading = Partage
club-page-sharing-lede = Un rucher n’est vu que de son apiculteur, jusqu’à ce qu’il soit partagé ici. Un conseiller qui le lit voit son nom, celui de l’apiculteur, et ce que chaque nuit dit de ses ruches.
club-page-count-what = Le club compte les colonies et les pertes des hivers passés. Il ne les montre qu’en sommes, d’au moins { NUMBER($yards) } ruchers de { NUMBER($members) } membres.
club-page-no-own = Aucun rucher à soi n’a encore été remis.
club-page-readers = Qui le lit
club-page-no-mentors = Le club n’a pas encore d’autre conseiller.
club-page-count = Compter ses hivers
club-page-keep = Garder

## Les pertes.

club-page-losses-heading = Les pertes dans le club
club-page-of-own = Sont comptés les ruchers dont l’apiculteur l’a choisi sous <a href="/sharing">Partage</a>.
club-page-none-counted = Aucun hiver n’est encore compté.
club-page-winter = Hiver { $winter }
club-page-too-few = Moins de { NUMBER($yards) } ruchers de { NUMBER($members) } membres sont comptés : rien n’est montré.
club-page-regions = Par région
club-page-cells-what = Une région mesure { NUMBER($latitude) }° de latitude sur { NUMBER($longitude) }° de longitude. Elle figure seule à partir de { NUMBER($yards) } ruchers de { NUMBER($members) } membres ; toutes les autres figurent ensemble.
club-page-region = Région
club-page-cell = { NUMBER($from-north) }–{ NUMBER($to-north) }° { $is-north ->
    [yes] N
   *[no] S
}, { NUMBER($from-east) }–{ NUMBER($to-east) }° { $is-east ->
    [yes] E
   *[no] O
}
club-page-elsewhere = ailleurs
club-page-yards = Ruchers
club-page-number = { NUMBER($count) }
club-page-lost = Perdues
club-page-lost-of = { NUMBER($lost) } sur { NUMBER($at-risk) }
club-page-rate = Taux, et ce qu’il peut être
club-page-rate-of = { NUMBER($rate, digits: 1) } % ({ NUMBER($low, digits: 1) } à { NUMBER($high, digits: 1) })

## L’avancement des nuits.

club-page-night-heading = La nuit
club-page-night-of = Nuit du { DAY($on, style: "full") }
club-page-progress = { COUNT($done) } ruchers sur { COUNT($asked) }
club-page-progress-failed = { COUNT($done) } ruchers sur { COUNT($asked) } ; { COUNT($failed) } en échec
club-page-workers = { $workers ->
    [0] Aucune machine ne travaille.
    [one] Une machine travaille.
   *[other] { NUMBER($workers) } machines travaillent.
}
club-page-waiting = { COUNT($waiting) } ruchers attendent, { COUNT($taken) } sont pris.
club-page-left = Encore { COUNT($left) }, { $minutes ->
    [one] une minute environ
   *[other] quelque { COUNT($minutes) } minutes
} à cette allure.
club-page-stalled = Encore { COUNT($left) }, et aucune réponse ces cinq dernières minutes.
club-page-failure = <strong>{ $yard }</strong> : { $why }
club-page-others-failed = { $yards ->
    [one] Un autre a échoué et n’est pas listé : il est destiné à d’autres, ou la liste est pleine.
   *[other] { COUNT($yards) } autres ont échoué et ne sont pas listés : ils sont destinés à d’autres, ou la liste est pleine.
}
