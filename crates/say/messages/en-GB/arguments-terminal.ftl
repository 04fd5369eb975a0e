## Help, and what is wrong with arguments.

arguments-terminal-usage = Usage:
arguments-terminal-commands = Commands
arguments-terminal-command = COMMAND
arguments-terminal-arguments = Arguments
arguments-terminal-options = Options
arguments-terminal-any-options = [OPTIONS]
arguments-terminal-example = Example: { $typed }
arguments-terminal-unless-given = [default: { $value }]
arguments-terminal-values = [one of: { LIST($values) }]
arguments-terminal-each-value = What it can be:

arguments-terminal-unknown = there is no { $given } here
arguments-terminal-no-command = there is no command "{ $command }"
arguments-terminal-no-value = { $given } needs a value
arguments-terminal-no-choice = { $given }: "{ $value }" is none of { $right }
arguments-terminal-unread = { $given }: { $wrong }
arguments-terminal-twice = { $given } stands twice
arguments-terminal-conflict = { $given } does not go with { $prior }
arguments-terminal-missing = this is needed too: { $given }
arguments-terminal-which = which command?
arguments-terminal-nearest = Perhaps: { $near }
arguments-terminal-more = More: --help

arguments-terminal-out-of-range = "{ $written }" is not a number of { $what ->
    [days] days
   *[bees] bees
} between { NUMBER($low, digits: "all") } and { NUMBER($high) }
arguments-terminal-no-month = "{ $written }" is no month; write one such as 1, January, 2026-01 or 2026-01-18
arguments-terminal-winter-alone = only winter is answered, October to April; in the south give the month six months away
arguments-terminal-no-address = write such as https://192.168.1.7:8462
arguments-terminal-no-snow = write none, old or new
arguments-terminal-outside = "{ $value }" is not within { $range }
arguments-terminal-no-whole-number = "{ $value }" is no whole number that can be here
