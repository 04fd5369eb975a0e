## La page « Dans la grappe », à partager avec qui n’a pas d’abeilles.

inside-page-heading = Dans la grappe
inside-page-lede = Que deviennent les abeilles en hiver ?
inside-page-none = Pas encore de colonie vivante à raconter.

inside-page-ball = Nous sommes le { DAY($on) }, il fait { TEMPERATURE($air) } dehors. Dans la ruche nommée <strong>{ $hive }</strong>, environ { $bees } abeilles se tiennent ensemble en une boule de { $size } de diamètre. Elles ne dorment pas.
inside-page-inches = { NUMBER($across) } pouces
inside-page-centimetres = { NUMBER($across) } cm
inside-page-warmth = Au milieu, tant qu’il n’y a pas de couvain, il fait { TEMPERATURE($core) } ; à la surface, où les abeilles se tiennent la tête vers l’intérieur, épaule contre épaule, { TEMPERATURE($skin) }. Elles chauffent en faisant vibrer leurs muscles du vol sans bouger les ailes : { NUMBER($heat) } watts en tout, { $bulb ->
    [less] moins qu’
    [more] plus qu’
   *[alike] à peu près autant qu’
}une petite ampoule. Elles ne chauffent pas la ruche : l’air sous elles est à { TEMPERATURE($below) }.
inside-page-fuel = Le combustible est la nourriture des rayons, { GRAMS($food, us: 1) } aujourd’hui. Elle repart en { GRAMS($water, us: 1) } d’eau dans l’air qu’elles expirent ; une ruche sèche la laisse partir, une ruche froide la retient en givre. Aucune abeille ne sort se soulager avant qu’un jour doux vienne.
inside-page-spring = Quand les jours allongent, la reine pond de nouveau, le milieu est tenu près de { TEMPERATURE(35) } pour le couvain, et la nourriture part le plus vite juste avant les premières fleurs.
inside-page-figures = Les chiffres sont calculés pour cette ruche et ce jour ; la dernière ligne est ce que savent les apiculteurs et que le modèle tient aussi.
inside-page-others = Autres ruches
