## Der Winter erzählt, im Terminal.

tell-terminal-wrote = { $file } geschrieben: in einem Browser öffnen; es fragt nichts aus einem Netz ab
