## Was nicht gefüttert wird, und warum.

feed-never-brown-sugar = brauner Zucker, Melasse, ungereinigter oder Bio-Zucker, Ahornsirup
feed-never-brown-sugar-why = was darin nicht Zucker ist, macht Ruhr
feed-never-unknown-honey = Honig unbekannter Bienen
feed-never-unknown-honey-why = er kann Faulbrut tragen
feed-never-sour-syrup = Sirup, der gekocht, angebrannt oder mit Essig oder Weinstein gesäuert ist
feed-never-sour-syrup-why = Säure und Hitze bilden Hydroxymethylfurfural, das Bienen vergiftet; manche Küchenrezepte sagen es anders
feed-never-hard-honey = Heide-, Honigtau-, Efeu- oder Rapshonig als einziges Winterfutter
feed-never-hard-honey-why = sie machen Ruhr oder werden so hart, dass Bienen daneben verhungern
