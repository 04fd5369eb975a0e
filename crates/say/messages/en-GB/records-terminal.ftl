## Records looked after: export, backup, restore, doctor.

records-terminal-written = written: { LIST($files) }
records-terminal-backed-up = backed up to { $file }
records-terminal-restored = restored into { $file }
records-terminal-mended = mended { $file }
records-terminal-aside = what was there is now { $file }
records-terminal-access-left = the pass phrase, sessions and links stayed behind; --with-access brings them along
records-terminal-put-back = put back: { $row }
records-terminal-lost = lost: { $row }
records-terminal-some-lost = some of the records are lost; write them anew
records-terminal-code = { $code }  (in place of the pass phrase, once, within ten minutes)
records-terminal-well = in order
records-terminal-odd = worth knowing
records-terminal-ill = not in order
records-terminal-not-in-order = the records are not in order; mend them with: snowhum restore BACKUP --mend
