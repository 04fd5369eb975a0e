## Worauf eine Zahl steht.

status-calibrated = angepasst
status-published = veröffentlicht
status-common-practice = gängige Praxis
status-from-memory = aus der Erinnerung
status-judgement = Einschätzung
