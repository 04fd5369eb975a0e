## Ce qui peut mal aller avec les relevés, et ce qui peut être fait.

store-fault = { $place } : { $wrong }
store-read-only = ne peut être écrit ; rendre le fichier et son dossier accessibles en écriture, ou nommer un autre endroit pour les relevés
store-full = le disque est plein ; libérer de la place et réessayer. Ce qui a été annoncé comme enregistré est en sûreté
store-locked = un autre programme se sert des relevés et ne les a pas lâchés ; le fermer et réessayer
store-no-database = n’est pas un fichier de relevés de Snowhum ; nommer le bon fichier, ou restaurer une sauvegarde par-dessus
store-other-program = est une base de données d’un autre programme ; nommer un autre fichier, rien n’a été changé dans celui-ci
store-foreign = contient { $what }, qu’aucun relevé de Snowhum n’a ; rien n’en a été lu ni exécuté. Nommer un autre fichier
store-too-long = n’a pu être parcouru dans le temps prévu ; il est abîmé, ou fait pour être lent. Nommer un autre fichier, ou restaurer la dernière sauvegarde
store-newer = a été écrit par un Snowhum plus récent (forme { NUMBER($found) } ; ce programme connaît jusqu’à { NUMBER($known) }) ; se servir du programme plus récent, rien n’a été changé
store-damaged = est abîmé : { $what } ; restaurer la dernière sauvegarde, le fichier abîmé est gardé à part
store-not-in-order = n’est pas en ordre ({ $what }) ; rien n’a été mis à la place des relevés. Nommer une autre sauvegarde ou un autre export
store-missing = ce fichier n’existe pas ; vérifier le nom
store-already-there = existe déjà et n’est pas écrasé ; nommer un autre fichier
store-disk = est inutilisable ({ $what }) ; vérifier que le dossier existe et qu’il est accessible en écriture
store-no-folder = ce dossier n’existe pas
store-not-empty = contient déjà des relevés ; lire l’export dans de nouveaux relevés, ou importer ruchers et notes un à un
store-unreadable = { $at } : { $what } ; { $form ->
    [export] lire un export tel que `export` l’a écrit
   *[sheet] lire un fichier avec une colonne `body` comme dans note_versions.csv
}
store-no-such-note = il n’y a pas de note { $id } ; elle a peut-être été écrite sur un autre appareil qui ne l’a pas encore envoyée
store-in-another-yard = { $what ->
    [hive] la ruche
   *[colony] la colonie
} « { $name } » est dans un autre rucher de ces relevés ; l’en retirer d’abord, ou lui donner un nouvel identifiant
store-refused = la base de données a refusé ({ $what }) ; lancer `snowhum doctor`

store-unfit = { $field ->
    [count] le jour du comptage
    [time] l’heure
    [yard] le rucher
    [hive] la ruche
    [colony] la colonie
    [note] la note
    [alert] l’alerte
    [author] l’auteur
    [setting-name] le nom du réglage
    [setting] le réglage
   *[row] une ligne
} : impossible à garder, car { $what } ; { $right ->
    [finite] chaque nombre doit être fini
    [no-nul] retirer le caractère NUL
    [yard] prendre le rucher des relevés, ou un fichier de son dernier automne
   *[years] écrire un jour à partir de 1950, et pas plus d’un an à l’avance
}
store-not-as-it-is = cela ne se relirait pas tel quel
store-holds-nul = le caractère NUL s’y trouve
store-note-of = la note { $id } est du { $time }
