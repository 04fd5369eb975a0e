## Sur quoi repose un temps, et ce qu’il faut en savoir.

weather-drawn = temps tiré { $climate }
weather-built-in = du climat intégré, moyennes mensuelles ERA5 2000-2025 au demi-degré
weather-given = des moyennes mensuelles données
weather-of-file = fichier de temps, { NUMBER($years) } { $years ->
    [one] an
   *[other] ans
}
weather-files = { $files } : { $weather }
weather-several = { LIST($weathers, between: " ; ") }
weather-foretold = { $forecast } pour { NUMBER($hours) } heures ({ $standing }), puis { $then }

weather-coarse = Le climat intégré est grossier ici : son sol est à { HEIGHT($ground) } et le lieu { HEIGHT($off) } { $above ->
    [yes] au-dessus
   *[no] au-dessous
}. Les températures sont corrigées de 5 K/km ; un fichier de temps du lieu vaudrait mieux.
weather-laws = Jours et heures sont tirés autour des moyennes mensuelles ; vent, soleil et humidité suivent des lois générales.
weather-few-winters = Le fichier contient { NUMBER($winters) } { $winters ->
    [one] hiver
   *[other] hivers
} ; chaque suite décale sa température d’une part lente et d’un reste du jour, tirés. Une année typique seule manque le froid de jusqu’à 5 K : ne jamais calculer les provisions sur elle.
weather-no-whole-year = Les fichiers de temps ne contiennent pas d’année entière ; le climat du lieu les remplace.
weather-bent = Passe par { NUMBER($readings) } { $readings ->
    [one] température notée
   *[other] températures notées
} aux ruches.
weather-typical-year = Ses mois viennent d’années différentes : une année typique, dont le froid est jusqu’à 5 K plus doux que le vrai.
weather-daily = Les heures sont tirées entre la plus haute et la plus basse température du jour selon la course du soleil.
weather-dropped = { NUMBER($values) } valeurs de { $column } qu’aucun temps ne peut avoir ont été écartées

weather-quantity = { $of ->
    [humidity] humidité
    [wind] vent
    [cloud] nuages
    [precipitation] précipitations
    [pressure] pression
   *[temperature] température
}
weather-filled = { $quantity } : { NUMBER($hours) } heures manquantes ont été comblées par des droites (lacunes d’au plus { NUMBER($longest) } h).
weather-lacking = { $quantity } : { $all ->
    [yes] toutes les heures
   *[no] { NUMBER($hours) } heures
} sans valeur ; { $taken }.
weather-dew-point-taken = le point de rosée est pris près de la plus basse température du jour
weather-wind-taken = { SPEED($wind, digits: 1) } constants sont pris
weather-cover-taken = la couverture suit du soleil du jour là où il y en a, sinon de l’écart de température du jour
weather-pressure-taken = l’atmosphère standard à l’altitude du lieu est prise
weather-mean-taken = la moyenne des autres est prise
weather-sun-derived = soleil : { NUMBER($hours) } heures sans valeur ; il suit des nuages et de la hauteur du soleil.
weather-sun-split = soleil : { NUMBER($hours) } heures ont été partagées en direct et diffus selon leur clarté.
weather-rain-lacking = précipitations : la plupart des heures sont sans valeur ; { $taken }.
weather-rain-blind = précipitations : le fichier n’a presque rien pour { NUMBER($days) } jours, comme les pluviomètres sans chauffage par gel ; { $taken }.
weather-rain-taken = { $known ->
    [yes] les sommes mensuelles du climat intégré sont réparties également
   *[no] { LENGTH(0.05) } par mois sont pris
}
weather-snow-derived = la neige au sol est déduite de la température et des précipitations.
