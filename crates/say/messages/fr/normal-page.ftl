## La page « Est-ce normal ? ».

normal-page-heading = Est-ce normal ?
normal-page-lede = Des abeilles mortes devant une ruche, en hiver, c’est courant. Combien y en a-t-il ?
normal-page-others = Autres questions de l’hiver
normal-page-found = { $exact ->
    [yes] { NUMBER($found) } trouvées
   *[no] Jusqu’à { NUMBER($found) } trouvées
} ; { $usual }.
normal-page-next = Ensuite
normal-page-who = Qui le dit ?
normal-page-deaths = { NUMBER($least) } à { NUMBER($most) } abeilles meurent par jour dans une colonie saine de cette taille en cette saison ; la plupart tombent dedans.
normal-page-days = { NUMBER($days) } jours
normal-page-picture = Trouvées, face à l’attendu

normal-page-dead = Abeilles mortes
normal-page-up-to = jusqu’à { NUMBER($bees) }
normal-page-since = Depuis le dernier passage, ou depuis que la neige a couvert les anciennes
normal-page-a-day = un jour
normal-page-a-week = une semaine
normal-page-two-weeks = deux semaines
normal-page-a-month = un mois
normal-page-lie-on = Elles sont sur
normal-page-snow = la neige
normal-page-bare = le sol nu
normal-page-exactly = Comptées exactement, ou un autre mois ?
normal-page-counted = Abeilles mortes comptées
normal-page-since-days = Jours
normal-page-bees = Abeilles dans la colonie, si connu
normal-page-month = Mois (dans le sud, celui de six mois plus loin)
normal-page-ask = Est-ce normal ?

normal-page-wrong = { $text } : écrire { $right }.
normal-page-right-found = un nombre entier d’abeilles mortes, par exemple 30
normal-page-right-days = les jours depuis le dernier passage, par exemple 14
normal-page-right-bees = un nombre d’abeilles, par exemple 12000, ou laisser vide
