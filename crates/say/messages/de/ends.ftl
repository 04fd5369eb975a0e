## Woran ein Volk enden kann.

ends-starved = verhungert
ends-beside-food = neben Futter verhungert
ends-too-small = zu klein oder zu kalt
ends-queen = Königin versagt
ends-mites = Milben
ends-other = übliche Verluste
