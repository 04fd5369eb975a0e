## Die Seite, die das Zertifikat ausgibt.

certificate-page-heading = Diesem Server vertrauen
certificate-page-lede = Die Seiten des Standes sind verschlüsselt. Diesem Gerät einmal sagen, dass es ihnen vertrauen darf.
certificate-page-take = Das Zertifikat herunterladen
certificate-page-vouches = Es bürgt für diesen einen Rechner im eigenen Netz, und für keine Seite anderswo.
certificate-page-install = Installieren, nach den Schritten für das Gerät unten. Es steht dort als <strong>{ $name }</strong>.
certificate-page-compare = In der Liste des Geräts öffnen und den dort gezeigten SHA-256-Fingerabdruck mit dem im Terminal vergleichen. Weichen sie ab, entfernen: jemand steht dazwischen. Er sollte lauten:
certificate-page-open = Die Seiten öffnen:
certificate-page-steps = Die Schritte
certificate-page-later = Um das Vertrauen später zurückzunehmen, das Zertifikat an derselben Stelle entfernen.

certificate-page-android = Android
certificate-page-android-tap = Oben auf das Zertifikat tippen; es wird unter Downloads gespeichert.
certificate-page-android-settings = Einstellungen, Sicherheit und Datenschutz, Mehr, Verschlüsselung und Anmeldedaten, Zertifikat installieren, CA-Zertifikat.
certificate-page-android-warns = Android warnt, dass jemand mitlesen könnte; dieses Zertifikat bürgt nur für diesen einen Rechner. Trotzdem installieren und die Datei wählen.
certificate-page-apple = iPhone und iPad
certificate-page-apple-open = Diese Seite in Safari öffnen, oben auf das Zertifikat tippen und das Profil zulassen.
certificate-page-apple-install = Einstellungen, Profil geladen, Installieren.
certificate-page-apple-trust = Einstellungen, Allgemein, Info, Zertifikatsvertrauenseinstellungen: einschalten.
certificate-page-windows = Windows
certificate-page-windows-open = Die geladene Datei öffnen, dann Zertifikat installieren, Aktueller Benutzer.
certificate-page-windows-place = Im Speicher „Vertrauenswürdige Stammzertifizierungsstellen“ ablegen und bestätigen.
certificate-page-macos = macOS
certificate-page-macos-open = Die geladene Datei öffnen; die Schlüsselbundverwaltung fragt nach dem Schlüsselbund „Anmeldung“.
certificate-page-macos-trust = In der Liste suchen, öffnen, und unter Vertrauen „Immer vertrauen“ wählen.
certificate-page-linux = Linux
certificate-page-linux-firefox = Firefox: Einstellungen, Datenschutz und Sicherheit, Zertifikate, Zertifikate anzeigen, Zertifizierungsstellen, Importieren; für Websites vertrauen.
certificate-page-linux-chromium = Chromium: Einstellungen, Datenschutz und Sicherheit, Sicherheit, Zertifikate verwalten, Von Ihnen installiert, Importieren.
