## Où en est chaque ruche, dans le terminal.

now-terminal-sign = { DAY($on, style: "short") } { $note }
now-terminal-stands = Cela repose sur { $source }, graine { $seed }.
now-terminal-judgement = Ce qu’un signe peut dire est partout un jugement : data/watch_parameters.toml. Suivre la notice, la loi locale, les services vétérinaires et le vétérinaire avant tout mot d’ici.

now-terminal-flight-day = Jour de vol
now-terminal-flies-most-days = les abeilles volent maintenant presque chaque jour ; une ruche qui ne vole pas quand d’autres volent s’ouvre d’abord
now-terminal-flies = { DAY($on) }, { $days ->
    [one] demain
   *[other] dans { NUMBER($days) } jours
} ({ $chance }) : noter à chaque ruche qui a bien volé, peu ou pas du tout, et ouvrir d’abord celles qui n’ont pas volé
now-terminal-flies-not = aucun n’est probable d’ici dix jours
now-terminal-look = Aller voir
now-terminal-open = Ouvrir
now-terminal-lid = Couvercle
now-terminal-lid-tomorrow = Demain à une heure : { $lid } { $others }

now-terminal-mind = Attention
now-terminal-queen = Reine
now-terminal-with-queen = { $chance } des vivantes en ont une ; aucun signe du dehors ne le prouve
now-terminal-bees = environ { NUMBER($likely) } ({ NUMBER($least) } à { NUMBER($most) })
now-terminal-stores = { MASS($likely, digits: 1) } (8 sur 10 entre { MASS($least, digits: 1) } et { MASS($most, digits: 1) }) ; à portée { MASS($reach, digits: 1) }
now-terminal-until = Jusqu’à
now-terminal-board = Plaque
now-terminal-ahead = À venir
now-terminal-comes = en vie, nourries et avec reine : { $chance }
now-terminal-comes-to = jusqu’au { $goal }, en vie, nourries et avec reine : { $chance }
now-terminal-dead = Si morte
now-terminal-dead-of = { LIST($causes) } sur 100
now-terminal-since = Depuis
now-terminal-since-day = le plus probablement { DAY($likely, style: "part") }, entre le { DAY($from) } et le { DAY($to) }

now-terminal-next = À voir
now-terminal-next-look = le { DAY($on) } par { TEMPERATURE($air) } : { LIST($parts) }
now-terminal-new-dead = { $dead } nouvelles abeilles mortes{ $indoors ->
    [yes] {" "}sur son plancher
   *[no] {""}
}
now-terminal-new-rime = nouveau givre au trou { $chance }
now-terminal-new-hum = un bourdonnement { $chance }
now-terminal-new-flight = un vol de propreté { $chance }
now-terminal-no-flight = aucune abeille ne vole dans le noir

now-terminal-look-first = D’abord ?
now-terminal-action = { $what }, { $when } : { $worth }. { $why }.
now-terminal-caution = Attention : { $caution }.
now-terminal-signs = Signes
now-terminal-evidence = { DAY($on) } : { $note } : { $moved }
