## La page « Mots ».

words-page-heading = Mots
words-page-lede = Ce que les mots veulent dire ici, en Grande-Bretagne et en Amérique du Nord.
words-page-word = Un mot
words-page-find = Le trouver
words-page-not-found = Ce mot n’est pas parmi eux. <a href="/words">Tous les mots</a>.
words-page-which = Lequel des deux les pages emploient se choisit sous <a href="/settings">Réglages</a>. Les sens sont de pratique courante, dans nos propres mots.
words-page-hurt = Là où le travail peut blesser
words-page-british = Britannique
words-page-american = Nord-américain
words-page-meaning = Sens
