## What `check` says.

check-terminal-well = { $file }: no faults; hives: { NUMBER($hives) }, colonies: { NUMBER($colonies) }.
check-terminal-faults = { $file }: { $faults ->
    [one] one fault
   *[other] { NUMBER($faults) } faults
}
