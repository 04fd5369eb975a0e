## Les notes illisibles, ou sur lesquelles on interroge.

note-fault-too-long = la note est beaucoup trop longue
note-fault-or-words = { $examples } ; ce qu’aucun calcul ne lit s’écrit « words={ $written } »
note-fault-examples = écrire par exemple { LIST($examples) }
note-fault-nothing = « { $what } » ne peut pas se noter
note-fault-no-dead = « { $written } » n’est pas un compte d’abeilles mortes
note-fault-dead-right = écrire un nombre, « none », une fourchette comme « 6-20 », ou « over 100 »
note-fault-no-seams = « { $written } » n’est pas un nombre de ruelles
note-fault-seams-right = écrire un nombre de 0 à 30
note-fault-inside-right = écrire une température de -60 C à 60 C
note-fault-snow-right = écrire sa hauteur au-dessus du sol contre la ruche, de 0 cm à 500 cm, par exemple « snow=45 cm »
note-fault-no-bees = pas d’abeilles sous le couvercle dit peu
note-fault-no-bees-right = le laisser, ou écrire « colony=dead » si elles sont mortes

note-fault-no-colony = aucune colonie ne s’appelle « { $name } »
note-fault-no-colony-right = écrire le nom d’une colonie de ce rucher
note-fault-no-feed = « { $written } » ne dit pas ce qui a été donné
note-fault-feed-right = finir par l’un de { LIST($kinds) }, par exemple « fed=5 kg fondant »
note-fault-no-giver = « { $written } » ne nomme pas de donneuse
note-fault-giver-right = écrire « frames=3.6 kg from Alder »
note-fault-no-room = il n’y a pas de local « { $room } »
note-fault-no-room-right = le décrire dans le fichier du rucher : [[indoors]] avec name = "{ $room }" et temperature = "4 C"
note-fault-no-place = « { $written } » ne dit pas où
note-fault-carried-right = écrire le local du fichier du rucher, par exemple « carried=into Cellar », ou « carried=out »
note-fault-no-mites = « { $written } » n’est pas un compte de varroas
note-fault-mites-right = écrire les varroas et les abeilles de l’échantillon, jusqu’à { NUMBER($most) }, par exemple « mites=14 of 300 »
note-fault-signs = { NUMBER($signs) } signes sont dits
note-fault-no-sign = « { $written } » n’est pas un signe avec ce qu’on en a vu
note-fault-signs-right = écrire les signes avec yes, fairly yes, fairly no ou no, par exemple « small-cluster yes, no-food no »
note-fault-no-cause = « { $written } » n’est pas une cause avec sa chance
note-fault-cause-right = écrire « likeliest mites 71 »

note-fault-no-sides = « { $written } » n’est pas deux côtés
note-fault-sides-right = écrire les deux avec leur unité, par exemple « lift=42 kg, 38 kg inset 10 % »
note-fault-inset = la ruche reposerait sur son milieu
note-fault-inset-right = écrire un retrait d’au plus 40 % de sa largeur
note-fault-mass-right = écrire une masse de 0 à { MASS($most) }
note-fault-air = l’air ne peut pas être ainsi
note-fault-air-right = de { TEMPERATURE($least) } à { TEMPERATURE($most) } peut se noter
note-fault-wind = le vent ne peut pas être ainsi
note-fault-wind-right = jusqu’à { SPEED($most) } peut se noter

note-fault-no-colon = « { $written } » n’a pas de « : »
note-fault-treated-right = écrire par exemple « treated=oxalic | product: … | withdrawal: nil »
note-fault-detail-empty = « { $detail } » est vide
note-fault-detail-empty-right = l’écrire, ou le laisser : il n’est alors pas noté
note-fault-detail-long = « { $detail } » est trop long
note-fault-detail-marks = « { $detail } » contient « | », « ; » ou une fin de ligne
note-fault-detail-marks-right = écrire plutôt une virgule
note-fault-detail-twice = « { $detail } » est donné deux fois

note-fault-no-upper-hole = sa ruche n’a pas de trou supérieur
note-fault-no-upper-hole-right = si l’on en a fait un, le noter d’abord, par exemple « changed=upper hole=25 mm » ; le trou de vol est « entrance=... »

note-fault-ahead = { $at } est encore à venir ; écrire une heure jusqu’à maintenant
note-fault-twice = la même chose est déjà notée à { $at }
note-fault-before-count = { $on } précède le jour où les colonies ont été comptées, { $counted } : c’est du passé, et les réponses de cet hiver n’en tiennent pas compte
