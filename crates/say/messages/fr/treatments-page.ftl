## La page « Registre des traitements ».

treatments-page-heading = Registre des traitements
treatments-page-kept = Gardé pour { $hives ->
    [one] { NUMBER($hives) } ruche.
   *[other] { NUMBER($hives) } ruches.
}
treatments-page-yard = Rucher : <strong>{ $yard }</strong>
treatments-page-registration = N° d’enregistrement : { $number }
treatments-page-keeper = Apiculteur : ______________________________  Signature, jour : ______________________
treatments-page-none = Aucun traitement n’est noté.
treatments-page-table = Traitements
treatments-page-not-told = Ce qu’une ligne ne dit pas n’est pas noté.

treatments-page-note = Noter un traitement
treatments-page-hive = Ruche
treatments-page-all = Toutes les ruches
treatments-page-day = Jour, si ce n’est pas aujourd’hui
treatments-page-substance = Substance
treatments-page-product = Produit, comme sa notice le nomme
treatments-page-batch = Lot
treatments-page-quantity = Quantité donnée, selon la notice ou le vétérinaire
treatments-page-supplier = Fournisseur
treatments-page-proof = Justificatif d’achat, par exemple un numéro de facture
treatments-page-withdrawal = Temps d’attente, même s’il est nul
treatments-page-duration = Combien de temps il reste en place
treatments-page-keep = Enregistrer
treatments-page-empty = Ce qui reste vide s’affiche comme pas noté. Pour corriger une note, l’ouvrir à sa ruche sous ce qui a été noté.

treatments-page-which-substance = Choisir la substance.
treatments-page-which-hive = Choisir une ruche, ou toutes.
