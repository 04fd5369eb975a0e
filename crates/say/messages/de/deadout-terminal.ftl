## Ein totes Volk, im Terminal.

deadout-terminal-stop = HALT: das kann Faulbrut sein
deadout-terminal-seen = Gesehen
deadout-terminal-what-to-do = Tun
deadout-terminal-between = ({ NUMBER($least) } bis { NUMBER($most) })
deadout-terminal-hundred = von 100 Völkern, die so aussehen; in Klammern, was andere Kundige sagen könnten
deadout-terminal-records = Notiertes
deadout-terminal-record = { $sign } { $seen ->
    [yes] ja
    [fairly-yes] ziemlich sicher
    [fairly-no] ziemlich sicher nicht
    [no] nein
   *[unseen] nicht bekannt
}: { $because }
deadout-terminal-look = Ansehen
deadout-terminal-comb = Waben
deadout-terminal-stores = Vorräte
deadout-terminal-people = Menschen
deadout-terminal-stops = Ein Ja hält alles an.

deadout-terminal-sign-right = NAME=yes, no, fairly-sure, fairly-no oder unseen schreiben, etwa small-cluster=yes
deadout-terminal-how = Antworten mit y (ja), f (ziemlich sicher), n (nein), Eingabe: nicht nachgesehen.
deadout-terminal-again = y, f, n oder nichts schreiben.
