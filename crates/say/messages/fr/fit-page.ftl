## La page « Prête pour l’hiver ? » : six échelles pour chaque colonie, et d’abord une estimation à soi.

fit-page-heading = Prête pour l’hiver ?
fit-page-lede = Chaque colonie vue le { DAY($on) }, face à l’habituel ici : { $country }.
fit-page-learning = Apprendre ? <a href="/fit?guess=1">Deviner, puis voir</a>.
fit-page-last-days = Les derniers jours ici
fit-page-buy = À acheter
fit-page-which = <a href="/feed">Qui reçoit quoi, et comment</a>.

fit-page-food = Nourriture
fit-page-short = Il manque { PORTION($short) } de provisions.
fit-page-why = Pourquoi
fit-page-six = Six échelles, et qui le dit
fit-page-look = Ce qu’il faut regarder
fit-page-who = Qui le dit ?
fit-page-range = { $region }, { $hive } : { $says } ({ $source } ; { $status }).
fit-page-other-school = Autre école : { $says }.
fit-page-unite = { $is-verdict ->
    [yes] Comment on les réunit
   *[no] Pour qui préfère la réunir
}
fit-page-carried = Dans le modèle, seule : { $alone }. Réunie à { $other } : { $together }.
fit-page-no-other = aucune
fit-page-alone = Sur 100 ruches comme celle-ci, environ { NUMBER($so) } arrivent au printemps, { NUMBER($not) } non
fit-page-alone-nearly = { CAPITAL($chance) } ruches comme celle-ci arrivent au printemps
fit-page-together = Sur 100 ruches comme celle-ci, environ { NUMBER($so) } y arrivent en une seule colonie, { NUMBER($not) } non
fit-page-together-nearly = { CAPITAL($chance) } ruches comme celle-ci y arrivent en une seule colonie
fit-page-not-united = Pas réunie

fit-page-picture = { $colony } sur six échelles
fit-page-usual = habituel { $low } à { $high } : { $region }
fit-page-no-range = aucune fourchette n’est connue pour ce lieu
fit-page-stands = { $figure } · { $stands }
fit-page-number = { $is-whole ->
    [yes] { NUMBER($number) }
   *[no] { NUMBER($number, digits: 1) }
}
fit-page-mass = { MASS($mass, digits: 1, us: 0) }
fit-page-mass-bare = { MASS($mass, digits: 1, unit: "no", us: 0) }
fit-page-resistance = { RESISTANCE($lid) }
fit-page-bees = { $number } abeilles
fit-page-frames = { $number } { $is-one ->
    [yes] cadre entier
   *[no] cadres entiers
}
fit-page-winters = { $number } { $is-one ->
    [yes] hiver
   *[no] hivers
} derrière elle
fit-page-mites = { $number } { $is-one ->
    [yes] varroa
   *[no] varroas
} pour 100 abeilles
fit-page-lid = { $number } m² K/W au-dessus des abeilles

fit-page-guesses = Mes avis à côté de ceux du modèle. Ni l’un ni l’autre n’a vu le printemps.
fit-page-facts = Les faits du { DAY($on) }, { $country }. Que faire de chaque colonie ?
fit-page-show = Montrer ceux du modèle
fit-page-again = Deviner encore
fit-page-whole = La page entière
fit-page-seen = Vu
fit-page-not-known = inconnu
fit-page-between = { $middle } ({ $low } à { $high })
fit-page-treated = { $figure } ; traitée { LIST($days) }
fit-page-day = { DAY($on) }
fit-page-not-noted = rien n’est noté ni dans un sens ni dans l’autre
fit-page-nothing-wrong = rien d’anormal
fit-page-guess = Mon avis
fit-page-you = Moi
fit-page-model = Le modèle
fit-page-same = Le même.
fit-page-differ = Ils diffèrent. Là où les raisons ne convainquent pas, regarder de nouveau les abeilles : l’apiculteur sait ce que les chiffres laissent de côté.
