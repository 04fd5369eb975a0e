## Les pertes d’un hiver.

losses-price = prix d’une colonie
losses-season = valeur d’une saison
losses-colonies = colonies
losses-none-at-risk = { NUMBER($all) } colonies moins { NUMBER($removed) } vendues ou réunies n’en laissent aucune à risque
losses-more-than-at-risk = { NUMBER($lost) } perdues et { NUMBER($weak) } faibles, c’est plus que les { NUMBER($at_risk) } colonies à risque
losses-winter-cannot-be = un hiver avec { NUMBER($lost) } perdues sur { NUMBER($at_risk) } colonies n’est pas possible
losses-no-member = aucun membre n’est donné
losses-member-cannot-be = { $name } : { NUMBER($lost) } perdues sur { NUMBER($colonies) } colonies, ce n’est pas possible
losses-too-many = plus de colonies qu’il n’y en a

losses-quasi-binomial = quasi-binomiale, dispersion d’au moins 1
losses-exact-binomial = binomiale exacte

losses-luck = Le hasard seul s’accorde avec tout taux annuel de { NUMBER($low) } à { NUMBER($high) } %.
losses-luck-of-few = Avec { $hives ->
    [one] 1 ruche
   *[other] { NUMBER($hives) } ruches
}, { $lost ->
    [0] zéro perte ne prouve aucune méthode
    [one] une perte ne dit presque rien de la méthode
   *[other] { NUMBER($lost) } pertes disent peu de la méthode
} : le hasard seul s’accorde avec tout taux annuel de { NUMBER($low) } à { NUMBER($high) } %.
losses-exact = Chaque ruche a été comptée, le taux est donc exact pour ce rucher et cet hiver ; les fourchettes parlent de hasard, non d’échantillon.
losses-two-rates = Taux global et taux moyen diffèrent : les petits ruchers pèsent autant que les grands dans la moyenne, et perdent plus souvent tout ou rien.
losses-who-answers = Ceux qui répondent sont rarement tous les membres : ceux qui ont des pertes, ou qui n’en ont pas, se taisent peut-être.
losses-few-members = Avec si peu de membres, la fourchette est large à bon droit.

losses-definition = Perdue : aucune abeille vivante, ou trop petite pour être une colonie ; ou un problème de reine irréparable ; ou emportée par un sinistre. Faible mais vivante n’est pas perdue ; réunie à une autre, c’est une de moins à risque, non une perte.

losses-sources-rates = définitions des cas et taux : van der Zee et al. 2013, J. Apic. Res. 52(4), COLOSS BEEBOOK, méthodes d’enquête 2.3 et 10.3.2 ; un seul rucher est un recensement : vanEngelsdorp et al. 2013
losses-sources-usual = taux habituel 20 % : COLOSS 12,0 % (2015/16), 20,9 % (2016/17), 16,7 % (2018/19) ; Canada 27 % (moyenne de 2007 à 2022, CAPA) ; son poids de 20 colonies : jugement
losses-sources-intervals = intervalles : Clopper et Pearson 1934, Wilson 1927, logit quasi-binomial

losses-any-yard = Sur 100 colonies bien nourries et avec peu de varroas, { $any } se perdent au cours d’un hiver moyen dans un rucher comme un autre (8 chances sur 10) ; aucun hiver propre à ce rucher n’est encore renseigné.
losses-own-yard = Sur 100 colonies bien nourries et avec peu de varroas, { $any } se perdent au cours d’un hiver moyen dans un rucher comme un autre (8 chances sur 10) ; après { $winters ->
    [one] l’hiver
   *[other] les { NUMBER($winters) } hivers
} de ce rucher ({ NUMBER($lost) } sur { NUMBER($at_risk) } perdues ainsi), { $own } dans celui-ci.
losses-doubt-left = Cela laisse { NUMBER($percent) } % du doute : les ruches d’un même rucher partagent sa chance et ses hivers, si bien que plus d’hivers disent plus que plus de ruches ; et un comptage ne dit jamais pourquoi elles sont mortes.
losses-no-cause = Le registre n’a pas de cause pour { NUMBER($not_told) } sur { NUMBER($lost) } : varroas ou faim ont pu être derrière, elles comptent pourtant ici.
losses-between = { $least } à { $most }
losses-in-100 = { $is_small ->
    [yes] { NUMBER($hives, digits: 1) }
   *[no] { NUMBER($hives) }
}

losses-sources-unnamed = perdu pour ce que personne ne nomme : { $source } ({ $status })
losses-sources-by-year = son écart entre années : { $source } ({ $status })
losses-sources-by-yard = son écart entre ruchers : { $source } ({ $status })
losses-sources-left-out = laissé de côté : la taille des colonies (les chiffres valent pour une de 18 000 abeilles), et que les années diffèrent de même pour des ruchers voisins
