## Was in die Aufzeichnungen kommt.

import-terminal-export = hereingeholt: alles aus dem Export. Aufbewahrt in { $file }
import-terminal-yard = hereingeholt: { $yard } mit { $colonies ->
    [one] einem Volk
   *[other] { NUMBER($colonies) } Völkern
}; Notizen: { NUMBER($stored) }, und { NUMBER($known) } schon bekannt. Aufbewahrt in { $file }
import-terminal-shown = Noch ist nichts aufbewahrt. Dazu: snowhum import { $file } --keep
import-terminal-kept = Aufbewahrt in { $file }. Zum Zurücknehmen: snowhum import --undo
import-terminal-no-yard = { $file }: noch ist kein Stand aufbewahrt, zu dem die Notizen gehören; zuerst den eigenen holen: snowhum import my-yard.toml
import-terminal-asked-about = { $file }: diese sind fraglich, und nichts wurde aufbewahrt:
import-terminal-mend-open = wenn sie doch stimmen, --sure dazu; um nur die anderen aufzubewahren, --leave-asked dazu
import-terminal-mend-sure = in der Tabelle berichtigen; oder, um nur die anderen aufzubewahren, --leave-asked statt --sure
import-terminal-nothing-back = es kam keine Tabelle herein, die zurückzunehmen wäre
import-terminal-back = zurückgenommen: { $notes ->
    [one] eine Notiz
   *[other] { NUMBER($notes) } Notizen
}
import-terminal-back-changed = zurückgenommen: { $notes ->
    [one] eine Notiz
   *[other] { NUMBER($notes) } Notizen
}; seither geändert und geblieben: { NUMBER($changed) }
import-terminal-columns = Spalten
import-terminal-row-asked = Fraglich
import-terminal-row-known = Bekannt
import-terminal-row-read = Gelesen
import-terminal-more = und { $rows ->
    [one] eine weitere Zeile
   *[other] { NUMBER($rows) } weitere Zeilen
}; --json hat alle
import-terminal-notes = { $notes ->
    [one] eine Notiz
   *[other] { NUMBER($notes) } Notizen
} von { $yard }
import-terminal-asked = fraglich: { NUMBER($asked) }
import-terminal-taken = hereingeholt: { NUMBER($stored) }; schon bekannt: { NUMBER($known) }; anders als das Aufbewahrte: { NUMBER($differing) }
