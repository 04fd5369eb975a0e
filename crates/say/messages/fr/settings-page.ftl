## La page « Réglages ».

settings-page-heading = Réglages
settings-page-kept = Enregistré.
settings-page-units = Unités
settings-page-metric = kilogrammes, °C
settings-page-us = livres, °F
settings-page-language = Langue
settings-page-unread = L’allemand et le français n’ont pas encore été relus par un apiculteur de la langue : les mises en garde y ont leur texte anglais à côté.
settings-page-currency = Monnaie
settings-page-colony = Ce que vaut une colonie en vie, nourrie et avec reine au printemps
settings-page-keep = Enregistrer
settings-page-records = Où se trouvent les archives
settings-page-records-at = Dans <code>{ $path }</code>. Chaque version de chaque note y est gardée.
settings-page-records-nowhere = En mémoire seulement : elles disparaissent quand le programme s’arrête. Le lancer avec --store pour les garder.
settings-page-import = Notes d’un tableur

settings-page-wrong-units = Les unités sont metric ou us.
settings-page-wrong-language = La langue est en-GB, en-US, de ou fr.
settings-page-wrong-currency = Écrire la monnaie en 8 lettres au plus.
settings-page-wrong-colony = Écrire la valeur d’une colonie comme un nombre, par exemple 180.
settings-page-wrong-yard = Seul un rucher inventé peut être regardé un autre jour ; lancer le programme avec --as-of.
settings-page-wrong-day = Nommer un jour, par exemple 2026-02-07.
settings-page-wrong-before = Ce jour est avant celui où les colonies ont été comptées.
