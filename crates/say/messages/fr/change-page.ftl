## Une ruche changée dans son hiver, déplacée ou partie.

change-page-heading = Changer { $hive }
change-page-lede = À partir du jour où cela a été fait, la ruche est comptée telle qu’elle était alors ; ce qui était avant reste.
change-page-or = Ou
change-page-day = Jour, si ce n’est pas aujourd’hui
change-page-keep = Enregistrer
change-page-back = Retour à { $hive }
change-page-add = Ajouter une ruche
change-page-moved = déplacée sur un autre support
change-page-sold = sa colonie a été vendue
change-page-dead = sa colonie est morte
change-page-carried-into = rentrée ({ $room })
change-page-carried-out = sortie
change-page-united = réunie à { $hive }
