## Ce que dit `serve` dans le terminal.

serve-terminal-kept-in = Les notes sont gardées dans { $file }
serve-terminal-kept-nowhere = Les notes restent en mémoire et disparaissent à la fin ; --store FILE les garde
serve-terminal-first-run = Aucun rucher n’est encore gardé ; celui-ci est inventé. Sa première page mène au début du sien.
serve-terminal-here = Les pages : { $address }  (cette machine seule ; Ctrl-C y met fin)
serve-terminal-records-served = C’est le rucher des archives qui est montré, non celui du fichier : { $why }

serve-terminal-lan = Les pages, pour qui connaît la phrase de passe (Ctrl-C y met fin) :
serve-terminal-trust = Sur un nouveau téléphone ouvrir d’abord ceci, pour leur faire confiance :
serve-terminal-compare = Y comparer l’empreinte SHA-256 de « { $name } » :
serve-terminal-left-out = { $name } n’est pas servi : c’est une adresse d’internet ouvert.
serve-terminal-camera = La première d’entre elles pour l’appareil photo d’un téléphone :
serve-terminal-records-wanted = --lan demande des archives gardées ; nommer son rucher avec --apiary FILE ou ses archives avec --store FILE
serve-terminal-made-anew = Le certificat ne valait plus aujourd’hui et a été refait ; chaque téléphone doit de nouveau lui faire confiance.

serve-terminal-phrase-holds = Une phrase de passe est déjà gardée et vaut ; --new-pass-phrase en met une autre à sa place.
serve-terminal-phrase-kept = La phrase de passe est gardée, scellée ; personne ne peut la relire.
serve-terminal-phrase-file = { $file } : { $why } ; nommer un fichier avec la phrase de passe
serve-terminal-phrase-wanted = --lan demande une phrase de passe : la donner par --pass-phrase-file FILE ou { $variable }, ou lancer dans un terminal pour qu’elle soit demandée
serve-terminal-choose = Choisir une phrase de passe d’au moins 12 lettres ; qui la connaît peut lire et écrire le rucher.
serve-terminal-phrase = Phrase de passe :
serve-terminal-once-more = Encore une fois :
serve-terminal-not-same = les deux ne sont pas les mêmes ; recommencer

serve-terminal-port = port { $port } : { $why } ; en choisir un autre avec --port
serve-terminal-no-port = aucun port libre
serve-terminal-clock = l’horloge de cette machine dit { $today }, avant l’écriture de ce programme : aucun téléphone ne prendrait un certificat de ce jour. Régler l’horloge, puis relancer
serve-terminal-authority = { $folder } : { $why } ; le réparer, ou ôter le dossier pour recommencer (chaque téléphone devra alors lui refaire confiance)
