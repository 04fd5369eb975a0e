## The page "Words".

words-page-heading = Words
words-page-lede = What the words mean here, in Britain and in North America.
words-page-word = A word
words-page-find = Find it
words-page-not-found = That word is not among them. <a href="/words">All words</a>.
words-page-which = Which of the two the pages use is chosen under <a href="/settings">Settings</a>. Meanings are common practice in words of our own.
words-page-hurt = Where work can hurt
words-page-british = British
words-page-american = North American
words-page-meaning = Meaning
