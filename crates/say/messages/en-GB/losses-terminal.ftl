## A winter's losses, in the terminal.

losses-terminal-unnamed = Lost to what nobody names
losses-terminal-percent = { NUMBER($low) } to { NUMBER($high) } %

losses-terminal-yard = { NUMBER($lost) } of { NUMBER($colonies) } colonies lost: { NUMBER($percent) } %
losses-terminal-lost = Lost
losses-terminal-how-lost = { NUMBER($dead) } dead or empty, { NUMBER($queen-failed) } queen failed, { NUMBER($disaster) } disaster
losses-terminal-alive = { NUMBER($alive) }
losses-terminal-alive-weak = { NUMBER($alive) }, { NUMBER($weak) } of them weak
losses-terminal-luck = Luck
losses-terminal-luck-fits = fits a yearly rate of { $exact } (Wilson { $wilson })
losses-terminal-next = Next winter
losses-terminal-next-rate = { NUMBER($percent) } % ({ $range }), drawn to what yards usually lose
losses-terminal-by-chance = By chance
losses-terminal-so-many = at a usual { NUMBER($usual) } % so many or more are lost in { $few ->
    [yes] fewer than 1
   *[no] { NUMBER($winters) }
} of 100 winters

losses-terminal-club = { NUMBER($lost) } of { NUMBER($colonies) } colonies of { NUMBER($members) } members lost: { NUMBER($percent, digits: 1) } %
losses-terminal-overall = Overall
losses-terminal-of-all = { NUMBER($percent, digits: 1) } % of all colonies, { $range } ({ $method })
losses-terminal-average = Average
losses-terminal-mean = { NUMBER($percent, digits: 1) } % is the mean of the members' own rates
losses-terminal-spread = Spread
losses-terminal-times = { NUMBER($times, digits: 2) } times what luck alone gives; 1 is taken if it is less
losses-terminal-members = Members
losses-terminal-who = { NUMBER($none) } without a loss, { NUMBER($all) } lost all

losses-terminal-earlier-right = write LOST/COLONIES, such as 1/5, of at most { NUMBER($most) }
losses-terminal-member-right = write NAME=LOST/COLONIES, such as Ann=1/5
losses-terminal-too-large = { $file }: larger than any club's list
losses-terminal-line = { $file }, line { NUMBER($line) }: "{ $written }": write name, colonies at risk, colonies lost, such as Ann,5,1
