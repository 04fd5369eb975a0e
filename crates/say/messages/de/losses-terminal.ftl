## Die Verluste eines Winters, im Terminal.

losses-terminal-unnamed = Verloren an das, was niemand benennt
losses-terminal-percent = { NUMBER($low) } bis { NUMBER($high) } %

losses-terminal-yard = { NUMBER($lost) } von { NUMBER($colonies) } Völkern verloren: { NUMBER($percent) } %
losses-terminal-lost = Verloren
losses-terminal-how-lost = { NUMBER($dead) } tot oder leer, { NUMBER($queen-failed) } Königin ausgefallen, { NUMBER($disaster) } Unglück
losses-terminal-alive = { NUMBER($alive) }
losses-terminal-alive-weak = { NUMBER($alive) }, davon { NUMBER($weak) } schwach
losses-terminal-luck = Zufall
losses-terminal-luck-fits = passt zu einer Jahresrate von { $exact } (Wilson { $wilson })
losses-terminal-next = Künftig
losses-terminal-next-rate = { NUMBER($percent) } % ({ $range }), zum üblichen Verlust von Ständen hin gezogen
losses-terminal-by-chance = Bei Zufall
losses-terminal-so-many = bei üblichen { NUMBER($usual) } % gehen so viele oder mehr verloren in { $few ->
    [yes] weniger als 1
   *[no] { NUMBER($winters) }
} von 100 Wintern

losses-terminal-club = { NUMBER($lost) } von { NUMBER($colonies) } Völkern von { NUMBER($members) } Mitgliedern verloren: { NUMBER($percent, digits: 1) } %
losses-terminal-overall = Insgesamt
losses-terminal-of-all = { NUMBER($percent, digits: 1) } % aller Völker, { $range } ({ $method })
losses-terminal-average = Mittel
losses-terminal-mean = { NUMBER($percent, digits: 1) } % ist das Mittel der Raten der Mitglieder
losses-terminal-spread = Streuung
losses-terminal-times = { NUMBER($times, digits: 2) }-mal so viel, wie Zufall allein gibt; 1 gilt, wenn es weniger ist
losses-terminal-members = Mitglieder
losses-terminal-who = { NUMBER($none) } ohne Verlust, { NUMBER($all) } verloren alles

losses-terminal-earlier-right = VERLOREN/VÖLKER schreiben, etwa 1/5, höchstens { NUMBER($most) }
losses-terminal-member-right = NAME=VERLOREN/VÖLKER schreiben, etwa Ann=1/5
losses-terminal-too-large = { $file }: größer als die Liste irgendeines Vereins
losses-terminal-line = { $file }, Zeile { NUMBER($line) }: „{ $written }“: Name, eingewinterte Völker, verlorene schreiben, etwa Ann,5,1
