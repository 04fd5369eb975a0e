## Die Aufzeichnung der Behandlungen, im Terminal.

treatments-terminal-title = Behandlungen am Stand { $yard }{ $invented ->
    [yes] {" "}(ein erfundener Stand)
   *[no] {""}
}
treatments-terminal-number = Nummer
treatments-terminal-not-noted = nicht notiert
treatments-terminal-none = Keine Behandlung ist notiert.
