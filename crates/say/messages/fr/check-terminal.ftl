## Ce que dit `check`.

check-terminal-well = { $file } : aucune faute ; ruches : { NUMBER($hives) }, colonies : { NUMBER($colonies) }.
check-terminal-faults = { $file } : { $faults ->
    [one] une faute
   *[other] { NUMBER($faults) } fautes
}
