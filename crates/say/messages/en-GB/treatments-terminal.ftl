## The record of treatments, in the terminal.

treatments-terminal-title = Treatments given at { $yard }{ $invented ->
    [yes] {" "}(an invented yard)
   *[no] {""}
}
treatments-terminal-number = Number
treatments-terminal-not-noted = not noted
treatments-terminal-none = No treatment is noted.
