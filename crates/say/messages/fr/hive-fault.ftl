## Ruches, locaux et matériaux d’un fichier de rucher.

hive-fault-needs-kind = dire de quel modèle elle est, par exemple kind = "Langstroth 10"
hive-fault-no-kind = « { $written } » n’est pas un modèle de ruche connu
hive-fault-or-own-sizes = { $instead } ; ou écrire "own" avec les mesures
hive-fault-stack = une ruche de { NUMBER($boxes) } corps ne peut pas être
hive-fault-stack-right = nommer de 1 à { NUMBER($most) } corps depuis le bas, par exemple ["deep", "deep"]
hive-fault-no-sizes = a besoin de ses mesures, puisque la ruche est d’un modèle à elle
hive-fault-box-right = prendre l’un de { LIST($known) }, ou écrire les mesures
hive-fault-needs-size = chaque mesure d’un corps à soi est nécessaire, par exemple "450 mm"
hive-fault-needs-frames = dire combien de rayons il tient
hive-fault-large-combs = a des rayons plus grands que le corps
hive-fault-large-combs-right = mesurer le rayon dans son cadre, le corps entre ses parois
hive-fault-narrow = est trop étroit pour { NUMBER($frames) } rayons
hive-fault-narrow-right = un rayon avec son passage prend { LENGTH(0.032, unit: "no", us: 1) } à { LENGTH(0.04, us: 1) } de la largeur
hive-fault-needs-name = donner à la ruche un nom ou un numéro, par exemple name = "Alder"
hive-fault-shut = l’entrée et tous les trous sont fermés : les abeilles ne peuvent sortir ni pour se vider ni pour porter dehors leurs mortes
hive-fault-shut-right = laisser un passage, entrance = "reduced" ou upper_hole = "25 mm" ; un plancher grillagé laisse entrer l’air et ne laisse sortir aucune abeille
hive-fault-needs-wall = dire ce que sont les parois, par exemple wall = "pine 19 mm"
hive-fault-no-cover = laisse la ruche sans couverture
hive-fault-no-cover-right = nommer au moins une couche, par exemple ["plywood 10 mm"]
hive-fault-facing = dans le sens des aiguilles depuis le nord, par exemple "180 deg" ou "south"
hive-fault-needs-side = dire quel côté de cette ruche la touche : front, back, left ou right
hive-fault-no-hive = il n’y a pas de ruche « { $name } »
hive-fault-no-hive-right = nommer une ruche de ce fichier
hive-fault-itself = une ruche ne peut pas se toucher elle-même
hive-fault-itself-right = nommer une autre ruche de ce fichier
hive-fault-sheets = a { NUMBER($sheets) } couches
hive-fault-sheets-right = nommer au plus { NUMBER($most) } couches

hive-fault-materials = le fichier a { NUMBER($materials) } matériaux
hive-fault-materials-right = s’en tenir à { NUMBER($most) }
hive-fault-needs-material-name = donner un nom au matériau
hive-fault-still-air = de { $least } à { $most } fois l’air immobile

hive-fault-rooms = est le local { NUMBER($room) }
hive-fault-rooms-right = s’en tenir à { NUMBER($most) } locaux
hive-fault-needs-room-name = donner un nom au local, par exemple name = "Cellar"
hive-fault-needs-warmth = écrire la température qu’il y fait, par exemple temperature = "4 C"
hive-fault-warmth = entre -20 C et 25 C, par exemple "4 C" ou "2 C to 6 C"
hive-fault-coldest-right = écrire d’abord le plus froid, { $limits }
hive-fault-no-record = est là sans relevé
hive-fault-no-record-right = nommer aussi le fichier, par exemple record = "cellar.csv"
hive-fault-out-early = { $out } n’est pas après le jour d’entrée, { $enters }
hive-fault-out-early-right = écrire un jour après { $enters }
hive-fault-out-over = { $out } n’est pas après as_of, { $as-of } : cet hiver est passé
hive-fault-out-over-right = corriger l’année, ou ôter in et out
hive-fault-in-late = { $enters } n’est pas un jour de l’hiver qui suit as_of, { $as-of }
hive-fault-in-late-right = corriger l’année
hive-fault-no-room-named = est là sans local
hive-fault-no-room-named-right = le nommer aussi, par exemple indoors = "Cellar"
hive-fault-room-right = le décrire dans une table [[indoors]] avec name et temperature, ou écrire "none"
