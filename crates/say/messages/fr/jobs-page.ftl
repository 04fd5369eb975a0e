## La page « Travaux et dates ».

jobs-page-heading = Travaux et dates
jobs-page-calendar = Les prendre dans son calendrier
jobs-page-first-look = Première visite de printemps
jobs-page-none-due = Aucune date de l’année du rucher n’est à tenir aujourd’hui.
jobs-page-due = À faire maintenant : { NUMBER($jobs) }
jobs-page-soon = D’ici un mois
jobs-page-later = Plus tard
jobs-page-past = Son jour est passé
jobs-page-picture = En image
jobs-page-serving = Jours qui conviennent

jobs-page-missed = Si cela n’a pas été fait
jobs-page-at = Pour { LIST($hives, between: ", ") }.
jobs-page-why = Pourquoi
jobs-page-belief = « { $said } » <em>Il n’en est rien.</em> { $so }
jobs-page-who = Qui le dit ?
jobs-page-source = Qui le dit ? { $source }.
jobs-page-caution = La mise en garde de <a href="#{ $id }">{ $job }</a> vaut aussi ici.

jobs-page-autumn = Fin d’été et automne
jobs-page-winter = Hiver
jobs-page-spring = Printemps
jobs-page-window = { DAY($first) } au { DAY($last) }, d’ordinaire { DAY($usual) }
jobs-page-from = à partir du { DAY($first) } ; pas chaque hiver
jobs-page-asked-about = { DAY($on) }, le jour demandé

jobs-page-serving-lede = De chaque demi-mois, les abeilles peuvent voler tant de jours, le couvercle peut être ôté une minute, des cadres peuvent être sortis ; entre parenthèses 8 hivers sur 10.
jobs-page-days = Jours
jobs-page-fly = vol
jobs-page-lid = couvercle ôté
jobs-page-combs = cadres
jobs-page-half = { NUMBER($from) }–{ DAY($to) }
