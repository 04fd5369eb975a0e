## A queen who will not bring her colony through: what is wrong, and what is done about her.

queen-trouble = { $trouble ->
    [no-queen] no queen
    [virgin] virgin queen
    [drone-layer] drone-laying queen
   *[laying-workers] laying workers
}
queen-why = { $trouble ->
    [no-queen] it has no queen: no young bees follow the old
    [virgin] its queen is not mated: until she is, no young workers follow the old
    [drone-layer] its queen lays drones: no young workers follow the old
   *[laying-workers] its workers lay: they take no queen, and put to a good colony can cost it its own
}
queen-reason = { $why } ({ $trouble })

queen-join-healthy = put its bees to a healthy colony with a laying queen
queen-join = put its bees to { $name }
queen-join-none = no colony of this yard is fit to take its bees
queen-join-sick = it is sick and goes to no other colony: close it to robbers once it is empty
queen-requeen = give it a mated queen by about { DAY($by) }; { $join }
queen-join-or-requeen = { $join }, or give it a mated queen by about { DAY($by) }
queen-join-or-soon = { $join }, or give it a mated queen as soon as there are any

queen-hardly-mates = she hardly mates any more: take her out, and { $join }
queen-may-mate = look for eggs about { DAY($on) }, for in the model about { NUMBER($mate) } in 100 such queens still mate from today; without eggs take her out, and { $join }
queen-take-out = find her and take her out, and a day later { $join }
queen-let-go = let { $name } go: close it to robbers once it is empty; its sick bees are not shaken before other hives
queen-shake-out = give it no queen and put it to no colony as it is: on a warm day carry { $name } well away, shake its bees off on the ground and take its stand from the row, and the fliers beg their way into the others; some join what is left to a strong colony, never to a weak one
queen-in-winter = { $trouble ->
    [no-queen] nothing now, for clustered bees take no queen and do not merge; on the first day on which bees fly well look for eggs, and without any { $join }
    [virgin] nothing now, and she mates no more; on the first day on which bees fly well look what she lays, take her out if it is drones, and { $join }
    [drone-layer] nothing now, for she is not found in a cluster; on the first day on which bees fly well take her out, and { $join }
   *[laying-workers] nothing now, for bees shaken out in the cold die where they fall; on the first day on which bees fly well shake it out before strong hives, and give it no queen
}
