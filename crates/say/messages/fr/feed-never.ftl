## Ce qu’on ne donne pas, et pourquoi.

feed-never-brown-sugar = sucre brun, mélasse, sucre non raffiné ou biologique, sirop d’érable
feed-never-brown-sugar-why = ce qui n’y est pas sucre donne la dysenterie
feed-never-unknown-honey = miel d’abeilles inconnues
feed-never-unknown-honey-why = il peut porter la loque
feed-never-sour-syrup = sirop bouilli, brûlé, ou acidifié au vinaigre ou à la crème de tartre
feed-never-sour-syrup-why = acide et chaleur font de l’hydroxyméthylfurfural, qui empoisonne les abeilles ; certaines recettes de cuisine disent autrement
feed-never-hard-honey = miel de bruyère, de miellat, de lierre ou de colza comme seules provisions d’hiver
feed-never-hard-honey-why = ils donnent la dysenterie, ou prennent si dur que les abeilles meurent de faim à côté
