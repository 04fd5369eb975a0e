## La page « D’où viennent les chiffres ».

source-page-heading = D’où viennent les chiffres
source-page-lede = Chaque chiffre sur lequel reposent les réponses : lu dans une publication nommée, pratique courante, de mémoire, ou notre propre jugement. Leurs noms, leur sens et leurs sources sont en anglais, comme dans les fichiers du programme.
source-page-find = Chercher
source-page-look = Chercher
source-page-title = { $file ->
    [winter_parameters] Le modèle d’hiver
    [winter_start] Comment une colonie entre dans le modèle d’hiver
    [winter_hour] Une heure et un jour du modèle d’hiver
    [watch_parameters] Ce que disent les signes
    [watch_looks] Les visites et les jours entre elles
    [now] Mots et toits
    [indoors] Les locaux où hivernent des ruches
    [jobs] Travaux et dates
    [spring_strength] La force au printemps
    [weighing] La pesée
    [empty_hive] La ruche vide
    [edge_losses] Les arêtes de la ruche
    [openings] Ouvertures
    [materials] Matériaux
    [feeds] Nourrissements
    [fit] Prête pour l’hiver
    [rules_of_thumb] Règles du métier
    [deadout] Colonies mortes
    [losses] Pertes et leçons
    [weather_generator] Comment le temps est fait
    [weather_limits] Le temps lu, complété et jugé
    [wind] Le vent aux ruches
    [weather_files] Lieux des fichiers de temps
    [looking_ahead] Jusqu’où les réponses regardent et valent
    [calibration] Le modèle confronté à de vrais hivers
    [drawing] Dessins
    [quick_start] Les quatre premières indications
   *[other] Autres chiffres
}
source-page-file = { $title }, { NUMBER($figures) }
source-page-all = Tous les chiffres
source-page-meaning = Sens
source-page-unit = Unité
source-page-fact = { $fact ->
    [low] Un sur dix en dessous
    [high] Un sur dix au-dessus
    [varies] Chaque ruche calculée tire le sien
    [value] Valeur
    [values] Valeurs
    [status] Statut
    [source] Source
    [name] Nom
    [material] Matériau
    [region] Région
    [range] Fourchette
    [size] Taille
    [length] Longueur
    [width] Largeur
    [depth] Profondeur
    [frames] Cadres
    [combs] Rayons
    [comb] Rayon
    [boxes] Corps
    [box] Corps
    [wall] Paroi
    [wall_r] Résistance de la paroi
    [other] L’autre côté
    [other_r] Résistance de l’autre côté
    [edge] Arête
    [conductivity] Conductivité
    [density] Masse volumique
    [specific_heat] Chaleur massique
    [vapour_resistance] Résistance à la vapeur
    [absorptance] Soleil absorbé
    [breathes] Respire
    [days] Jours
    [months] Mois
    [hour] Heure
    [year] Année
    [winter] Hiver
    [from] De
    [to] À
    [place] Lieu
    [hive] Ruche
    [colony] Colonie
    [yard] Rucher
    [yards] Ruchers
    [belief] Croyance
    [word] Mot
    [words] Mots
    [prior] Avant tout regard
    [given] Donné
    [share] Part
    [cold] Froid
    [cool] Frais
    [mild] Doux
    [warm] Chaud
    [heat] Chaleur
    [sugar] Sucre
    [currency] Monnaie
    [entrance] Entrée
    [upper_hole] Trou supérieur
    [lid] Couvercle
    [wrap] Enveloppe
   *[none] { $written }
}
source-page-unit-of = { $unit ->
    [C] °C
    [day] jour de l’année
    [days] jours
    [hours] heures
    [years] ans
    [share] sur 1
    [chance] sur 1, une chance
    [times] fois
    [degrees] degrés
    [bees] abeilles
    [cells] cellules
    [frames] cadres
   *[seams] ruelles
}
