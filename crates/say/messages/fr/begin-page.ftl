## La page « Son propre rucher ».

begin-page-heading = Son propre rucher
begin-page-lede = Habiller la ruche telle qu’elle est. Ce qui n’est pas dit est supposé, en gris, et peut être corrigé plus tard.
begin-page-kept-already = { $yard } est déjà gardé ici. Pour un autre rucher, enregistrer un fichier, et lancer <code>snowhum serve --apiary my-yard.toml</code>.
begin-page-to-mend = { $faults ->
    [one] Une chose est à corriger
   *[other] Des choses sont à corriger
}
begin-page-whose = { $hive } : { SENTENCE($fault) }
begin-page-same-name = Le rucher servi en ce moment porte ce nom ; en donner un autre à celui-ci.
begin-page-no-town = Choisir la ville la plus proche des ruches, ou écrire leur propre place au-dessous.

begin-page-begin = Commencer
begin-page-name = Comment s’appelle le rucher
begin-page-last-looked = Le jour de la dernière visite
begin-page-town = La ville la plus proche des ruches
begin-page-choose = choisir
begin-page-far = Loin de toutes celles-ci, ou bien plus haut ?
begin-page-latitude = Degrés nord
begin-page-longitude = Degrés est ; l’ouest est négatif
begin-page-elevation = Altitude, { $unit }
begin-page-zone = Fuseau horaire, par exemple Europe/Helsinki
begin-page-add = Ajouter une ruche
begin-page-fewer = Une ruche de moins
begin-page-save = L’enregistrer comme fichier de rucher

begin-page-hive = Ruche { NUMBER($number) }
begin-page-my-yard = Mon rucher
begin-page-hive-name = Nom
begin-page-kind = Modèle de ruche
begin-page-dress = L’habiller
begin-page-show = La montrer ainsi
begin-page-bees = Abeilles
begin-page-food = Nourriture
begin-page-mites = Varroas d’un prélèvement ; vide si pas comptés
begin-page-mites-of = Abeilles du prélèvement
begin-page-counted = Comptées ou pesée ?
begin-page-frames = Cadres couverts d’abeilles des deux côtés
begin-page-weight = Nourriture sans ruche ni abeilles, { $unit }
begin-page-mites-on = Le jour du prélèvement

begin-page-kept-one = Les archives contiennent déjà un rucher ; lancer `snowhum serve` pour le voir. Pour un autre rucher, enregistrer ici un fichier, et lancer `snowhum serve --apiary FILE`.
