## Le soin des archives : export, backup, restore, doctor.

records-terminal-written = écrit : { LIST($files) }
records-terminal-backed-up = sauvegardé dans { $file }
records-terminal-restored = restauré dans { $file }
records-terminal-mended = réparé : { $file }
records-terminal-aside = ce qui y était est maintenant { $file }
records-terminal-access-left = phrase de passe, sessions et liens sont restés ; --with-access les apporte
records-terminal-put-back = remis : { $row }
records-terminal-lost = perdu : { $row }
records-terminal-some-lost = une partie des archives est perdue ; l’écrire de nouveau
records-terminal-code = { $code }  (à la place de la phrase de passe, une fois, sous dix minutes)
records-terminal-well = en ordre
records-terminal-odd = à savoir
records-terminal-ill = pas en ordre
records-terminal-not-in-order = les archives ne sont pas en ordre ; les réparer avec : snowhum restore BACKUP --mend
