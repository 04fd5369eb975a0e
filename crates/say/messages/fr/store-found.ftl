## Ce qui n’est pas trouvé tel que gardé.

store-found-of-gate = une ligne de { $table } sur l’accès
store-found-no-key = une ligne de { $table } sans clé
store-found-changed = { $row } a été changé
store-found-moved = { $row } a été changé, ou n’est pas où il était
store-found-changed-or-gap = { $row } a été changé, ou une ligne d’avant manque
store-found-gap = { $versions ->
    [one] une version manque
   *[other] { NUMBER($versions) } versions manquent
} avant { $row }
store-found-not-kept = les lignes de { $table } ne sont pas celles qui ont été gardées
store-found-last-missing = les dernières versions de { $table } manquent : { NUMBER($versions) }
store-found-missing = lignes de { $table } qui manquent : { NUMBER($rows) }
store-found-strange = lignes de { $table } que ce programme n’a pas écrites : { NUMBER($rows) }
store-found-unproved = { $row } est là, et rien ne le prouve
store-found-stranger = { $row } est entier, et autre dans le fichier qui doit réparer
store-found-not-kept-row = { $row } ne peut pas être gardé ({ $why })
store-found-older = d’une forme plus ancienne, dont les lignes ne se distinguent pas d’autres
store-found-check = { $what ->
    [header] en-tête
    [form] forme
    [file] fichier
    [links] renvois
    [bodies] contenus
    [hashes] empreintes
    [notes] notes
   *[folder] dossier
}
store-found-of = { $name } : { $says }
store-found-loose = lignes qui renvoient à des lignes absentes : { NUMBER($rows) }
store-found-homeless = colonies dans des ruches hors de leur rucher : { NUMBER($colonies) }
store-found-form = de forme { NUMBER($found) }, la forme { NUMBER($known) } est attendue
store-found-rewritten = il compte { NUMBER($changes) } changements de forme au lieu de { NUMBER($expected) } : un autre programme l’a récrit
store-found-orphans = sur des colonies qu’aucun rucher n’a encore, gardées et non montrées : { NUMBER($notes) }
store-found-folder = le dossier ne peut pas être écrit ({ $why })
store-found-several = { LIST($named, between: " ; ") }
store-found-more = et { NUMBER($more) } de plus
store-found-export = l’export
store-found-line = ligne { NUMBER($line) }
store-found-no-text = ce n’est pas du texte
store-found-large = plus de { NUMBER($megabytes) } Mo
store-found-has-no = il y manque { $name }
store-found-unknown = { $name } n’est dans aucun fichier de ce programme
store-found-no-schema = { $schema } n’y est pas
store-found-year = d’une année dont rien n’est archivé
store-found-opens-gate = cela ouvrirait l’accès ; aucun export n’a un tel réglage
store-found-body = le contenu de { $what } ne peut pas être lu ({ $why })
store-found-body-alone = le contenu ne peut pas être lu ({ $why })
store-found-no-kind = { $kind } n’est pas un type de version
