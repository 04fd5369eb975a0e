## A new autumn, in the terminal.

season-terminal-history = The winter of { $year } is history: snowhum losses --season { $year } tells it.
season-terminal-left = Left out: { LIST($colonies) }.
season-terminal-wrote = Wrote { $file }; { $last } stays as it is.

season-terminal-ask = { $hive }, { $what }:
season-terminal-bees = frames of bees, or weak, middling, strong (empty: it is gone)
season-terminal-food = food, such as 14 kg, or light, fair, heavy
season-terminal-mites = mites, such as 3/300 (empty: not counted)
season-terminal-queen = queen, such as laying (empty: not looked)
