## La page qui remet le certificat.

certificate-page-heading = Faire confiance à ce serveur
certificate-page-lede = Les pages du rucher sont chiffrées. Dire une fois à cet appareil qu’il peut leur faire confiance.
certificate-page-take = Prendre le certificat
certificate-page-vouches = Il répond de cette seule machine dans le réseau local, et d’aucun site ailleurs.
certificate-page-install = L’installer, en suivant ci-dessous les étapes de l’appareil. Il figure sous le nom de <strong>{ $name }</strong>.
certificate-page-compare = L’ouvrir dans la liste de l’appareil et comparer l’empreinte SHA-256 qui y est montrée à celle du terminal. Si elles diffèrent, le retirer : quelqu’un est entre les deux. On doit lire :
certificate-page-open = Ouvrir les pages :
certificate-page-steps = Les étapes
certificate-page-later = Pour retirer la confiance plus tard, retirer le certificat au même endroit.

certificate-page-android = Android
certificate-page-android-tap = Toucher le certificat ci-dessus ; il est enregistré sous Téléchargements.
certificate-page-android-settings = Paramètres, Sécurité et confidentialité, Plus, Chiffrement et identifiants, Installer un certificat, Certificat CA.
certificate-page-android-warns = Android avertit que quelqu’un pourrait surveiller ; ce certificat ne répond que de cette seule machine. Installer quand même, et choisir le fichier.
certificate-page-apple = iPhone et iPad
certificate-page-apple-open = Ouvrir cette page dans Safari, toucher le certificat ci-dessus, et autoriser le profil.
certificate-page-apple-install = Réglages, Profil téléchargé, Installer.
certificate-page-apple-trust = Réglages, Général, Informations, Réglages de confiance des certificats : l’activer.
certificate-page-windows = Windows
certificate-page-windows-open = Ouvrir le fichier téléchargé, puis Installer le certificat, Utilisateur actuel.
certificate-page-windows-place = Le placer dans le magasin « Autorités de certification racines de confiance », et confirmer.
certificate-page-macos = macOS
certificate-page-macos-open = Ouvrir le fichier téléchargé ; Trousseaux d’accès demande le trousseau session.
certificate-page-macos-trust = Le trouver dans la liste, l’ouvrir, et sous Se fier choisir Toujours approuver.
certificate-page-linux = Linux
certificate-page-linux-firefox = Firefox : Paramètres, Vie privée et sécurité, Certificats, Afficher les certificats, Autorités, Importer ; lui faire confiance pour les sites web.
certificate-page-linux-chromium = Chromium : Paramètres, Confidentialité et sécurité, Sécurité, Gérer les certificats, Installés par l’utilisateur, Importer.
