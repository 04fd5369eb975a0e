## L’aide, et ce qui ne va pas dans les arguments.

arguments-terminal-usage = Emploi :
arguments-terminal-commands = { "Commandes\u202F" }
arguments-terminal-command = COMMANDE
arguments-terminal-arguments = { "Arguments\u202F" }
arguments-terminal-options = { "Options\u202F" }
arguments-terminal-any-options = [OPTIONS]
arguments-terminal-example = Exemple : { $typed }
arguments-terminal-unless-given = [sinon : { $value }]
arguments-terminal-values = [un de : { LIST($values) }]
arguments-terminal-each-value = Ce que cela peut être :

arguments-terminal-unknown = { $given } n’existe pas ici
arguments-terminal-no-command = il n’y a pas de commande « { $command } »
arguments-terminal-no-value = { $given } demande une valeur
arguments-terminal-no-choice = { $given } : « { $value } » n’est pas un de { $right }
arguments-terminal-unread = { $given } : { $wrong }
arguments-terminal-twice = { $given } est là deux fois
arguments-terminal-conflict = { $given } ne va pas avec { $prior }
arguments-terminal-missing = il manque : { $given }
arguments-terminal-which = quelle commande ?
arguments-terminal-nearest = Peut-être : { $near }
arguments-terminal-more = Plus : --help

arguments-terminal-out-of-range = « { $written } » n’est pas un nombre { $what ->
    [days] de jours
   *[bees] d’abeilles
} entre { NUMBER($low, digits: "all") } et { NUMBER($high) }
arguments-terminal-no-month = « { $written } » n’est pas un mois ; écrire par exemple 1, January, 2026-01 ou 2026-01-18
arguments-terminal-winter-alone = seul l’hiver a une réponse, d’octobre à avril ; dans le sud, donner le mois à six mois de là
arguments-terminal-no-address = écrire par exemple https://192.168.1.7:8462
arguments-terminal-no-snow = écrire none, old ou new
arguments-terminal-outside = « { $value } » n’est pas dans { $range }
arguments-terminal-no-whole-number = « { $value } » n’est pas un nombre entier possible ici
