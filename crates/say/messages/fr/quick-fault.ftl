## Ce qui manque à une ruche choisie et tapée sur une page.

quick-fault-name = lui donner un nom
quick-fault-same-name = une autre ruche porte ce nom ; donner à chacune le sien
quick-fault-as-of = dire quel jour on a regardé pour la dernière fois, par exemple 2025-10-05
quick-fault-latitude = choisir une ville, ou écrire les degrés nord, par exemple 61.7
quick-fault-longitude = choisir une ville, ou écrire les degrés est, par exemple 27.3
quick-fault-elevation = choisir une ville, ou écrire l’altitude, par exemple 105 m
quick-fault-zone = choisir une ville, ou écrire le fuseau horaire par sa ville, par exemple Europe/Helsinki
quick-fault-kind = choisir le modèle de ruche
quick-fault-strength = dire combien d’abeilles : faible, moyenne ou forte, ou les cadres qu’elles couvrent
quick-fault-food = dire combien de nourriture : légère, correcte ou lourde, ou son poids sans ruche ni abeilles
quick-fault-mites = écrire les varroas trouvés dans l’échantillon ; 0 s’il n’y en avait pas
quick-fault-mites-of = écrire les abeilles de l’échantillon, par exemple 300
