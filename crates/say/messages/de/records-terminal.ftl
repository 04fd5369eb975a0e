## Aufzeichnungen in Obhut: export, backup, restore, doctor.

records-terminal-written = geschrieben: { LIST($files) }
records-terminal-backed-up = gesichert in { $file }
records-terminal-restored = wiederhergestellt in { $file }
records-terminal-mended = ausgebessert: { $file }
records-terminal-aside = was da war, ist jetzt { $file }
records-terminal-access-left = Kennsatz, Sitzungen und Links blieben zurück; --with-access nimmt sie mit
records-terminal-put-back = zurückgeholt: { $row }
records-terminal-lost = verloren: { $row }
records-terminal-some-lost = einige Aufzeichnungen sind verloren; neu schreiben
records-terminal-code = { $code }  (statt des Kennsatzes, einmal, binnen zehn Minuten)
records-terminal-well = in Ordnung
records-terminal-odd = gut zu wissen
records-terminal-ill = nicht in Ordnung
records-terminal-not-in-order = die Aufzeichnungen sind nicht in Ordnung; ausbessern mit: snowhum restore BACKUP --mend
