## Was `serve` im Terminal sagt.

serve-terminal-kept-in = Notizen werden in { $file } aufbewahrt
serve-terminal-kept-nowhere = Notizen dazu liegen im Speicher und sind am Ende weg; --store FILE bewahrt sie auf
serve-terminal-first-run = Noch ist kein Stand aufbewahrt; dieser ist erfunden. Seine erste Seite führt zum Beginn des eigenen.
serve-terminal-here = Die Seiten: { $address }  (nur an diesem Rechner; Strg-C beendet)
serve-terminal-records-served = Gezeigt wird der Stand der Aufzeichnungen, nicht der der Datei: { $why }

serve-terminal-lan = Die Seiten, für alle, die den Kennsatz wissen (Strg-C beendet):
serve-terminal-trust = Auf einem neuen Telefon zuerst dies öffnen, um ihnen zu vertrauen:
serve-terminal-compare = Dort den SHA-256-Fingerabdruck von „{ $name }“ vergleichen:
serve-terminal-left-out = { $name } wird nicht bedient: es ist eine Adresse des offenen Internets.
serve-terminal-camera = Die erste davon für die Kamera eines Telefons:
serve-terminal-records-wanted = --lan braucht aufbewahrte Aufzeichnungen; den Stand mit --apiary FILE oder seine Aufzeichnungen mit --store FILE nennen
serve-terminal-made-anew = Das Zertifikat galt heute nicht und wurde neu gemacht; jedes Telefon muss ihm neu vertrauen.

serve-terminal-phrase-holds = Ein Kennsatz ist schon aufbewahrt und gilt; --new-pass-phrase setzt einen anderen an seine Stelle.
serve-terminal-phrase-kept = Der Kennsatz ist versiegelt aufbewahrt; niemand kann ihn wieder lesen.
serve-terminal-phrase-file = { $file }: { $why }; eine Datei mit dem Kennsatz nennen
serve-terminal-phrase-wanted = --lan braucht einen Kennsatz: mit --pass-phrase-file FILE oder { $variable } geben, oder im Terminal starten, um gefragt zu werden
serve-terminal-choose = Einen Kennsatz von mindestens 12 Zeichen wählen; wer ihn weiß, kann den Stand lesen und schreiben.
serve-terminal-phrase = Kennsatz:
serve-terminal-once-more = Noch einmal:
serve-terminal-not-same = die beiden sind nicht gleich; neu beginnen

serve-terminal-port = Port { $port }: { $why }; mit --port einen anderen wählen
serve-terminal-no-port = kein Port frei
serve-terminal-clock = die Uhr dieses Rechners sagt { $today }, vor der Zeit dieses Programms: Kein Telefon nähme ein Zertifikat von diesem Tag. Die Uhr stellen, dann neu starten
serve-terminal-authority = { $folder }: { $why }; ausbessern, oder den Ordner löschen und neu beginnen (jedes Telefon muss ihm dann neu vertrauen)
