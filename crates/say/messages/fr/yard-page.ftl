## Le rucher : comment vont-elles toutes, et quoi d’abord ?

yard-page-title = Le rucher
yard-page-heading = Le rucher, le { DAY($on) }
yard-page-autumn-begun = <strong>Le nouvel automne est commencé.</strong> L’hiver dernier est gardé sous <a href="/losses">pertes et leçons</a>.
yard-page-lid-shut = Couvercle fermé jusqu’au printemps. Voir dessous.
yard-page-begin-own = <a href="/begin">Commencer son rucher</a>.
yard-page-dead-bees = Abeilles mortes sur la neige ? <a href="/normal">Est-ce normal ?</a>
yard-page-begun = <strong>Le rucher est commencé.</strong>
yard-page-begun-kept = Il est gardé dans <code>{ $path }</code> ; <code>snowhum serve</code> le rouvre.
yard-page-begun-memory = Il n’est qu’en mémoire et disparaît quand le programme s’arrête ; enregistrer le fichier pour le garder.
yard-page-begun-words = Abeilles et nourriture ne sont connues qu’en mots, si bien que chaque fourchette est large : compter et peser pour la resserrer.

yard-page-calm = Rien n’appelle au rucher. Laisser les couvercles fermés.
yard-page-next-are = Rien à faire cette semaine. Ensuite viennent { $hives }.
yard-page-needed = <strong>{ $hives }</strong> { $number ->
    [one] passe
   *[other] passent
} d’abord.
yard-page-after = Puis { $hives }.
yard-page-names = { LIST($names, last: " et ") }
yard-page-names-more = { LIST($names) } et { NUMBER($more) } { $more ->
    [one] autre
   *[other] autres
}

yard-page-first = D’abord : { NUMBER($hives) }
yard-page-then = Ensuite : { NUMBER($hives) }
yard-page-alone = À laisser en paix, ou parties : { NUMBER($hives) }
yard-page-mind = Attention
yard-page-food = Réserve
yard-page-next = Ensuite
yard-page-well-in = Bien au { $goal }
yard-page-chances = { $is-same ->
    [yes] { NUMBER($now) } sur 100.
   *[no] { NUMBER($now) } sur 100, <strong>{ NUMBER($done) }</strong> ensuite.
}

yard-page-flight = Jour de vol
yard-page-flight-most-days = Les abeilles volent la plupart des jours ; la ruche qui n’en est pas s’ouvre d’abord.
yard-page-flight-on = { DAY($on, style: "weekday") }, { DAY($on, style: "marked") } : les abeilles peuvent voler dans { $chance } de ces hivers.
yard-page-flight-ready = <a href="/flight">S’y préparer</a>.
yard-page-flight-none = Aucun n’est probable d’ici dix jours.
yard-page-look = Aller voir
yard-page-lid = Le couvercle, demain à une heure
yard-page-days = Les jours qui viennent
yard-page-days-of = Le milieu des temps possibles, non une prévision, sauf si l’une a été donnée. Vent de rase campagne à { HEIGHT(10) } de haut.
yard-page-told = L’hiver raconté
yard-page-hives = Ajouter ou changer une ruche
