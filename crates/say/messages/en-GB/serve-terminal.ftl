## What `serve` says in the terminal.

serve-terminal-kept-in = Notes are kept in { $file }
serve-terminal-kept-nowhere = Notes on it are held in memory and gone at the end; --store FILE keeps them
serve-terminal-first-run = No yard is kept yet; this one is invented. Its first page leads to the beginning of yours.
serve-terminal-here = The pages: { $address }  (this machine alone; Ctrl-C ends it)
serve-terminal-records-served = The yard of the records is served, not the file's: { $why }

serve-terminal-lan = The pages, for who knows the pass phrase (Ctrl-C ends it):
serve-terminal-trust = On a new phone open this first, to trust them:
serve-terminal-compare = Compare there the SHA-256 fingerprint of "{ $name }":
serve-terminal-left-out = { $name } is not served: it is an address of the open internet.
serve-terminal-camera = The first of them for a phone's camera:
serve-terminal-records-wanted = --lan needs records that are kept; name your yard with --apiary FILE or its records with --store FILE
serve-terminal-made-anew = The certificate did not hold today and was made anew; every phone must trust it anew.

serve-terminal-phrase-holds = A pass phrase is kept already and holds; --new-pass-phrase puts another in its place.
serve-terminal-phrase-kept = The pass phrase is kept, sealed; nobody can read it back.
serve-terminal-phrase-file = { $file }: { $why }; name a file with the pass phrase
serve-terminal-phrase-wanted = --lan needs a pass phrase: give it with --pass-phrase-file FILE or { $variable }, or start it in a terminal to be asked
serve-terminal-choose = Choose a pass phrase of at least 12 letters; who knows it can read and write your yard.
serve-terminal-phrase = Pass phrase:
serve-terminal-once-more = Once more:
serve-terminal-not-same = the two are not the same; start again

serve-terminal-port = port { $port }: { $why }; choose another with --port
serve-terminal-no-port = no port to listen on
serve-terminal-clock = the clock of this machine says { $today }, before this program was written: no phone would take a certificate of that day. Set the clock, then start again
serve-terminal-authority = { $folder }: { $why }; mend it, or remove the folder to begin anew (every phone must then trust it anew)
