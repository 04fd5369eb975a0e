## Mots du métier qu’une page dit d’une ruche, quand ils ont été choisis dans une liste.

hive-word-fondant = candi
hive-word-sugar-board = pain de sucre
hive-word-candy = sucre en plaque
hive-word-frame-feeder = nourrisseur-cadre

hive-word-clear = libre
hive-word-blocked = bouché
hive-word-cleared = dégagé
hive-word-drifted-over = enneigé
hive-word-iced = pris par la glace
hive-word-plugged = bouché d’abeilles
hive-word-not-visible = pas visible

hive-word-foulbrood-signs = signes de loque
hive-word-chalkbrood = couvain plâtré
hive-word-crumpled-wings = ailes déformées
hive-word-dysentery = dysenterie
hive-word-robbed = pillée
hive-word-wasps = guêpes

hive-word-weak = faible
hive-word-middling = moyenne
hive-word-strong = forte
hive-word-light = légère
hive-word-fair = correcte
hive-word-heavy = lourde
hive-word-not-looked-at = pas regardé
