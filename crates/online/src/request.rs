//! What is asked: for which place, of whom, by whom.

use crate::{Fault, Service};
use snowhum_units::{Degree, Metre};

/// Decimals of a degree that leave the house. A hundredth is about 1.1 km: finer than the grids the services forecast
/// on (1 to 11 km), and too coarse to lead a thief to the hives. MET Norway refuses more than four.
const DECIMALS: usize = 2;
/// Longest contact that is sent.
const LONGEST_CONTACT: usize = 200;

/// A place to forecast for; it leaves the house rounded to two decimals and whole metres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Position {
    /// North positive, -90 to 90.
    pub latitude: Degree,
    /// East positive, -180 to 180.
    pub longitude: Degree,
    /// Above sea level; makes the temperature right in hills.
    pub elevation: Option<Metre>,
}

/// Whether the keeper has accepted Open-Meteo's terms for the free service.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum OpenMeteoTerms {
    /// Not accepted: Open-Meteo is not asked.
    #[default]
    NotAccepted,
    /// The keeper has said that the use is not commercial.
    NonCommercial,
}

/// One forecast wanted.
#[derive(Debug, Clone, PartialEq)]
pub struct Request {
    /// Whom to ask.
    pub service: Service,
    /// For where.
    pub position: Position,
    /// Mail address or site where the service can reach the keeper; it goes into the name the request is made under.
    /// Not sent to a service that does not want it.
    pub contact: Option<String>,
    /// Whether Open-Meteo's terms are accepted.
    pub open_meteo_terms: OpenMeteoTerms,
}

impl Position {
    /// Latitude and longitude as they are sent.
    pub(crate) fn sent(&self) -> (String, String) {
        (rounded(self.latitude), rounded(self.longitude))
    }

    /// Height as it is sent: whole metres.
    pub(crate) fn sent_elevation(&self) -> Option<String> {
        self.elevation.map(|elevation| format!("{}", elevation.get().round() as i64))
    }
}

impl Request {
    /// The name the request is made under, once everything about the request is in order.
    pub(crate) fn checked(&self) -> Result<String, Fault> {
        self.check_position()?;
        let service = self.service;
        if service == Service::OpenMeteo && self.open_meteo_terms == OpenMeteoTerms::NotAccepted {
            return Err(Fault::TermsNotAccepted);
        }
        if !service.covers(&self.position) {
            let (latitude, longitude) = self.position.sent();
            return Err(Fault::NotCovered { service, latitude, longitude });
        }
        let name = concat!("snowhum/", env!("CARGO_PKG_VERSION"));
        if !service.wants_contact() {
            return Ok(name.to_owned());
        }
        let contact = self.contact.as_deref().map(str::trim).filter(|contact| !contact.is_empty());
        let contact = contact.ok_or(Fault::NoContact { service })?;
        match unfit(contact) {
            Some(wrong) => Err(Fault::UnfitContact { service, wrong }),
            None => Ok(format!("{name} {contact}")),
        }
    }

    fn check_position(&self) -> Result<(), Fault> {
        let Position { latitude, longitude, elevation } = self.position;
        let within = |value: f64, most: f64| value.is_finite() && value.abs() <= most;
        if !within(latitude.get(), 90.0) {
            return Err(Fault::Position("latitude"));
        }
        if !within(longitude.get(), 180.0) {
            return Err(Fault::Position("longitude"));
        }
        if elevation.is_some_and(|elevation| !within(elevation.get(), 9_000.0)) {
            return Err(Fault::Position("elevation"));
        }
        Ok(())
    }
}

/// Degrees with two decimals; no minus before nothing.
fn rounded(degree: Degree) -> String {
    let text = format!("{:.DECIMALS$}", degree.get());
    if text == "-0.00" { "0.00".to_owned() } else { text }
}

/// What keeps a contact from being one, as the text names it.
fn unfit(contact: &str) -> Option<&'static str> {
    if contact.len() > LONGEST_CONTACT {
        return Some("long");
    }
    if !contact.bytes().all(|byte| byte.is_ascii_graphic()) {
        return Some("letter");
    }
    let mail = contact.split_once('@').is_some_and(|(who, host)| !who.is_empty() && is_host(host));
    let site = contact.strip_prefix("https://").or_else(|| contact.strip_prefix("http://"));
    let site = site.is_some_and(|rest| is_host(rest.split(['/', ':']).next().unwrap_or_default()));
    if mail || site { None } else { Some("neither") }
}

fn is_host(text: &str) -> bool {
    let letters = |part: &str| !part.is_empty() && part.bytes().all(|b| b.is_ascii_alphanumeric() || b == b'-');
    text.contains('.') && text.split('.').all(letters)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn request(contact: &str) -> Request {
        let position = Position { latitude: Degree::new(62.8924), longitude: Degree::new(-0.0021), elevation: None };
        let (service, contact) = (Service::MetNorway, Some(contact.to_owned()));
        Request { service, position, contact, open_meteo_terms: OpenMeteoTerms::NotAccepted }
    }

    #[test]
    fn a_place_leaves_the_house_with_two_decimals() {
        let mut position = request("").position;
        assert_eq!(position.sent(), ("62.89".to_owned(), "0.00".to_owned()));
        position.elevation = Some(Metre::new(97.6));
        assert_eq!(position.sent_elevation().as_deref(), Some("98"));
    }

    #[test]
    fn a_contact_can_be_written_to_and_holds_nothing_else() {
        for good in ["keeper@yard.example", " https://yard.example/about ", "http://yard.example:80"] {
            assert!(request(good).checked().is_ok(), "{good}");
        }
        for bad in
            ["", "me", "@yard.example", "a@b", "a@b.example\r\nHost: x", "a b@c.example", "https://", "ä@b.example"]
        {
            assert!(request(bad).checked().is_err(), "{bad:?}");
        }
        assert!(request(&format!("{}@b.example", "a".repeat(200))).checked().is_err());
    }

    #[test]
    fn a_place_off_the_earth_is_said_to_be_so() {
        for (latitude, longitude, field) in
            [(f64::NAN, 0.0, "latitude"), (90.1, 0.0, "latitude"), (0.0, 181.0, "longitude")]
        {
            let mut request = request("a@b.example");
            request.position.latitude = Degree::new(latitude);
            request.position.longitude = Degree::new(longitude);
            assert!(request.checked().unwrap_err().to_string().contains(field));
        }
    }
}
