//! Where the services are.

use crate::{Fault, Service};
use ureq::http::Uri;

/// The beginning of each service's addresses, without a slash at the end.
///
/// They must be `https`; plain `http` is taken on the machine itself alone, for a stand-in.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Endpoints {
    /// MET Norway.
    pub met_norway: String,
    /// The US National Weather Service.
    pub nws: String,
    /// Open-Meteo.
    pub open_meteo: String,
}

impl Default for Endpoints {
    /// The public services.
    fn default() -> Self {
        Self {
            met_norway: "https://api.met.no".to_owned(),
            nws: "https://api.weather.gov".to_owned(),
            open_meteo: "https://api.open-meteo.com".to_owned(),
        }
    }
}

impl Endpoints {
    /// The service's address, if it can be used.
    pub(crate) fn of(&self, service: Service) -> Result<&str, Fault> {
        let address = match service {
            Service::MetNorway => &self.met_norway,
            Service::Nws => &self.nws,
            Service::OpenMeteo => &self.open_meteo,
        };
        let address = address.trim_end_matches('/');
        let fault = |wrong| Fault::Endpoint { service, address: address.to_owned(), wrong };
        let uri: Uri = address.parse().map_err(|_| fault("address"))?;
        match (uri.scheme_str(), uri.host()) {
            (Some("https"), Some(_)) => Ok(address),
            (Some("http"), Some(host)) if is_this_machine(host) => Ok(address),
            (Some("http"), Some(_)) => Err(fault("open")),
            _ => Err(fault("server")),
        }
    }
}

/// Whether a host is the machine itself.
pub(crate) fn is_this_machine(host: &str) -> bool {
    matches!(host, "localhost" | "127.0.0.1" | "[::1]")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_address_is_encrypted_or_on_this_machine() {
        let of = |address: &str| {
            Endpoints { met_norway: address.to_owned(), ..Endpoints::default() }.of(Service::MetNorway).is_ok()
        };
        assert!(of("https://weather.example/") && of("http://127.0.0.1:8080") && of("http://[::1]:80"));
        for bad in [
            "http://weather.example",
            "ftp://127.0.0.1",
            "api.met.no",
            "",
            "https://",
            "/a",
            "http://localhost.example",
        ] {
            assert!(!of(bad), "{bad}");
        }
    }
}
