## Les questions de l’hiver, et ce que l’on entend souvent.

questions-page-heard = Souvent entendu
questions-page-heard-here = Souvent entendu :
questions-page-told = « { $says } » { $truth }
questions-page-here = Dans ce rucher
questions-page-see = Voir <a href="{ $address }">{ $page }</a> ou <code>snowhum { $command }</code>.
questions-page-stands-on = Repose sur : { $source } ({ $status }).

questions-page-each = { LIST($hives, between: " ; ") }.
questions-page-hive = { $hive } : { $figure }
questions-page-nothing = rien à dire.
questions-page-dead = { $dead } d’ici le { DAY($on) }
questions-page-lid = demain à une heure : { $lid }
questions-page-most-days = presque chaque jour maintenant.
questions-page-flight = le { DAY($on) }, les abeilles peuvent voler dans { $chance } de ces hivers.
questions-page-no-flight = aucun jour de vol n’est probable d’ici dix jours.
