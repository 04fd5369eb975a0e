## Ce qui ne peut recevoir de réponse tel que demandé.

fault-page-missing = { $what ->
    [page] Cette page n’existe pas
    [note] Cette note n’existe pas
    [hive] Cette ruche n’existe pas
    [figure] Ce chiffre n’existe pas
    [import] Aucun import de ce genre ne peut être annulé
    [any-colony] Il n’y a pas de colonie
   *[colony] Cette colonie n’existe pas
} ici.
fault-page-no-colony = Il n’y a pas de colonie « { $asked } » dans ce rucher.
fault-page-elsewhere = Elle est à { $address }.
fault-page-foreign = Ceci a été envoyé depuis un autre site, et est refusé.
fault-page-sign-in = Se connecter d’abord.
fault-page-only-shown = Ce lien montre le rucher et ses ruches, et rien d’autre. Rien ne peut être changé par lui.
fault-page-not-yet = La première estimation se calcule encore. Redemander dans un instant.
fault-page-trouble = Il n’y a pas d’estimation : { $why }
fault-page-cut = Un calcul s’est arrêté trop tôt. Redemander ; si cela se répète, c’est une faute du programme.
fault-page-ended-early = le calcul s’est arrêté trop tôt : une faute du programme

fault-page-title-shown = À regarder seulement
fault-page-title-missing = Pas ici
fault-page-title-asked = Est-ce exact ?
fault-page-title-wrong = Pas fait
fault-page-yard = <a href="/">Regarder le rucher</a>.
fault-page-mistyped = L’adresse est peut-être mal tapée. <a href="/">Regarder le rucher</a>.
fault-page-colonies = Celles-ci y sont :
fault-page-not-noted = Rien n’a encore été noté.
fault-page-right = C’est exact : le noter
fault-page-mend = Sinon revenir et corriger, ou <a href="/">regarder le rucher</a>.
fault-page-unchanged = Rien n’a été changé. Revenir et corriger, ou <a href="/">regarder le rucher</a>.

fault-page-too-large = C’est trop gros, ou cela s’est interrompu.
fault-page-too-slow = C’est arrivé trop lentement.
fault-page-way = Cette adresse ne se demande pas ainsi.
fault-page-file = { $file } ne peut pas être écrit : { $why }
fault-page-keep = keep={ $word } : écrire yes, all ou unasked.
fault-page-no-json = Ce n’est pas une note comme /api la décrit ({ $why }).
