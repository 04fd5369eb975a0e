## The page that hands out the certificate.

certificate-page-heading = Trust this server
certificate-page-lede = Your yard's pages are encrypted. Tell this device once that it may trust them.
certificate-page-take = Take the certificate
certificate-page-vouches = It vouches for this one machine in your own network, and for no site elsewhere.
certificate-page-install = Install it, by the steps for your device below. It is listed as <strong>{ $name }</strong>.
certificate-page-compare = Open it in the device's own list and compare the SHA-256 fingerprint shown there with the terminal's. If they differ, remove it: somebody stands between. It should read:
certificate-page-open = Open the pages:
certificate-page-steps = The steps
certificate-page-later = To take the trust back later, remove the certificate in the same place.

certificate-page-android = Android
certificate-page-android-tap = Tap the certificate above; it is saved under Downloads.
certificate-page-android-settings = Settings, Security and privacy, More, Encryption and credentials, Install a certificate, CA certificate.
certificate-page-android-warns = Android warns that somebody could watch; this certificate vouches for this one machine alone. Install anyway, and choose the file.
certificate-page-apple = iPhone and iPad
certificate-page-apple-open = Open this page in Safari, tap the certificate above, and allow the profile.
certificate-page-apple-install = Settings, Profile downloaded, Install.
certificate-page-apple-trust = Settings, General, About, Certificate Trust Settings: switch it on.
certificate-page-windows = Windows
certificate-page-windows-open = Open the downloaded file, then Install certificate, Current user.
certificate-page-windows-place = Place it in the store “Trusted Root Certification Authorities”, and confirm.
certificate-page-macos = macOS
certificate-page-macos-open = Open the downloaded file; Keychain Access asks for the login keychain.
certificate-page-macos-trust = Find it in the list, open it, and under Trust choose Always Trust.
certificate-page-linux = Linux
certificate-page-linux-firefox = Firefox: Settings, Privacy and security, Certificates, View certificates, Authorities, Import; trust it for websites.
certificate-page-linux-chromium = Chromium: Settings, Privacy and security, Security, Manage certificates, Installed by you, Import.
