## Des liens qui montrent un rucher à un parrain.

links-page-heading = Un lien pour un parrain
links-page-lede = Qui l’ouvre voit le rucher et chaque ruche, et ne change rien. Il s’ouvre partout où ce serveur peut être atteint : { $network ->
    [yes] dans le réseau local
   *[no] sur cette machine seule, tant que l’on ne sert pas avec --lan
}.
links-page-for-whom = Pour qui
links-page-holds = Il vaut
links-page-days = { NUMBER($days) } jours
links-page-make = Faire un lien
links-page-one = <strong>{ $reader }</strong>, jusqu’au { DAY($until, style: "marked") } { $year }
links-page-take-back = Le révoquer

links-page-a-link = Un lien
links-page-welcome = Un rucher à regarder
links-page-welcome-lede = Ce lien est pour <strong>{ $reader }</strong>. Il montre le rucher et les ruches d’un apiculteur ; rien ne peut être changé par lui.
links-page-look = Regarder le rucher
links-page-cookie = Un cookie le garde ouvert dans ce navigateur jusqu’à la fin du lien. « Se déconnecter » au pied de chaque page l’enlève.
links-page-needless = Déjà connecté soi-même
links-page-needless-lede = Le lien marche, et l’on voit plus sans lui. Pour voir ce qu’il montre, l’ouvrir dans une fenêtre privée.
links-page-shut = Ce lien n’ouvre rien
links-page-shut-lede = Il est arrivé à sa fin, a été révoqué, ou n’a pas été copié en entier. En demander un autre à l’apiculteur.

links-page-wrong-name = Écrire pour qui est le lien, en { NUMBER($most) } lettres au plus.
links-page-wrong-days = Un lien vaut 7, 30, 90 ou 365 jours.
links-page-too-many = Il y a déjà { NUMBER($most) } liens ; en révoquer un d’abord.
