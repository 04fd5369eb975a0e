## La page « Se connecter », et qui est connecté.

sign-in-page-heading = Se connecter
sign-in-page-lede = C’est le rucher d’un apiculteur. Ses pages s’ouvrent avec la phrase de passe.
sign-in-page-phrase = Phrase de passe
sign-in-page-forgotten = Ce navigateur reste alors connecté 30 jours après son dernier passage, 180 jours au plus. Oubliée ? Sur la machine elle-même, <code>snowhum serve --lan --new-pass-phrase</code> en demande une autre ; <code>snowhum sign-in-code</code> dit un code qui la remplace une fois.
sign-in-page-wrong = Ce n’est pas la phrase de passe. Rien n’a été ouvert.
sign-in-page-too-soon = Trop d’essais manqués. Attendre { $wait }, puis réessayer ; ou demander un code sur la machine elle-même, qui est accepté aussitôt.
sign-in-page-seconds = { NUMBER($count) } { $count ->
    [one] seconde
   *[other] secondes
}
sign-in-page-minutes = { NUMBER($count) } { $count ->
    [one] minute
   *[other] minutes
}

sign-in-page-signed-in = Connectés
sign-in-page-browsers = { $count ->
    [1] Ce navigateur seul est connecté.
   *[other] { NUMBER($count) } navigateurs sont connectés, dont celui-ci.
}
sign-in-page-sign-out = Se déconnecter partout

sign-in-page-phrase-short = la phrase de passe est trop courte ; prendre au moins { NUMBER($fewest) } lettres, par exemple quatre mots sans rapport entre eux
sign-in-page-phrase-long = la phrase de passe est trop longue ; { NUMBER($most) } lettres au plus sont lues

sign-in-page-not-kept = Pas encore enregistré
sign-in-page-again = Il faut se reconnecter avant que ceci soit enregistré.
sign-in-page-window = <a href="/sign-in" target="_blank">Se connecter</a> dans une fenêtre à part, puis revenir ici et envoyer de nouveau. Ce qui a été écrit est toujours là.
