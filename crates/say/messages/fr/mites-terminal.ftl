## Un comptage de varroas, dans le terminal.

mites-terminal-line = Seuil
mites-terminal-line-says = { $says } ({ $region } : { $source })
mites-terminal-a-day = par jour
mites-terminal-per-100 = pour 100 abeilles
mites-terminal-in-bees = { $mites ->
    [one] { NUMBER($mites) } varroa
   *[other] { NUMBER($mites) } varroas
} sur { NUMBER($bees) } abeilles
mites-terminal-in-days = { $mites ->
    [one] { NUMBER($mites) } varroa
   *[other] { NUMBER($mites) } varroas
} en { NUMBER($days, digits: "all") } jours
mites-terminal-found = { $mites ->
    [one] { NUMBER($mites) } varroa
   *[other] { NUMBER($mites) } varroas
}

mites-terminal-one = { $counted }, { NUMBER($rate, digits: 1) } { $unit } : { $verdict }
mites-terminal-range = Fourchette
mites-terminal-ranges = { NUMBER($even-low, digits: 1) } à { NUMBER($even-high, digits: 1) } { $unit } dans 95 prélèvements pareils sur 100 si les varroas étaient répartis également ; ils ne le sont pas : { NUMBER($low, digits: 1) } à { NUMBER($high, digits: 1) } est plus proche
mites-terminal-truly = En vrai
mites-terminal-missed = { NUMBER($rate, digits: 1) } pour 100 abeilles ({ NUMBER($low, digits: 1) } à { NUMBER($high, digits: 1) }) avec ceux que manque la méthode ({ $method }) ; les seuils sont tracés pour le comptage tel quel
mites-terminal-chance = Chance
mites-terminal-over = { NUMBER($hundred) } sur 100 que le vrai nombre dépasse { NUMBER($line, digits: "all") } pour 100
mites-terminal-clean = Un net
mites-terminal-finds-none = ne trouve aucun varroa quand il y en a vraiment { LIST($misses, between: " ; ") }
mites-terminal-miss = { NUMBER($mites, digits: "all") } pour 100 dans { $samples } prélèvements sur 100
mites-terminal-under-one = moins de 1
mites-terminal-at-most = au plus { NUMBER($most) }
mites-terminal-about = { NUMBER($samples) }
mites-terminal-between = { NUMBER($least) } à { NUMBER($most) }

mites-terminal-most = Le plus : { $colony }, { NUMBER($rate, digits: 1) } { $unit }. { NUMBER($colonies) } colonies prélevées
mites-terminal-of-several = { $counted }, { NUMBER($rate, digits: 1) } { $unit } ({ NUMBER($low, digits: 1) } à { NUMBER($high, digits: 1) }) : { $verdict }
mites-terminal-yard = Rucher
mites-terminal-mean = Moyenne
mites-terminal-mean-is = { NUMBER($mean, digits: 1) } { $unit }, { NUMBER($low, digits: 1) } à { NUMBER($high, digits: 1) } pour la moyenne du rucher
mites-terminal-not-counted = Pas comptées : { LIST($colonies) }. Elles sont peut-être les pires.

mites-terminal-what-counted = qu’a-t-on compté à { $colony } ? Par exemple : snowhum mites { $colony } 14/300
mites-terminal-wrong-count = « { $count } » : écrire varroas et abeilles, par exemple 14/300
mites-terminal-nobody-counted = personne n’a compté de varroas dans { $yard } ; donner --found et --bees, ou les écrire dans le fichier de rucher
mites-terminal-days-wanted = un lange se lit par jour : donner par --days combien de temps il est resté
mites-terminal-sample-right = écrire NOM=VARROAS/ABEILLES, par exemple Alder=2/300
mites-terminal-the-colony = la colonie
