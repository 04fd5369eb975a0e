//! Sums of all packages, and a signature over the sums.

use super::release::Release;
use anyhow::{Context, Result};
use minisign::{PublicKey, SecretKey, SecretKeyBox};
use sha2::{Digest, Sha256};
use std::io::Cursor;
use std::path::Path;

const SUMS: &str = "SHA256SUMS";
/// The file of a secret key made by `minisign -G`, and what opens it.
const KEY: &str = "SNOWHUM_SIGNING_KEY";
const KEY_PASSWORD: &str = "SNOWHUM_SIGNING_PASSWORD";

/// Writes the sums, signs them where there is a key, and tells both.
///
/// # Errors
/// When a package cannot be read, or the key that is named does not sign.
pub(super) fn seal(release: &Release) -> Result<Vec<String>> {
    std::fs::copy(release.stage().join("snowhum.cdx.json"), release.out.join(bill_name(release)))?;
    let mut files: Vec<_> = std::fs::read_dir(&release.out)?.collect::<Result<Vec<_>, _>>()?;
    files.retain(|entry| entry.path().is_file());
    files.sort_by_key(std::fs::DirEntry::file_name);
    let (mut sums, mut told) = (String::new(), Vec::new());
    for file in files {
        let (bytes, name) = (std::fs::read(file.path())?, file.file_name().to_string_lossy().into_owned());
        let sum: String = Sha256::digest(&bytes).iter().map(|byte| format!("{byte:02x}")).collect();
        told.push(format!("{sum}  {name}  {} bytes", bytes.len()));
        sums += &format!("{sum}  {name}\n");
    }
    std::fs::write(release.out.join(SUMS), &sums)?;
    told.push(match std::env::var_os(KEY) {
        Some(key) => {
            let signature = sign(&sums, &opened(Path::new(&key))?, release)?;
            std::fs::write(release.out.join(format!("{SUMS}.minisig")), signature)?;
            format!("{SUMS} is signed")
        }
        None => format!("{SUMS} is not signed: name the file of a minisign key in {KEY}"),
    });
    Ok(told)
}

fn bill_name(release: &Release) -> String {
    format!("snowhum-{}.cdx.json", release.version)
}

fn opened(key: &Path) -> Result<SecretKey> {
    let text = std::fs::read_to_string(key).with_context(|| format!("{KEY} names {}", key.display()))?;
    let sealed = || SecretKeyBox::from_string(&text).with_context(|| format!("{} is no minisign key", key.display()));
    let key = match std::env::var(KEY_PASSWORD) {
        Ok(password) => sealed()?.into_secret_key(Some(password)),
        Err(_) => sealed()?.into_unencrypted_secret_key(),
    };
    key.with_context(|| format!("the key does not open; what opens it is asked for in {KEY_PASSWORD}"))
}

/// The time in it is the release's. Each signature is drawn anew, so its bytes are its own and no part of the sums.
fn sign(sums: &str, key: &SecretKey, release: &Release) -> Result<String> {
    let comment = format!("timestamp:{}\tfile:{SUMS}\tsnowhum {}", release.moment, release.version);
    let public = PublicKey::from_secret_key(key)?;
    let signature = minisign::sign(Some(&public), key, Cursor::new(sums), Some(&comment), Some("Snowhum's packages"))?;
    Ok(signature.into_string())
}

#[cfg(test)]
mod tests {
    use super::{Release, sign};
    use minisign::{KeyPair, SignatureBox, verify};
    use std::io::Cursor;

    #[test]
    fn a_signature_holds_for_these_sums_alone() {
        let keys = KeyPair::generate_unencrypted_keypair().unwrap();
        let metadata = serde_json::Value::Null;
        let release = Release { version: "1.0.0".into(), moment: "1795957278".into(), out: "out".into(), metadata };
        let text = sign("ab  c.deb\n", &keys.sk, &release).unwrap();
        let signature = SignatureBox::from_string(&text).unwrap();
        let holds = |sums: &str| verify(&keys.pk, &signature, Cursor::new(sums), true, false, false).is_ok();
        assert!(holds("ab  c.deb\n"));
        assert!(!holds("ac  c.deb\n"));
    }
}
