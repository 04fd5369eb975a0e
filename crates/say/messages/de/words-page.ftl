## Die Seite „Wörter“.

words-page-heading = Wörter
words-page-lede = Was die Wörter hier bedeuten, in Großbritannien und in Nordamerika.
words-page-word = Ein Wort
words-page-find = Finden
words-page-not-found = Dieses Wort ist nicht darunter. <a href="/words">Alle Wörter</a>.
words-page-which = Welches der beiden die Seiten verwenden, wird unter <a href="/settings">Einstellungen</a> gewählt. Die Bedeutungen sind übliche Praxis in eigenen Worten.
words-page-hurt = Wo Arbeit verletzen kann
words-page-british = Britisch
words-page-american = Nordamerikanisch
words-page-meaning = Bedeutung
