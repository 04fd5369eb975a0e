## Aufbauten nebeneinander.

setup-as-it-is = wie jetzt
