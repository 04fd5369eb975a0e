## A dead hive, in the terminal.

deadout-terminal-stop = STOP: this may be foulbrood
deadout-terminal-seen = Seen
deadout-terminal-what-to-do = Do
deadout-terminal-between = ({ NUMBER($least) } to { NUMBER($most) })
deadout-terminal-hundred = of 100 hives that look like this; in brackets what others who know might say
deadout-terminal-records = Records
deadout-terminal-record = { $sign } { $seen ->
    [yes] yes
    [fairly-yes] fairly sure
    [fairly-no] fairly sure not
    [no] no
   *[unseen] not known
}: { $because }
deadout-terminal-look = Look next
deadout-terminal-comb = Comb
deadout-terminal-stores = Stores
deadout-terminal-people = People
deadout-terminal-stops = A yes stops everything.

deadout-terminal-sign-right = write NAME=yes, no, fairly-sure, fairly-no or unseen, such as small-cluster=yes
deadout-terminal-how = Answer y (yes), f (fairly sure), n (no), or Enter for not looked at.
deadout-terminal-again = Write y, f, n, or nothing.
