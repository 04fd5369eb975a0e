## Hilfe, und was an Argumenten nicht stimmt.

arguments-terminal-usage = Aufruf:
arguments-terminal-commands = Befehle
arguments-terminal-command = BEFEHL
arguments-terminal-arguments = Argumente
arguments-terminal-options = Optionen
arguments-terminal-any-options = [OPTIONEN]
arguments-terminal-example = Beispiel: { $typed }
arguments-terminal-unless-given = [sonst: { $value }]
arguments-terminal-values = [eines von: { LIST($values) }]
arguments-terminal-each-value = Was es sein kann:

arguments-terminal-unknown = { $given } gibt es hier nicht
arguments-terminal-no-command = es gibt keinen Befehl „{ $command }“
arguments-terminal-no-value = { $given } braucht einen Wert
arguments-terminal-no-choice = { $given }: „{ $value }“ ist keines von { $right }
arguments-terminal-unread = { $given }: { $wrong }
arguments-terminal-twice = { $given } steht zweimal da
arguments-terminal-conflict = { $given } geht nicht zusammen mit { $prior }
arguments-terminal-missing = es fehlt: { $given }
arguments-terminal-which = welcher Befehl?
arguments-terminal-nearest = Vielleicht: { $near }
arguments-terminal-more = Mehr: --help

arguments-terminal-out-of-range = „{ $written }“ ist keine Zahl von { $what ->
    [days] Tagen
   *[bees] Bienen
} zwischen { NUMBER($low, digits: "all") } und { NUMBER($high) }
arguments-terminal-no-month = „{ $written }“ ist kein Monat; etwa 1, January, 2026-01 oder 2026-01-18 schreiben
arguments-terminal-winter-alone = nur über den Winter gibt es Antwort, Oktober bis April; im Süden den Monat sechs Monate weiter nennen
arguments-terminal-no-address = etwa https://192.168.1.7:8462 schreiben
arguments-terminal-no-snow = none, old oder new schreiben
arguments-terminal-outside = „{ $value }“ liegt nicht in { $range }
arguments-terminal-no-whole-number = „{ $value }“ ist keine ganze Zahl, die hier stehen kann
