//! A certificate authority of the keeper's own, beside the records, that vouches for this machine alone.

use jiff::ToSpan;
use jiff::civil::{Date, date};
use rcgen::{
    BasicConstraints, CertificateParams, CidrSubnet, DnType, ExtendedKeyUsagePurpose, GeneralSubtree, IsCa, Issuer,
    KeyPair, KeyUsagePurpose, NameConstraints, SanType,
};
use ring::digest::{SHA256, digest};
use rustls::ServerConfig;
use rustls::pki_types::pem::PemObject;
use rustls::pki_types::{CertificateDer, PrivateKeyDer, PrivatePkcs8KeyDer};
use std::fs;
use std::io::Write;
use std::net::{IpAddr, Ipv4Addr, Ipv6Addr};
use std::path::Path;
use std::sync::Arc;

use super::addresses::Own;
use crate::{exit, progress};
use snowhum_say::serve_terminal as say;
use snowhum_web::NETWORKS;

/// Days that the authority holds: ten years.
const AUTHORITY_DAYS: i32 = 3_652;
/// Days that a server's certificate holds: well below the 825 that devices take from an authority their owner added (from
/// memory). It is made anew at each start.
const SERVER_DAYS: i32 = 397;
/// No clock that is right says an earlier day: this was written then. Raised with each release.
const WRITTEN: Date = date(2026, 11, 29);
const KEY: &str = "authority.key";
const CERTIFICATE: &str = "authority.crt";
/// The names it may vouch for, one a line.
const NAMES: &str = "authority.names";
/// A certificate that is being made.
const PART: &str = "authority.crt.part";

/// The authority.
pub(super) struct Authority {
    key: KeyPair,
    pem: String,
    certificate: CertificateDer<'static>,
    fingerprint: Vec<String>,
    name: String,
    /// Host names it may vouch for.
    may: Vec<String>,
}

impl Authority {
    /// The one in a folder; made there if there is none, and made anew with its key if it does not hold today, as one
    /// that was made while the clock was wrong.
    pub(super) fn open(folder: &Path, host: Option<&str>, today: Date) -> anyhow::Result<Self> {
        if today < WRITTEN {
            return Err(exit::failed(say::clock(today.to_string())));
        }
        let of = |error: &dyn std::fmt::Display| {
            exit::failed(say::authority(folder.display().to_string(), error.to_string()))
        };
        let is_there = folder.join(KEY).exists();
        if !is_there {
            make(folder, host, today).map_err(|error| of(&error))?;
        }
        let read = Self::read(folder).map_err(|error| of(&error))?;
        if read.holds(today) {
            return Ok(read);
        }
        progress::note(snowhum_say::serve_terminal::made_anew());
        read.renew(folder, today).map_err(|error| of(&error))?;
        Self::read(folder).map_err(|error| of(&error))
    }

    fn holds(&self, today: Date) -> bool {
        validity(&self.certificate).is_some_and(|(from, until)| from <= today && today < until)
    }

    /// Another certificate of the same key, name and hosts, in the place of the one there is.
    fn renew(&self, folder: &Path, today: Date) -> anyhow::Result<()> {
        let certificate = authority(&self.key, &self.may, today)?.self_signed(&self.key)?;
        let part = folder.join(PART);
        fs::write(&part, certificate.pem())?;
        Ok(fs::rename(part, folder.join(CERTIFICATE))?)
    }

    fn read(folder: &Path) -> anyhow::Result<Self> {
        let key = KeyPair::from_pem(&fs::read_to_string(folder.join(KEY))?)?;
        let pem = fs::read_to_string(folder.join(CERTIFICATE))?;
        let certificate = CertificateDer::from_pem_slice(pem.as_bytes())?;
        let may = fs::read_to_string(folder.join(NAMES))?.lines().map(str::to_owned).collect();
        let hash = digest(&SHA256, &certificate);
        let hex = |bytes: &[u8]| bytes.iter().map(|byte| format!("{byte:02X}")).collect::<Vec<_>>().join(":");
        let fingerprint = hash.as_ref().chunks(8).map(hex).collect();
        Ok(Self { name: name_of(&key), key, pem, certificate, fingerprint, may })
    }

    pub(super) fn pem(&self) -> &str {
        &self.pem
    }

    /// SHA-256 of its certificate, eight bytes a line.
    pub(super) fn fingerprint(&self) -> &[String] {
        &self.fingerprint
    }

    pub(super) fn name(&self) -> &str {
        &self.name
    }

    /// How to serve in TLS, with a certificate made now for all names and addresses of this machine.
    pub(super) fn server(&self, own: &Own, today: Date) -> anyhow::Result<Arc<ServerConfig>> {
        let key = KeyPair::generate().map_err(exit::environment)?;
        let issuer = Issuer::new(authority(&self.key, &self.may, today)?, &self.key);
        let certificate = self.vouched(own, today)?.signed_by(&key, &issuer).map_err(exit::environment)?;
        let chain = vec![certificate.der().clone(), self.certificate.clone()];
        let key = PrivateKeyDer::from(PrivatePkcs8KeyDer::from(key.serialize_der()));
        let provider = Arc::new(rustls::crypto::ring::default_provider());
        let versions = [&rustls::version::TLS13, &rustls::version::TLS12];
        let config = ServerConfig::builder_with_provider(provider).with_protocol_versions(&versions);
        let config = config.map_err(exit::environment)?.with_no_client_auth().with_single_cert(chain, key);
        let mut config = config.map_err(exit::environment)?;
        config.alpn_protocols = vec![b"http/1.1".to_vec()];
        Ok(Arc::new(config))
    }

    fn vouched(&self, own: &Own, today: Date) -> anyhow::Result<CertificateParams> {
        let mut made = CertificateParams::default();
        dated(&mut made, today, SERVER_DAYS)?;
        made.distinguished_name.remove(DnType::CommonName);
        made.distinguished_name.push(DnType::CommonName, "Snowhum pages");
        made.key_usages = vec![KeyUsagePurpose::DigitalSignature];
        made.extended_key_usages = vec![ExtendedKeyUsagePurpose::ServerAuth];
        made.use_authority_key_identifier_extension = true;
        let loopback = [IpAddr::V4(Ipv4Addr::LOCALHOST), IpAddr::V6(Ipv6Addr::LOCALHOST)];
        made.subject_alt_names = own.addresses.iter().copied().chain(loopback).map(SanType::IpAddress).collect();
        let names = own.host_names().into_iter().chain(["localhost".to_owned()]);
        for name in names.filter(|name| self.may.contains(name)) {
            made.subject_alt_names.push(SanType::DnsName(name.try_into().map_err(exit::environment)?));
        }
        Ok(made)
    }
}

/// Makes one: a key for this user's eyes alone, and a certificate for the devices.
fn make(folder: &Path, host: Option<&str>, today: Date) -> anyhow::Result<()> {
    make_private(folder)?;
    let key = KeyPair::generate()?;
    let may: Vec<String> = host.iter().flat_map(|host| [(*host).to_owned(), format!("{host}.local")]).collect();
    let may: Vec<String> = may.into_iter().chain(["localhost".to_owned()]).collect();
    let certificate = authority(&key, &may, today)?.self_signed(&key)?;
    // The key last: a folder without it is begun anew.
    fs::write(folder.join(CERTIFICATE), certificate.pem())?;
    fs::write(folder.join(NAMES), may.join("\n"))?;
    write_secret(&folder.join(KEY), &key.serialize_pem())
}

/// The authority's certificate: it may vouch for these names and for addresses in networks of one's own, no others.
fn authority(key: &KeyPair, may: &[String], today: Date) -> anyhow::Result<CertificateParams> {
    let mut made = CertificateParams::default();
    dated(&mut made, today, AUTHORITY_DAYS)?;
    made.distinguished_name.remove(DnType::CommonName);
    made.distinguished_name.push(DnType::CommonName, name_of(key));
    made.is_ca = IsCa::Ca(BasicConstraints::Constrained(0));
    made.key_usages = vec![KeyUsagePurpose::KeyCertSign, KeyUsagePurpose::CrlSign];
    let networks =
        NETWORKS.iter().map(|(ip, bits)| GeneralSubtree::IpAddress(CidrSubnet::from_addr_prefix(*ip, *bits)));
    let names = may.iter().map(|name| GeneralSubtree::DnsName(name.clone()));
    made.name_constraints =
        Some(NameConstraints { permitted_subtrees: names.chain(networks).collect(), excluded_subtrees: Vec::new() });
    Ok(made)
}

/// A name of its own for each authority, so that a device that trusted two can tell them apart.
fn name_of(key: &KeyPair) -> String {
    let hash = digest(&SHA256, key.public_key_raw());
    let letters: String = hash.as_ref().iter().take(3).map(|byte| format!("{byte:02x}")).collect();
    format!("Snowhum yard {letters}")
}

/// Holds from yesterday, for clocks that are late, so many days on.
fn dated(made: &mut CertificateParams, today: Date, days: i32) -> anyhow::Result<()> {
    let at = |day: Date| -> anyhow::Result<_> {
        let (month, day_of_month) = (u8::try_from(day.month())?, u8::try_from(day.day())?);
        Ok(rcgen::date_time_ymd(i32::from(day.year()), month, day_of_month))
    };
    made.not_before = at(today.checked_sub(1.day())?)?;
    made.not_after = at(today.checked_add((days - 1).days())?)?;
    Ok(())
}

/// From which day to which a certificate holds, by the first pair of times in it (RFC 5280, section 4.1.2.5).
fn validity(certificate: &[u8]) -> Option<(Date, Date)> {
    (0..certificate.len()).find_map(|at| {
        let (from, rest) = time(&certificate[at..])?;
        Some((from, time(rest)?.0))
    })
}

/// The day of a time in DER, and what comes after it: UTCTime, which is of 1950 to 2049, or GeneralizedTime.
fn time(der: &[u8]) -> Option<(Date, &[u8])> {
    let (digits, rest) = match der {
        [0x17, 13, rest @ ..] => rest.split_at_checked(13)?,
        [0x18, 15, rest @ ..] => rest.split_at_checked(15)?,
        _ => return None,
    };
    let text = str::from_utf8(digits.strip_suffix(b"Z")?).ok()?;
    let (year, text) = text.split_at_checked(text.len().checked_sub(10)?)?;
    let number: i16 = year.parse().ok()?;
    let year = match (year.len(), number) {
        (2, 50..) => 1900 + number,
        (2, _) => 2000 + number,
        _ => number,
    };
    let two = |at: usize| text.get(at..at + 2)?.parse::<i8>().ok();
    Some((Date::new(year, two(0)?, two(2)?).ok()?, rest))
}

/// A folder that its owner alone can enter.
fn make_private(folder: &Path) -> std::io::Result<()> {
    let mut builder = fs::DirBuilder::new();
    builder.recursive(true);
    #[cfg(unix)]
    std::os::unix::fs::DirBuilderExt::mode(&mut builder, 0o700);
    builder.create(folder)
}

#[cfg(unix)]
fn write_secret(path: &Path, text: &str) -> anyhow::Result<()> {
    use std::os::unix::fs::OpenOptionsExt;
    let mut file = fs::OpenOptions::new().write(true).create_new(true).mode(0o600).open(path)?;
    file.write_all(text.as_bytes())?;
    Ok(file.sync_all()?)
}

/// Elsewhere the user's own folders are shut to others.
#[cfg(not(unix))]
fn write_secret(path: &Path, text: &str) -> anyhow::Result<()> {
    let mut file = fs::OpenOptions::new().write(true).create_new(true).open(path)?;
    file.write_all(text.as_bytes())?;
    Ok(file.sync_all()?)
}

#[cfg(test)]
mod tests {
    use super::{Authority, CertificateParams, Issuer, KeyPair, Own, WRITTEN, authority, dated, make, validity};
    use jiff::civil::{Date, date};
    use rustls::RootCertStore;
    use rustls::client::WebPkiServerVerifier;
    use rustls::client::danger::ServerCertVerifier;
    use rustls::pki_types::{ServerName, UnixTime};
    use std::path::PathBuf;
    use std::sync::Arc;

    fn folder(name: &str) -> PathBuf {
        std::env::temp_dir().join(format!("snowhum-authority-{name}-{}", std::process::id()))
    }

    fn today() -> Date {
        jiff::Timestamp::now().to_zoned_datetime(jiff::tz::TimeZone::UTC).date()
    }

    #[test]
    fn a_clock_before_this_was_written_makes_no_certificate() {
        let folder = folder("clock");
        assert!(WRITTEN <= today(), "written in the future");
        let refused = Authority::open(&folder, Some("shed"), date(1970, 1, 1)).err().unwrap().to_string();
        assert!(refused.contains("1970-01-01") && refused.contains("Set the clock"), "{refused}");
        assert!(!folder.exists());
    }

    #[test]
    fn a_certificate_made_under_a_wrong_clock_mends_itself_and_keeps_its_key() {
        for wrong in [date(1970, 1, 2), date(2077, 1, 1)] {
            let folder = folder(&format!("mends-{}", wrong.year()));
            make(&folder, Some("shed"), wrong).unwrap();
            let old = Authority::read(&folder).unwrap();
            assert!(!old.holds(today()) && old.holds(wrong));
            let mended = Authority::open(&folder, Some("shed"), today()).unwrap();
            assert!(mended.holds(today()) && is_believed(&mended, &["shed"], "shed"));
            assert_eq!((mended.name(), &mended.may), (old.name(), &old.may));
            let again = Authority::open(&folder, Some("shed"), today()).unwrap();
            assert_eq!(again.fingerprint(), mended.fingerprint(), "once");
            assert_eq!(validity(&old.certificate).unwrap().0, wrong.yesterday().unwrap());
            std::fs::remove_dir_all(folder).unwrap();
        }
    }

    /// Whether a device that trusts the authority believes a certificate of it for `names`, asked for `name`.
    fn is_believed(by: &Authority, names: &[&str], name: &str) -> bool {
        let mut made = CertificateParams::new(names.iter().map(|name| (*name).to_owned()).collect::<Vec<_>>()).unwrap();
        dated(&mut made, today(), 30).unwrap();
        let key = KeyPair::generate().unwrap();
        let issuer = Issuer::new(authority(&by.key, &by.may, today()).unwrap(), &by.key);
        let certificate = made.signed_by(&key, &issuer).unwrap();
        let mut roots = RootCertStore::empty();
        roots.add(by.certificate.clone()).unwrap();
        let provider = Arc::new(rustls::crypto::ring::default_provider());
        let verifier = WebPkiServerVerifier::builder_with_provider(Arc::new(roots), provider).build().unwrap();
        let name = ServerName::try_from(name.to_owned()).unwrap();
        verifier.verify_server_cert(certificate.der(), &[], &name, &[], UnixTime::now()).is_ok()
    }

    #[test]
    fn it_vouches_for_this_machine_and_for_no_site_elsewhere() {
        let folder = folder("names");
        let made = Authority::open(&folder, Some("shed"), today()).unwrap();
        for own in ["shed", "shed.local", "localhost", "192.168.1.5", "10.1.2.3", "127.0.0.1", "fd12::1"] {
            assert!(is_believed(&made, &[own], own), "{own}");
        }
        for other in ["bank.example", "shed.example", "8.8.8.8", "2001:db8::1"] {
            assert!(!is_believed(&made, &[other], other), "{other}");
            assert!(!is_believed(&made, &["shed", other], "shed"), "beside {other}");
        }
        std::fs::remove_dir_all(folder).unwrap();
    }

    #[test]
    fn it_stays_the_same_and_its_key_is_its_owners_alone() {
        let folder = folder("kept");
        let (first, second) = (
            Authority::open(&folder, Some("shed"), today()).unwrap(),
            Authority::open(&folder, None, today()).unwrap(),
        );
        assert_eq!((first.fingerprint(), first.name()), (second.fingerprint(), second.name()));
        assert_eq!(first.fingerprint().concat().len(), 4 * (8 * 3 - 1));
        #[cfg(unix)]
        {
            use std::os::unix::fs::PermissionsExt;
            let mode = std::fs::metadata(folder.join(super::KEY)).unwrap().permissions().mode();
            assert_eq!(mode & 0o777, 0o600);
            let mode = std::fs::metadata(&folder).unwrap().permissions().mode();
            assert_eq!(mode & 0o777, 0o700);
        }
        let own =
            Own { host: Some("shed".to_owned()), addresses: vec!["192.168.1.5".parse().unwrap()], left_out: vec![] };
        first.server(&own, today()).unwrap();
        std::fs::write(folder.join(super::KEY), "no key").unwrap();
        let broken = Authority::open(&folder, None, today()).err().unwrap().to_string();
        assert!(broken.contains("remove the folder"), "{broken}");
        std::fs::remove_dir_all(folder).unwrap();
    }
}
