## La page « Colonie morte ».

dead-page-heading = Colonie morte
dead-page-lede = Pourquoi est-elle morte, et qu’est-ce qui peut resservir ? On cherche la loque d’abord.
dead-page-seen-dead = vue morte
dead-page-shut = En hiver, une ruche qui n’est que silencieuse reste fermée : <a href="/">la page du rucher</a> dit à quel point il est probable qu’elle soit morte.
dead-page-kept = examinée le { DAY($on) } : { $found }

dead-page-title = { $colony } : colonie morte
dead-page-why = { $colony } : pourquoi est-elle morte ?
dead-page-in-record = Au registre : { $kept }.
dead-page-wrong-sign = { $text } : écrire oui, à peu près sûr, non, ou laisser ouvert.
dead-page-wrong-none = Aucun signe n’est donné ; regarder d’abord, puis garder ce qui a été trouvé.

dead-page-brood-lede = D’abord le couvain. Sortir un cadre qui a eu du couvain et regarder dans ses cellules à bonne lumière.
dead-page-go-on = Continuer
dead-page-brood-note = Un oui ou un à peu près sûr arrête ici. Ces signes sont sûrs quand on les voit et souvent manqués : un non ne blanchit pas le couvain.
dead-page-what = Que voit-on ?
dead-page-what-note = Laisser ce qui n’a pas été regardé. Plus on en dit, plus les fourchettes sont étroites.
dead-page-part-bees = Les abeilles
dead-page-part-food = La nourriture
dead-page-part-brood = Le couvain
dead-page-part-hive = La ruche
dead-page-part-known = Ce que l’on sait d’elle
dead-page-brood-again = Le couvain encore une fois
dead-page-ask = Pourquoi est-elle morte ?
dead-page-yes = oui
dead-page-fairly-sure = à peu près sûr
dead-page-fairly-sure-not = à peu près sûr que non
dead-page-no = non
dead-page-did-not-look = pas regardé
dead-page-not-looked-at = pas regardé
dead-page-from-records = D’après le registre, sauf avis contraire : { $seen } ({ $because }).

dead-page-stop = Halte : ce peut être la loque
dead-page-seen = Vu : { LIST($signs, between: ", ") }.
dead-page-stop-reuse = Rayons : { $comb }. Provisions : { $stores }.
dead-page-looked-again = J’ai regardé encore : retour aux quatre questions

dead-page-look-next = Regarder ensuite
dead-page-tell-more = Dire plus de ce que l’on voit
dead-page-reuse = Ce qui peut resservir
dead-page-comb = Rayons
dead-page-stores = Provisions, pour des abeilles
dead-page-people = Gens
dead-page-open = Tant qu’elle est ouverte
dead-page-watch = Ce que l’on en pensait du dehors
dead-page-watch-note = D’après le temps et les notes seulement. Ce n’est pas mêlé aux causes ci-dessus, puisque cela repose sur les mêmes faits.
dead-page-who = Qui le dit ?
dead-page-causes = Sur 100 ruches qui ressemblent à celle-ci ; la fourchette est ce que d’autres qui s’y connaissent pourraient dire
dead-page-cause = Cause
dead-page-of-hundred = Sur 100
dead-page-between = Entre
dead-page-range = { NUMBER($low) } et { NUMBER($high) }
dead-page-taken = { NUMBER($signs) } pris au registre
dead-page-taken-one = { $asked } <strong>{ CAPITAL($seen) }</strong> : { $because }.
dead-page-examined-on = Jour de l’examen, si ce n’est pas le { DAY($today) }
dead-page-keep = Inscrire au registre
