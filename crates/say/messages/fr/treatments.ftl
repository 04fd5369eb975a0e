## Le registre des traitements de l’apiculteur, comme le demande un inspecteur.

treatments-kept = L’Union européenne demande un tel registre, gardé cinq ans (règlement (UE) 2019/6, article 108) ; beaucoup d’autres pays demandent à peu près la même chose (le Royaume-Uni, de mémoire : cinq ans). Ici rien n’est jamais effacé : une note changée ou retirée reste dans les archives à côté de sa version plus récente, et les notes d’une ruche qui a quitté le rucher restent aussi. Ce qui ne figure que dans un fichier de rucher dure autant que ce fichier : le noter ici pour le garder.
treatments-not-noted = pas noté

treatments-day = Jour
treatments-hive = Ruche
treatments-substance = Substance
treatments-product = Produit
treatments-batch = Lot
treatments-quantity = Quantité
treatments-supplier = Fournisseur
treatments-proof = Justificatif
treatments-withdrawal = Temps d’attente
treatments-duration = Durée

treatments-formic = acide formique
treatments-thymol = thymol
treatments-oxalic = acide oxalique
treatments-strips = lanières de contact
treatments-other = autre chose
