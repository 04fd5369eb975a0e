## Les pertes d’un hiver, dans le terminal.

losses-terminal-unnamed = Perdu pour ce que personne ne nomme
losses-terminal-percent = { NUMBER($low) } à { NUMBER($high) } %

losses-terminal-yard = { NUMBER($lost) } sur { NUMBER($colonies) } colonies perdues : { NUMBER($percent) } %
losses-terminal-lost = Perdues
losses-terminal-how-lost = { NUMBER($dead) } mortes ou vides, { NUMBER($queen-failed) } reine défaillante, { NUMBER($disaster) } sinistre
losses-terminal-alive = { NUMBER($alive) }
losses-terminal-alive-weak = { NUMBER($alive) }, dont { NUMBER($weak) } { $weak ->
    [one] faible
   *[other] faibles
}
losses-terminal-luck = Hasard
losses-terminal-luck-fits = s’accorde avec un taux annuel de { $exact } (Wilson { $wilson })
losses-terminal-next = Ensuite
losses-terminal-next-rate = { NUMBER($percent) } % ({ $range }), ramené vers ce que les ruchers perdent d’ordinaire
losses-terminal-by-chance = Par hasard
losses-terminal-so-many = à un taux habituel de { NUMBER($usual) } %, autant ou plus se perdent dans { $few ->
    [yes] moins de 1
   *[no] { NUMBER($winters) }
} sur 100 hivers

losses-terminal-club = { NUMBER($lost) } sur { NUMBER($colonies) } colonies de { NUMBER($members) } membres perdues : { NUMBER($percent, digits: 1) } %
losses-terminal-overall = En tout
losses-terminal-of-all = { NUMBER($percent, digits: 1) } % de toutes les colonies, { $range } ({ $method })
losses-terminal-average = Moyenne
losses-terminal-mean = { NUMBER($percent, digits: 1) } % est la moyenne des taux propres aux membres
losses-terminal-spread = Étalement
losses-terminal-times = { NUMBER($times, digits: 2) } fois ce que donne le hasard seul ; on prend 1 si c’est moins
losses-terminal-members = Membres
losses-terminal-who = { NUMBER($none) } sans perte, { NUMBER($all) } ont tout perdu

losses-terminal-earlier-right = écrire PERDUES/COLONIES, par exemple 1/5, au plus { NUMBER($most) }
losses-terminal-member-right = écrire NOM=PERDUES/COLONIES, par exemple Ann=1/5
losses-terminal-too-large = { $file } : plus grand que la liste d’aucun club
losses-terminal-line = { $file }, ligne { NUMBER($line) } : « { $written } » : écrire nom, colonies hivernées, colonies perdues, par exemple Ann,5,1
