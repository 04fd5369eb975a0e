## Links that show a yard to a mentor.

links-page-heading = A link for a mentor
links-page-lede = Who opens it sees the yard and each hive, and changes nothing. It opens wherever this server can be reached: { $network ->
    [yes] in your own network
   *[no] on this machine alone, until you serve with --lan
}.
links-page-for-whom = For whom
links-page-holds = It holds
links-page-days = { NUMBER($days) } days
links-page-make = Make a link
links-page-one = <strong>{ $reader }</strong>, until { DAY($until, style: "marked") } { $year }
links-page-take-back = Take it back

links-page-a-link = A link
links-page-welcome = A yard to look at
links-page-welcome-lede = This link is for <strong>{ $reader }</strong>. It shows a keeper's yard and hives; nothing can be changed through it.
links-page-look = Look at the yard
links-page-cookie = A cookie keeps it open in this browser until the link ends. “Sign out” at the foot of each page removes it.
links-page-needless = You are signed in yourself
links-page-needless-lede = The link works, and you see more without it. To see what it shows, open it in a private window.
links-page-shut = This link opens nothing
links-page-shut-lede = It has ended, was taken back, or was not copied whole. Ask the keeper for another.

links-page-wrong-name = Write whom the link is for, in at most { NUMBER($most) } letters.
links-page-wrong-days = A link holds 7, 30, 90 or 365 days.
links-page-too-many = There are { NUMBER($most) } links already; take one back first.
