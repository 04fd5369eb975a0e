## Des classes de traitement, et ce qui borne chacune. Pas de doses : la notice et la loi disent quoi, quand et comment.

fit-class-formic = acide formique
fit-class-formic-weather = maximum du jour entre 10 et 29,5 °C (50 et 85 °F) quand on le pose ; dès { TEMPERATURE(33) } dans les premiers jours, il coûte abeilles, couvain et reines
fit-class-formic-brood = atteint les varroas sous les opercules
fit-class-formic-supers = hausses ôtées, sauf si la notice les permet

fit-class-thymol = thymol
fit-class-thymol-weather = trop froid sous environ 15 °C (59 °F), ennuis au-dessus d’environ 30 °C (86 °F) ; ralentit la prise de nourriture, et son odeur peut lancer le pillage
fit-class-thymol-brood = n’atteint pas sous les opercules : agit sur des semaines
fit-class-thymol-supers = hausses ôtées

fit-class-strips = lanières de contact
fit-class-strips-weather = les abeilles doivent marcher dessus : commencées tant qu’elles circulent dans le nid à couvain, et retirées avant l’hiver ; alterner la substance
fit-class-strips-brood = agit à travers le couvain parce que cela dure
fit-class-strips-supers = hausses ôtées

fit-class-trickled = acide oxalique, par dégouttement
fit-class-trickled-weather = grappe lâche et pas de vol, quelques degrés au-dessus de zéro ; une fois par hiver : un second dégouttement nuit aux abeilles
fit-class-trickled-brood = sans couvain seulement : 97 à 99 varroas sur 100, contre 25 à 39 avec du couvain
fit-class-trickled-supers = hausses ôtées

fit-class-vaporised = acide oxalique, par sublimation
fit-class-vaporised-weather = quelques degrés au-dessus de zéro ; sa vapeur nuit aux poumons : pas pour les débutants, et jamais sans la protection que la notice demande
fit-class-vaporised-brood = de préférence sans couvain
fit-class-vaporised-supers = comme la notice le dit
