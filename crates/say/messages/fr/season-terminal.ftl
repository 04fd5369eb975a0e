## Un nouvel automne, dans le terminal.

season-terminal-history = L’hiver de { $year } est du passé : snowhum losses --season { $year } le raconte.
season-terminal-left = Laissées de côté : { LIST($colonies) }.
season-terminal-wrote = Écrit { $file } ; { $last } reste tel quel.

season-terminal-ask = { $hive }, { $what } :
season-terminal-bees = cadres d’abeilles, ou weak, middling, strong (vide : elle n’est plus là)
season-terminal-food = nourriture, par exemple 14 kg, ou light, fair, heavy
season-terminal-mites = varroas, par exemple 3/300 (vide : pas comptés)
season-terminal-queen = reine, par exemple laying (vide : pas regardé)

season-terminal-asks = { $yard } a été compté le { $last } pour la dernière fois. Pour cet automne, dire de chaque colonie vivante abeilles, provisions, varroas et reine, par weak, middling, strong et light, fair, heavy où rien n’a été compté, et --gone NAME d’une morte ou vendue ; par exemple :
season-terminal-beside = --out : l’écrire à côté de { $file }, pour que l’hiver d’avant soit trouvé
