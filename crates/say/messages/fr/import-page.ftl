## La page « Notes d’un tableur ».

import-page-heading = Notes d’un tableur
import-page-kept = Enregistré : { NUMBER($notes) } { $notes ->
    [one] note
   *[other] notes
}.
import-page-undo = Les annuler
import-page-back = Annulé : { NUMBER($notes) } { $notes ->
    [one] note
   *[other] notes
}.
import-page-lede = Une ligne pour chaque passage à une ruche : son jour, sa ruche, et ce qui a été vu. Rien n’est enregistré avant que l’on ait vu comment c’est lu.
import-page-file = Le fichier : un classeur (.xlsx) ou un tableau en texte (.csv)
import-page-sheet = Quelle feuille ; la première si rien n’est écrit
import-page-paste = Ou coller ici ses cellules, en-têtes compris
import-page-mend = Ses cellules ; les corriger ici, ou dans la feuille
import-page-columns = Ce que sont les colonnes, là où leurs en-têtes ne le disent pas
import-page-see = Voir comment c’est lu

import-page-not-read = Pas encore lu
import-page-nothing-kept = Rien n’a été enregistré.
import-page-more-faults = Et { NUMBER($more) } de plus, d’autres sortes.

import-page-preview = Comment c’est lu
import-page-notes = { NUMBER($notes) } { $notes ->
    [one] note
   *[other] notes
}. Rien n’est encore enregistré.
import-page-right = Est-ce exact ?
import-page-asked-rows = Lignes sur lesquelles on demande
import-page-cells = Ses cellules
import-page-keep = Les enregistrer
import-page-keep-plain = Enregistrer celles sur lesquelles rien n’est demandé : { NUMBER($notes) }
import-page-keep-all = Elles sont exactes : enregistrer les { NUMBER($notes) }
import-page-plain = Comme elles seraient enregistrées
import-page-rows = Lignes
import-page-read-so = Les colonnes ont été lues ainsi : <code>{ $columns }</code>. Si c’est faux, le dire autrement :
import-page-row = Ligne
import-page-hive = Ruche
import-page-when = Quand
import-page-note = Note
import-page-at = { DAY($on, style: "full") }, { $time }
import-page-known = déjà enregistrée
import-page-more-rows = Et { NUMBER($more) } de plus.

import-page-broken = L’envoi s’est interrompu ({ $error }) ; le renvoyer.
