## Ce qui ne va pas et ce qui irait, partout où quelque chose se lit.

fault-both = { $first } ; { $then }
fault-at = { $place } : { $says }
fault-ended = { $says }.
fault-sentence = { SENTENCE($says) }
fault-quoted = « { $text } »
fault-cannot-be = « { $written } » ne peut pas être
fault-letters = écrire au plus { NUMBER($letters) } lettres
fault-no-equals = « { $written } » n’a pas de « = »
fault-once = le donner une fois

fault-unknown = « { $written } » n’est pas connu ici
fault-did-you-mean = s’agit-il de « { $near } » ?
fault-did-you-mean-or = s’agit-il de « { $near } » ? Proches aussi : { LIST($others) }
fault-one-of = écrire l’un de { LIST($known) }
fault-nearest = les plus proches connus sont { LIST($near) }
fault-no-share = « { $written } » n’est pas une part
fault-share-right = écrire un pourcentage, par exemple « 75 % »

fault-no-day = « { $written } » n’est pas un jour
fault-day-right = écrire l’année, le mois et le jour, par exemple 2025-10-05, ou 5.10.2025
fault-no-time = « { $written } » n’est pas une heure
fault-time-right = écrire par exemple « 2026-01-06 10:00 »
fault-moving-day = « { $written } » est chaque jour un autre jour
fault-moving-day-right = un fichier se lit aussi d’autres jours : écrire le jour lui-même, par exemple 2025-10-05
fault-far-day = « { $written } » est trop loin
fault-two-days = « { $written } » peut être deux jours
fault-either-day = écrire { $one } ou { $other }
fault-every-year = « { $written } » est un jour de chaque année
fault-every-year-right = écrire aussi l’année, par exemple 2025-10-05

fault-hint = conseil : { $remedy }
