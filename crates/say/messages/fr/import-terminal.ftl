## Ce qui entre dans les archives.

import-terminal-export = apporté : tout l’export. Gardé dans { $file }
import-terminal-yard = apporté : { $yard } avec { $colonies ->
    [one] une colonie
   *[other] { NUMBER($colonies) } colonies
} ; notes : { NUMBER($stored) }, et { NUMBER($known) } déjà connues. Gardé dans { $file }
import-terminal-shown = Rien n’est encore gardé. Pour le garder : snowhum import { $file } --keep
import-terminal-kept = Gardé dans { $file }. Pour le reprendre : snowhum import --undo
import-terminal-no-yard = { $file } : aucun rucher n’est encore gardé pour ces notes ; apporter d’abord le sien : snowhum import my-yard.toml
import-terminal-asked-about = { $file } : celles-ci sont en question, et rien n’a été gardé :
import-terminal-mend-open = si elles sont exactes quand même, ajouter --sure ; pour ne garder que les autres, ajouter --leave-asked
import-terminal-mend-sure = les corriger dans le tableau ; ou pour ne garder que les autres, --leave-asked au lieu de --sure
import-terminal-nothing-back = aucun tableau n’est entré qui pourrait être repris
import-terminal-back = repris : { $notes ->
    [one] une note
   *[other] { NUMBER($notes) } notes
}
import-terminal-back-changed = repris : { $notes ->
    [one] une note
   *[other] { NUMBER($notes) } notes
} ; changées depuis et laissées : { NUMBER($changed) }
import-terminal-columns = Colonnes
import-terminal-row-asked = Question
import-terminal-row-known = Connu
import-terminal-row-read = Lu
import-terminal-more = et { $rows ->
    [one] une ligne de plus
   *[other] { NUMBER($rows) } lignes de plus
} ; --json les a toutes
import-terminal-notes = { $notes ->
    [one] une note
   *[other] { NUMBER($notes) } notes
} de { $yard }
import-terminal-asked = en question : { NUMBER($asked) }
import-terminal-taken = apportées : { NUMBER($stored) } ; déjà connues : { NUMBER($known) } ; autres que ce qui est gardé : { NUMBER($differing) }
