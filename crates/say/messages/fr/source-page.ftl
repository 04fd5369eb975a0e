## La page « D’où viennent les chiffres ».

source-page-heading = D’où viennent les chiffres
source-page-lede = Chaque chiffre sur lequel reposent les réponses : lu dans une publication nommée, pratique courante, de mémoire, ou notre propre jugement.
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
    [mites] Varroas
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
source-page-low = Un sur dix au-dessous
source-page-high = Un sur dix au-dessus
source-page-varies = Chaque ruche calculée tire le sien
source-page-value = Valeur
source-page-unit = Unité
source-page-status = Statut
source-page-source = Source
source-page-all = Tous les chiffres
