## Prévisions de services météo : comment elles ont été obtenues, ce qu’il faut en savoir, et pourquoi il n’y en a pas.

forecast-nws = US National Weather Service
forecast-of = prévision de { $service }
forecast-fresh = demandée à l’instant
forecast-not-modified = demandée à l’instant ; le service n’a rien de plus récent
forecast-current = demandée il y a { $age } et encore valable
forecast-kept = gardée d’il y a { $age }, car { $why }
forecast-age = { NUMBER($number) } { $unit ->
    [minutes] min
    [hours] h
   *[days] jours
}
forecast-was = La prévision : { $standing }.
forecast-between = { NUMBER($hours) } heures de la prévision de { $from } à { $to } sont entre ses pas : température, humidité, vent et nuages suivent des droites, les précipitations sont réparties également.
forecast-short-steps = { NUMBER($steps) } pas de la prévision n’ont pas de température à l’heure pleine et ont été écartés.
forecast-gap = La prévision a une lacune après { $after } et y a été coupée.
forecast-dropped = { NUMBER($values) } valeurs de la prévision qu’aucun temps ne peut avoir ont été écartées.
forecast-square = Le carré du lieu a été gardé d’avant, car { $why }.
forecast-ending = Le service dit que cette forme de ses données va cesser (203) ; chercher une version plus récente de Snowhum.
forecast-cache-damaged = la prévision gardée { $file } est abîmée ({ $wrong }) et a été écartée ; elle est réécrite à la prochaine réponse
forecast-cache-unwritable = la prévision ne peut être gardée dans { $file } ({ $wrong }) ; rendre le dossier accessible en écriture, car chaque exécution redemande au service

forecast-no-contact = { $service } veut savoir à qui écrire ; donner un contact, une adresse de courriel ou l’adresse d’un site, envoyée avec chaque demande
forecast-unfit-contact = le contact pour { $service } { $wrong ->
    [long] a plus de 200 caractères
    [letter] contient une espace ou une lettre qu’une adresse ne peut avoir
   *[neither] n’est ni une adresse de courriel ni l’adresse d’un site
} ; en donner un comme name@host.example ou https://host.example
forecast-terms = Open-Meteo est libre pour un usage non commercial ; accepter ses conditions (https://open-meteo.com/en/terms) si c’est le cas, ou demander à MET Norway
forecast-not-covered = { $service } ne prévoit rien pour { $latitude }, { $longitude } ; demander à MET Norway, qui couvre le monde entier
forecast-position = { $what ->
    [latitude] la latitude du lieu est inutilisable ; donner des degrés de -90 à 90, nord positif
    [longitude] la longitude du lieu est inutilisable ; donner des degrés de -180 à 180, est positif
   *[elevation] l’altitude du lieu est inutilisable ; donner des mètres au-dessus de la mer, 9000 au plus
}
forecast-endpoint = l’adresse pour { $service }, « { $address } », { $wrong ->
    [open] n’est pas chiffrée
    [server] n’est pas l’adresse d’un serveur
   *[address] n’est pas une adresse
} ; en donner une qui commence par https://
forecast-none = pas de prévision ; les réponses reposent sur le climat du lieu. { $service } : { $why } ; { $right }
forecast-none-kept = { $none }. { LIST($notes, between: ". ") }
forecast-not-laid = Pas de prévision : { $why }. Les réponses reposent sur le seul climat du lieu.

forecast-slow = pas de réponse en { NUMBER($seconds) } s
forecast-unreachable = il est injoignable ({ $detail })
forecast-refused = le service refuse la demande (403)
forecast-too-often = le service est trop souvent sollicité (429)
forecast-left-alone = le service a demandé à être laissé tranquille jusqu’à { $until }
forecast-unknown-place = le service ne connaît pas ce lieu (404)
forecast-status = le service a répondu { NUMBER($status) }
forecast-elsewhere = le service renvoie à { $to }, qui est un autre lieu ou n’est pas chiffré
forecast-too-big = la réponse dépasse { NUMBER($megabytes) } Mo
forecast-no-forecast = la réponse n’est pas une prévision : { $wrong }
forecast-over = la prévision a pris fin à { $end }
forecast-right = { $way ->
    [connection] vérifier la connexion et réessayer plus tard
    [contact] vérifier le contact et réessayer dans une heure, ou demander à un autre service
    [place] vérifier le lieu, ou demander à MET Norway, qui couvre le monde entier
    [changed] le service a peut-être changé, ou quelque chose s’interpose (une page de connexion du réseau) ; réessayer plus tard, ou demander à un autre service
   *[later] réessayer plus tard, ou demander à un autre service
}
