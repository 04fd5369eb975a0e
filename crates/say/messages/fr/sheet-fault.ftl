## Des notes d’un tableur qui ne peuvent se lire, et comment elles l’ont été.

sheet-fault-no-column = « { $part } » ne nomme pas de colonne
sheet-fault-columns-right = écrire ce qu’est chaque colonne et son titre, par exemple « date=Datum, hive=Volk, scale=Gewicht:kg »
sheet-fault-no-heading = « { $word } » n’a pas de titre
sheet-fault-named-twice = « { $word } » est donné deux fois
sheet-fault-none-named = aucune colonne n’est nommée
sheet-fault-no-role = « { $word } » n’est rien qu’une colonne puisse être
sheet-fault-turned-right = l’écrire dans l’autre sens : « { $heading }={ $word } »
sheet-fault-empty = est vide
sheet-fault-empty-right = donner une feuille avec une ligne de titres, et dessous une ligne pour chaque coup d’œil
sheet-fault-no-role-told = aucun titre ne dit quelle colonne est { $what ->
    [hive] la ruche
   *[day] le jour
}
sheet-fault-no-role-told-right = la nommer avec --columns ; les titres sont { LIST($headings) }
sheet-fault-no-such-heading = il n’y a pas de colonne « { $heading } »
sheet-fault-no-value = n’est pas une valeur
sheet-fault-no-value-right = son calcul a échoué : le corriger dans la feuille, ou vider la cellule
sheet-fault-nothing = rien n’y est noté
sheet-fault-nothing-right = écrire sous les titres une ligne pour chaque coup d’œil à une ruche
sheet-fault-no-day = le jour n’est pas écrit
sheet-fault-no-day-right = écrire le jour à chaque ligne
sheet-fault-or-order = { $remedy } ; ou le dire pour la colonne, « date={ $heading }:dmy » ou « :mdy »
sheet-fault-no-hive = la ruche n’est pas écrite
sheet-fault-no-hive-right = l’écrire à chaque ligne
sheet-fault-no-colony = « { $written } » n’est pas une colonie de { $yard }
sheet-fault-long = est trop long
sheet-fault-long-right = le réduire à { NUMBER($letters) } lettres, ou écrire deux lignes
sheet-fault-long-words = ses mots sont trop longs
sheet-fault-long-words-right = les réduire à { NUMBER($letters) } lettres en tout, ou écrire deux lignes
sheet-fault-two-shares = « { $cell } » peut être une part ou un pourcentage
sheet-fault-two-shares-right = écrire « { $cell } % », ou « { $hundredfold } % »

sheet-fault-dead-taken = { $heading } : pris comme gisant sur la neige, ou au sol s’il n’y en a pas ; sinon, nommer la place : « dead={ $heading }:on board »
sheet-fault-no-sign = { $heading } « { $cell } » n’est pas un { $role }, et gardé comme remarque
sheet-fault-remark = { $heading } est gardé comme remarque, qu’aucun calcul ne lit
sheet-fault-words = { $heading } est gardé comme mots : { $wrong }
sheet-fault-nothing-kept = rien n’est noté, et rien n’est gardé
sheet-fault-rows = { $number ->
    [one] ligne
   *[other] lignes
} { LIST($rows) }
sheet-fault-rows-more = lignes { LIST($rows) } et { NUMBER($more) } autres
sheet-fault-row = ligne { NUMBER($row) } : { $colony }, { $at } : { $note }
sheet-fault-more-rows = et { NUMBER($more) } autres lignes
sheet-fault-more-kinds = et { NUMBER($more) } autres d’une autre sorte
sheet-fault-none-kept = Rien n’a été gardé.
sheet-fault-say-columns = Pour dire ce que sont les colonnes :
