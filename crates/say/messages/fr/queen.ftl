## Une reine qui ne mènera pas sa colonie au bout : ce qui ne va pas, et ce que l’on y fait.

queen-trouble = { $trouble ->
    [no-queen] pas de reine
    [virgin] reine vierge
    [drone-layer] reine bourdonneuse
   *[laying-workers] ouvrières pondeuses
}
queen-why = { $trouble ->
    [no-queen] elle n’a pas de reine : aucune jeune abeille ne suit les vieilles
    [virgin] sa reine n’est pas fécondée : tant qu’elle ne l’est pas, aucune jeune ouvrière ne suit les vieilles
    [drone-layer] sa reine pond des mâles : aucune jeune ouvrière ne suit les vieilles
   *[laying-workers] ses ouvrières pondent : elles n’acceptent pas de reine, et réunies à une bonne colonie peuvent lui coûter la sienne
}
queen-reason = { $why } ({ $trouble })

queen-join-healthy = réunir ses abeilles à une colonie saine dont la reine pond
queen-join = réunir ses abeilles à { $name }
queen-join-none = aucune colonie de ce rucher ne convient pour prendre ses abeilles
queen-join-sick = elle est malade et ne va à aucune autre colonie : la fermer aux pillardes une fois vide
queen-requeen = lui donner une reine fécondée d’ici le { DAY($by) } environ ; { $join }
queen-join-or-requeen = { $join }, ou lui donner une reine fécondée d’ici le { DAY($by) } environ
queen-join-or-soon = { $join }, ou lui donner une reine fécondée dès qu’il y en a

queen-hardly-mates = elle ne se fera plus guère féconder : l’ôter, et { $join }
queen-may-mate = chercher des œufs vers le { DAY($on) }, car dans le modèle environ { NUMBER($mate) } de ces reines sur 100 se font encore féconder à partir d’aujourd’hui ; sans œufs, l’ôter, et { $join }
queen-take-out = la trouver et l’ôter, et un jour plus tard { $join }
queen-let-go = laisser partir { $name } : la fermer aux pillardes une fois vide ; ses abeilles malades ne se secouent pas devant d’autres ruches
queen-shake-out = ne pas lui donner de reine et ne la réunir telle quelle à aucune colonie : un jour chaud, porter { $name } à bonne distance, secouer ses abeilles à terre et retirer son support du rang, et celles qui volent demandent l’entrée chez les autres ; certains réunissent ce qui reste à une colonie forte, jamais à une faible
queen-in-winter = { $trouble ->
    [no-queen] rien maintenant, car des abeilles en grappe n’acceptent pas de reine et ne se mêlent pas ; le premier jour où les abeilles volent bien, chercher des œufs, et s’il n’y en a pas { $join }
    [virgin] rien maintenant, et elle ne se fera plus féconder ; le premier jour où les abeilles volent bien, regarder ce qu’elle pond, l’ôter si ce sont des mâles, et { $join }
    [drone-layer] rien maintenant, car on ne la trouve pas dans une grappe ; le premier jour où les abeilles volent bien, l’ôter, et { $join }
   *[laying-workers] rien maintenant, car des abeilles secouées par le froid meurent où elles tombent ; le premier jour où les abeilles volent bien, la secouer devant des ruches fortes, et ne pas lui donner de reine
}
