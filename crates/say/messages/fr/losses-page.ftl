## La page « Pertes et leçons ».

losses-page-heading = Pertes et leçons
losses-page-kept = Enregistré.
losses-page-on-its-way = L’estimation est en route ; elle dit quand l’hiver finit ici.
losses-page-wrong = { CAPITAL($wrong) }
losses-page-wrong-year = { $text } : écrire l’année de l’automne, par exemple 2025.
losses-page-wrong-count = { $text } : écrire un nombre de colonies.

losses-page-lede = Hiver { $winter } : { NUMBER($lost) } sur { NUMBER($at-risk) } colonies { $is-all-told ->
    [yes] perdues
   *[no] perdues jusqu’ici
}.
losses-page-counted = Compté du { DAY($from) } au { DAY($until) }, quand l’hiver est fini ici. Perdue veut dire : aucune abeille vivante, ou trop petite pour être une colonie ; un problème de reine irréparable ; un sinistre. Faible mais vivante n’est pas perdue, et une colonie réunie à une autre est une de moins à risque (COLOSS BEEBOOK 2013).
losses-page-each = Chaque colonie
losses-page-one = <strong>{ $colony }</strong> : { $says }.
losses-page-examine = L’examiner
losses-page-cost = <span class="label">Coût</span> { NUMBER($colonies) } { $currency } de colonies, { NUMBER($food) } { $currency } de nourriture, pour ce qui en a été noté.
losses-page-worth = Ce que vaut une colonie
losses-page-unnamed = Perdu pour ce que personne ne nomme
losses-page-stands-on = Sur quoi cela repose

losses-page-lost = Perdues
losses-page-lost-of = { NUMBER($rate) } % : { NUMBER($dead) } mortes ou vides, { NUMBER($queen-failed) } reine défaillante, { NUMBER($disaster) } sinistre
losses-page-alive = Vivantes
losses-page-alive-of = { NUMBER($alive) }
losses-page-alive-weak = { NUMBER($alive) }, dont { NUMBER($weak) } { $weak ->
    [one] faible
   *[other] faibles
}
losses-page-luck = Hasard
losses-page-luck-of = S’accorde avec un taux annuel de { NUMBER($low) } à { NUMBER($high) } % (exact) ; { NUMBER($wilson-low) } à { NUMBER($wilson-high) } % selon Wilson
losses-page-next = Prochain hiver
losses-page-next-of = { NUMBER($rate) } % ({ NUMBER($low) } à { NUMBER($high) } %), ramené vers ce que les ruchers perdent d’ordinaire

losses-page-forecast = La prévision face à ce qui est arrivé
losses-page-not-yet = Pas encore : elle est notée quand l’hiver est fini et chaque colonie renseignée, puisque celles qui meurent d’abord ne sont pas un choix équitable.
losses-page-none-scored = Aucune des colonies ne peut être notée.
losses-page-compute = Calculer ce qui était à attendre le { DAY($on) }
losses-page-seconds = (quelques secondes)
losses-page-scored = Prédit, et ce qui est venu
losses-page-colony = Colonie
losses-page-foretold = Prédites vivantes, sur 100
losses-page-foretold-of = { NUMBER($of-hundred) }
losses-page-came = Arrivé
losses-page-came-of = { $is-alive ->
    [yes] vivante
   *[no] morte
}
losses-page-model = Le modèle d’aujourd’hui, interrogé sur le jour où les colonies ont été comptées. Les sinistres et les colonies parties ne sont pas notés ; une reine défaillante compte comme vivante.
losses-page-log = Score logarithmique
losses-page-log-of = { NUMBER($score, digits: 2) }, taux de base { NUMBER($base, digits: 2) }. Plus petit vaut mieux ; si ses chances sont justes, il est entre { NUMBER($low, digits: 2) } et { NUMBER($high, digits: 2) }
losses-page-brier = Score de Brier
losses-page-brier-of = { NUMBER($score, digits: 2) }, taux de base { NUMBER($base, digits: 2) }
losses-page-base = Taux de base
losses-page-base-of = { NUMBER($of-hundred) } vivantes sur 100 : { $source }

losses-page-winters = Les hivers côte à côte
losses-page-winter = Hiver
losses-page-food-given = Nourriture donnée
losses-page-most-mites = Le plus de varroas à l’automne
losses-page-treated = Traitées
losses-page-treated-of = { NUMBER($times) }
losses-page-coldest = Le plus froid noté
losses-page-winter-lost = { NUMBER($lost) } sur { NUMBER($at-risk) }
losses-page-winter-lost-so-far = { NUMBER($lost) } sur { NUMBER($at-risk) }, { NUMBER($not-told) } pas encore renseignées
losses-page-food = { MASS($food, digits: 1, us: 0) }, { NUMBER($price) } { $currency }
losses-page-none-noted = rien de noté
losses-page-mites = { NUMBER($found) } sur { NUMBER($bees) } abeilles, { $colony }, { DAY($on) }
losses-page-no-count = aucun comptage gardé
losses-page-cold = { TEMPERATURE($air) }, { DAY($on) }
losses-page-earlier = Les colonies des hivers antérieurs sont celles qui y ont été notées : le comptage d’automne n’est gardé que pour le dernier.

losses-page-others = Ce que d’autres ont perdu
losses-page-told = Comme des apiculteurs l’ont dit à des enquêtes, non comme un laboratoire l’a trouvé
losses-page-rate = { NUMBER($rate, digits: 1) } % ({ NUMBER($low, digits: 1) } à { NUMBER($high, digits: 1) })
losses-page-who = Qui
losses-page-of-which = { $who } ; { $of-which }
losses-page-read = Où on l’a lu
losses-page-survey = Pour l’enquête annuelle
losses-page-survey-numbers = Les nombres que demandent les enquêtes de pertes, à recopier. Ce que le registre ne contient pas reste ouvert.
losses-page-no-record = pas au registre

losses-page-count = Compter les colonies
losses-page-count-what = Une fois l’hiver fini, dire ce qu’est chacune. Une colonie réunie à une autre se note à sa ruche, sous la forme <code>united=NAME</code>.
losses-page-count-of = <strong>{ $colony }</strong>, { $fate }
losses-page-count-of-untold = <strong>{ $colony }</strong>
losses-page-as-noted = comme c’est noté
losses-page-is-alive = vivante, la reine pond
losses-page-is-weak = vivante, faible
losses-page-is-queen-failed = reine défaillante
losses-page-is-dead = morte
losses-page-is-disaster = sinistre
losses-page-is-sold = vendue
losses-page-day = Jour, si ce n’est pas le { DAY($today) }
losses-page-keep = Enregistrer le comptage
losses-page-came-or-went = Colonies venues ou parties qui ne sont pas au registre
losses-page-added = Achetées ou issues de divisions depuis l’automne
losses-page-removed = Vendues ou réunies depuis
losses-page-count-too = Les compter aussi
losses-page-not-kept = Elles changent qui était à risque sur cette page ; elles ne sont pas gardées.
losses-page-no-answer = { $colony } : { $text } n’est aucune des réponses.
losses-page-not-counted = Aucune colonie n’a été comptée ; choisir une réponse pour une au moins.

losses-page-club = L’hiver d’une association
losses-page-members = Un membre par ligne : nom, perdues / colonies
losses-page-example = Anne 1/5
losses-page-pool = Les réunir
losses-page-too-many = Plus de { NUMBER($most) } membres ; dans un terminal, snowhum losses --club FILE lit une liste de toute longueur.
losses-page-wrong-member = { $text } : écrire nom, perdues / colonies, par exemple Anne 1/5.
losses-page-club-lost = { NUMBER($lost) } sur { NUMBER($at-risk) } colonies de { NUMBER($members) } membres perdues : <strong>{ NUMBER($rate, digits: 1) } %</strong> en tout ({ NUMBER($low, digits: 1) } % à { NUMBER($high, digits: 1) } % ; { $method }).
losses-page-club-mean = La moyenne des taux propres aux membres est { NUMBER($mean, digits: 1) } %.
losses-page-club-spread = Entre les membres, cela s’étale { NUMBER($times, digits: 1) } fois autant que le hasard seul.
losses-page-club-ends = { NUMBER($without) } sans perte, { NUMBER($lost-all) } ont tout perdu.
