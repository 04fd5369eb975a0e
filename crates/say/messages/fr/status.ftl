## Sur quoi un chiffre repose.

status-calibrated = calé
status-published = publié
status-common-practice = pratique courante
status-from-memory = de mémoire
status-judgement = jugement
