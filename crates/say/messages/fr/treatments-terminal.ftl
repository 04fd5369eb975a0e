## Le registre des traitements, dans le terminal.

treatments-terminal-title = Traitements donnés, { $yard }{ $invented ->
    [yes] {" "}(un rucher inventé)
   *[no] {""}
}
treatments-terminal-number = Numéro
treatments-terminal-not-noted = pas noté
treatments-terminal-none = Aucun traitement n’est noté.
