## Ce que toutes les pages partagent.

shared-page-day = { DAY($on) }
shared-page-date = { DAY($on, style: "marked") }
shared-page-weekday = { DAY($on, style: "weekday") }
shared-page-short-day = { DAY($on, style: "short") }
shared-page-masses = { MASS($middle, digits: 1, us: 0) } (8 sur 10 entre { MASS($low, digits: 1, us: 0) } et { MASS($high, digits: 1, us: 0) })
shared-page-says-who = qui le dit ?
shared-page-as-table = La même chose en tableau

shared-page-noted-dead = abeilles mortes : { $how }
shared-page-noted-hook = abeilles mortes tirées au crochet : { $how }
shared-page-noted-hole = au trou supérieur : { $how }
shared-page-noted-upper = trou supérieur : { $how }
shared-page-noted-poke = paille dans le trou : { $how }
shared-page-noted-wings = ailes atrophiées : { $how }
shared-page-noted-board = plaque, pain ou nourrisseur : { $how }
shared-page-noted-lid = sous le couvercle, à la main : { $how }
shared-page-noted-snow = neige contre le corps : { $how }
shared-page-noted-did = fait : { $how }
shared-page-noted-bees = abeilles vivantes { $how }
shared-page-noted-colony = colonie { $how }
shared-page-noted-queen = reine { $how }
shared-page-noted-other = { $what } : { $how }
shared-page-wind = vent { SPEED($wind, digits: 1) }
shared-page-air = { TEMPERATURE($air) }
shared-page-weather = { LIST($parts) }

shared-page-skip = Aller au contenu
shared-page-tagline = Snowhum, un hiver calculé
shared-page-pages = Pages
shared-page-menu = Menu
shared-page-yard = Rucher
shared-page-round = Tournée
shared-page-jobs = Travaux
shared-page-flight = Jour de vol
shared-page-fit = Prête pour l’hiver ?
shared-page-setup = Équipement d’hiver
shared-page-feed = Nourrir
shared-page-mites = Varroas
shared-page-treatments = Registre des traitements
shared-page-spring = Première visite de printemps
shared-page-dead = Colonie morte
shared-page-losses = Pertes et leçons
shared-page-normal = Est-ce normal ?
shared-page-inside = Dans la grappe
shared-page-tell = L’hiver raconté
shared-page-hives = Ruches
shared-page-paper = Sur papier
shared-page-words = Mots
shared-page-sources = Sources
shared-page-settings = Réglages
shared-page-programs = Programmes
shared-page-sign-out = Se déconnecter
shared-page-chances = Chances de ruches pareilles avec ces signes. Notice, loi locale, services vétérinaires et vétérinaire d’abord.

shared-page-estimate = Estimation pour le <strong>{ DAY($of, style: "full") }</strong>, calculée à <time datetime="{ $instant }">{ $clock }</time>, d’après { $source }.
shared-page-newer = Du plus récent est enregistré ; la prochaine estimation se calcule.
shared-page-first-estimate = La première estimation se calcule. Cette page regarde de nouveau d’elle-même.
shared-page-trouble = <strong>{ $is-newer ->
    [yes] Pas d’estimation plus récente :
   *[no] Pas d’estimation :
} </strong>{ $trouble }
shared-page-working = Calcul en cours.
shared-page-renews = La page se renouvelle d’elle-même.
shared-page-counts-it = Ce qui est affiché ici en tient compte.
shared-page-until-then = D’ici là : l’état au { DAY($of, style: "full") }, calculé à { $clock }.
shared-page-of-clock = de { $clock }
shared-page-of-day = du { DAY($on) }
shared-page-working-anew = Nouveau calcul en cours.
shared-page-before-change = Ce qui est affiché ici a été calculé à { $clock }, avant le dernier changement.

shared-page-noted = <strong>{ $is-changed ->
    [yes] Changé
   *[no] Noté
}</strong> pour { $hive }, { DAY($on) } : <span class="said">{ LIST($what, between: " ; ") }</span>.
shared-page-withdrawn = <strong>Retirée.</strong> La note ne compte plus.
shared-page-taken-back = <strong>Annulé</strong> : la dernière chose faite pour { $hive }.
shared-page-another-day = On regarde maintenant le <strong>{ DAY($on, style: "full") }</strong>.

shared-page-over = Ces colonies ont été comptées le { DAY($on, style: "full") }, pour un hiver qui est fini. <a href="/season">Commencer le nouvel automne</a>.
shared-page-invented = Rucher inventé<span class="for-room">, pour essayer</span>
shared-page-look-at = Le regarder dans l’hiver 2025–26, le
shared-page-unread = Pas encore relu par un apiculteur de la langue ; mises en garde aussi en anglais.

shared-page-show-new = La nouvelle réponse est là. La montrer (ce qui est écrit plus bas est perdu)
