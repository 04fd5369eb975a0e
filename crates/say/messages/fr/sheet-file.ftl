## Des fichiers de notes qui ne s’ouvrent pas ou ne sont pas une table.

sheet-file-right = donner un classeur (.xlsx) ou une table en texte (.csv)
sheet-file-columns = les colonnes
sheet-file-no-table = n’est pas une table
sheet-file-no-table-why = n’est pas une table ({ $why })
sheet-file-no-text = n’est ni un texte ni un classeur
sheet-file-large = a plus de { NUMBER($rows) } lignes ou { NUMBER($columns) } colonnes
sheet-file-large-right = donner les notes seules, en parties
sheet-file-no-writing = ne peut pas s’écrire comme texte ({ $why })

sheet-file-protected = est protégé par un mot de passe, ou dans l’ancienne forme .xls
sheet-file-protected-right = l’enregistrer sans mot de passe en .xlsx, ou en .csv
sheet-file-read-alone = la feuille « { $sheet } » a été lue, et non { LIST($others) }
sheet-file-no-sheet = n’a pas de feuille « { $sheet } »
sheet-file-sheets = ses feuilles sont { LIST($sheets) }
sheet-file-holds-nothing = ne contient rien
sheet-file-holds-nothing-right = donner un classeur avec une ligne pour chaque coup d’œil à une ruche
sheet-file-open-document = est une feuille OpenDocument
sheet-file-open-document-right = l’enregistrer en .xlsx ou .csv
sheet-file-vast = dépasse 16 MB une fois déballé
sheet-file-vast-right = enregistrer la feuille des notes seule, en .xlsx ou .csv
sheet-file-dear = est fait de sorte qu’il ne peut se lire dans la mémoire qu’il y a
sheet-file-again-right = l’ouvrir dans un tableur et l’enregistrer de nouveau en .xlsx, ou en .csv
sheet-file-uncounted = la feuille « { $sheet } » contient un calcul jamais fait, ligne { NUMBER($row) }, colonne { NUMBER($column) }
sheet-file-wide = la feuille « { $sheet } » a plus de { NUMBER($columns) } colonnes ou 4 MB de mots
sheet-file-wide-right = donner une feuille avec les notes seules
sheet-file-many-rows = la feuille « { $sheet } » a plus de { NUMBER($rows) } lignes
sheet-file-many-rows-right = donner les notes en parties
sheet-file-damaged = est abîmé, ou n’est pas un classeur ({ $why })
