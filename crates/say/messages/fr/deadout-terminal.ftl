## Une ruche morte, dans le terminal.

deadout-terminal-stop = HALTE : ce peut être la loque
deadout-terminal-seen = Vu
deadout-terminal-what-to-do = À faire
deadout-terminal-between = ({ NUMBER($least) } à { NUMBER($most) })
deadout-terminal-hundred = sur 100 ruches qui ressemblent à celle-ci ; entre parenthèses ce que d’autres qui s’y connaissent pourraient dire
deadout-terminal-records = Registre
deadout-terminal-record = { $sign } { $seen ->
    [yes] oui
    [fairly-yes] à peu près sûr
    [fairly-no] à peu près sûr que non
    [no] non
   *[unseen] inconnu
} : { $because }
deadout-terminal-look = À voir
deadout-terminal-comb = Rayons
deadout-terminal-stores = Provisions
deadout-terminal-people = Gens
deadout-terminal-stops = Un oui arrête tout.

deadout-terminal-sign-right = écrire NOM=yes, no, fairly-sure, fairly-no ou unseen, par exemple small-cluster=yes
deadout-terminal-how = Répondre y (oui), f (plutôt sûr), n (non), ou Entrée : pas regardé.
deadout-terminal-again = Écrire y, f, n, ou rien.
