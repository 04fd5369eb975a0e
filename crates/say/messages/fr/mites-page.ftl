## La page « Varroas » : les comptages du rucher, et quand un traitement peut agir.

mites-page-heading = Varroas
mites-page-nobody = Personne n’a compté dans ce rucher. Ne voir aucun varroa dit peu : sur 100 prélèvements de 100 abeilles, 37 n’en montrent aucun là où 1 abeille sur 100 en porte un.
mites-page-noted = Noter les varroas lavés, comme <code>mites=14 of 300</code> ; le dernier comptage figure ici.

mites-page-one = { $colony } : { $verdict }.
mites-page-table = Varroas, la pire d’abord
mites-page-caption = Varroas pour 100 abeilles, la pire d’abord ; entre parenthèses, ce que laissent 95 prélèvements pareils sur 100 ; seuil { $line } ({ $region } : { $source })
mites-page-colony = Colonie
mites-page-counted = Compté
mites-page-rate = Pour 100
mites-page-against = Face au seuil
mites-page-found = { NUMBER($found) } sur { NUMBER($bees) }
mites-page-found-on = { NUMBER($found) } sur { NUMBER($bees) }, { DAY($on, style: "marked") }
mites-page-rate-of = { NUMBER($rate, digits: 1) } ({ NUMBER($low, digits: 1) }–{ NUMBER($high, digits: 1) })
mites-page-treated = { $verdict } ; traitée depuis, le { DAY($on) } : recompter
mites-page-more = La suite, d’autres seuils, et qui le dit
mites-page-line = { $region } : { $line } ({ $source })
mites-page-uncounted = <span class="label">Pas comptées</span> { LIST($colonies) }. Elles sont peut-être les pires.

mites-page-windows = Quand un traitement peut agir ici
mites-page-begun = Commencé d’ici le { DAY($safe, style: "marked") } pour être sûr
mites-page-begun-usual = Commencé à coup sûr d’ici le { DAY($safe, style: "marked") } (le { DAY($usual, style: "marked") } suffit une année sur deux)
mites-page-done = Fait avant le { DAY($on, style: "marked") } environ
mites-page-spares = { $begun }, un traitement épargne le couvain des abeilles d’hiver ; chaque semaine de plus en épargne moins, après le { DAY($none, style: "marked") } environ il ne protège que les voisines et les abeilles de l’an prochain, non celles déjà atteintes. En novembre seul, il ne guérit pas cet hiver.
mites-page-classes = Classe par classe
mites-page-class = { SENTENCE($says) } { CAPITAL($brood) } ; { $supers }. { CAPITAL($weather) }.
mites-page-days = Les jours viennent du temps de ce lieu, 8 sur 10 entre ceux des parenthèses.
