## A new autumn, in the terminal.

season-terminal-history = The winter of { $year } is history: snowhum losses --season { $year } tells it.
season-terminal-left = Left out: { LIST($colonies) }.
season-terminal-wrote = Wrote { $file }; { $last } stays as it is.

season-terminal-ask = { $hive }, { $what }:
season-terminal-bees = frames of bees, or weak, middling, strong (empty: it is gone)
season-terminal-food = food, such as 14 kg, or light, fair, heavy
season-terminal-mites = mites, such as 3/300 (empty: not counted)
season-terminal-queen = queen, such as laying (empty: not looked)

season-terminal-asks = { $yard } was counted last on { $last }. For this autumn say of each colony that lives its bees, food, mites and queen, with weak, middling, strong and light, fair, heavy where you did not count, and --gone NAME of one that is dead or sold; such as:
season-terminal-beside = --out: write it beside { $file }, so that the winter before is found
