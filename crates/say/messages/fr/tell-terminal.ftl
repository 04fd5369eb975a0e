## L’hiver raconté, dans le terminal.

tell-terminal-wrote = Écrit { $file } : l’ouvrir dans un navigateur ; il ne demande rien au réseau
