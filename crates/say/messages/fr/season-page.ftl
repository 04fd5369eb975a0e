## La page où commence un nouvel automne.

season-page-heading = Un nouvel automne
season-page-lede = Les colonies ont été comptées en dernier le { DAY($counted, style: "full") }. Compter celles qui vivent ; leurs ruches restent comme elles sont. L’hiver de { NUMBER($year) } est gardé, avec ses pertes telles quelles.
season-page-gone = Laissées de côté, comme noté : { LIST($colonies) }.
season-page-mend = À corriger
season-page-day = Le jour de la visite
season-page-new = Une ruche nouvelle
season-page-begin = Commencer cet automne

season-page-bees = Cadres d’abeilles, ou weak, middling, strong (faible, moyenne, forte)
season-page-food = Nourriture, ou light, fair, heavy (légère, correcte, lourde), { $unit }
season-page-mites = Varroas, si comptés
season-page-queen = Reine, si on a regardé
season-page-is-gone = Elle est morte, vendue ou réunie

season-page-invented = Le rucher inventé a un seul hiver ; commencer un rucher à soi.
