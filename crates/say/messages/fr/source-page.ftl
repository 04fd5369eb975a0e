## La page « D’où viennent les chiffres ».

source-page-heading = D’où viennent les chiffres
source-page-lede = Chaque chiffre sur lequel reposent les réponses : lu dans une publication nommée, pratique courante, de mémoire, ou notre propre jugement.
source-page-find = Chercher
source-page-look = Chercher
source-page-file = { $title }, { NUMBER($figures) }
source-page-low = Un sur dix au-dessous
source-page-high = Un sur dix au-dessus
source-page-varies = Chaque ruche calculée tire le sien
source-page-value = Valeur
source-page-unit = Unité
source-page-status = Statut
source-page-source = Source
source-page-all = Tous les chiffres
