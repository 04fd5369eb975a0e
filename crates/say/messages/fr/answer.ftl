## Ce que plusieurs réponses disent.

answer-far = Le lieu de { $files } est à { DISTANCE($distance) } du rucher{ $way ->
    [higher] {" "}et { HEIGHT($height) } plus haut
    [lower] {" "}et { HEIGHT($height) } plus bas
   *[level] {""}
} : { $taken }. Donner un fichier d’un lieu à moins de { DISTANCE($near) } du rucher et à { HEIGHT($as-high) } près de son altitude, ou aucun, pour le climat intégré du rucher ; si le rucher est bien là, corriger [site].
answer-far-reckoned = tout est calculé pour ce lieu-là, son altitude, son heure et son soleil, non pour le rucher
answer-far-taken = son temps est pris tel quel
answer-far-warmer = son temps est pris tel quel, par la seule altitude environ { WARMER($by, digits: 1) } { $is-warmer ->
    [yes] plus chaud
   *[no] plus froid
} qu’au rucher (atmosphère standard)

answer-lasts = { $barely ->
    [yes] dure tout juste
   *[no] dure
} jusqu’au { $goal } dans au moins 9 hivers sur 10
answer-most-last = { $barely ->
    [yes] au plus probable tout juste
   *[no] au plus probable
} jusqu’au { $goal } ; 1 sur 10 à bout avant le { DAY($early) }
answer-until = le plus probablement jusqu’à { DAY($middle, style: "part") } ; 1 sur 10 est à bout avant le { DAY($early) }

answer-by-custom = l’usage le demande ; sa valeur n’est pas évaluée dans le modèle
answer-too-close = trop serré pour trancher : le hasard pourrait faire pencher d’un côté ou de l’autre
answer-helps = aide environ { NUMBER($hives) } { $hives ->
    [one] ruche
   *[other] ruches
} sur 100 (± { NUMBER($plus-minus) }){ $worth ->
    [even] , et ne vaut guère plus ni moins que son coût de { NUMBER($cost) } { $currency }
    [more] , et vaut { NUMBER($gain) } { $currency } une fois ôté son coût de { NUMBER($cost) } { $currency }
   *[less] , mais dans la plupart de ces ruches vaut moins que son coût de { NUMBER($cost) } { $currency }
}
