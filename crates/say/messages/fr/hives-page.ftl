## Les ruches du rucher, et une à ajouter.

hives-page-heading = Ruches
hives-page-stands = <strong>{ $hive }</strong> est maintenant au rucher.
hives-page-mend = À corriger
hives-page-in-yard = Au rucher
hives-page-change = Changer, bouger, ôter
hives-page-add = En ajouter une
hives-page-as-it-stood = Telle qu’elle était le { DAY($on) }, jour du comptage du rucher. Ce qui n’est pas dit est pris comme il est d’usage pour son modèle.
hives-page-add-it = L’ajouter
hives-page-name = Nom
hives-page-kind = Modèle de ruche
hives-page-bees = Abeilles
hives-page-food = Nourriture
