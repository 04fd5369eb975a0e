## The winter told, in the terminal.

tell-terminal-wrote = Wrote { $file }: open it in a browser; it asks nothing of a network
