## Was `check` sagt.

check-terminal-well = { $file }: keine Fehler; Beuten: { NUMBER($hives) }, Völker: { NUMBER($colonies) }.
check-terminal-faults = { $file }: { $faults ->
    [one] ein Fehler
   *[other] { NUMBER($faults) } Fehler
}
