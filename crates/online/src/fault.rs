//! Why there is no forecast, and what the keeper can do.

use crate::Service;
use jiff::Timestamp;
use std::path::PathBuf;

/// Why a forecast could not be had; each message names what failed and what to do.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum Fault {
    /// The service wants to know whom to write to.
    #[error(
        "{service} wants to know whom to write to; give a contact, a mail address or the address of a site, \
         which is sent with every request"
    )]
    NoContact {
        /// Whom.
        service: Service,
    },
    /// The contact cannot be one.
    #[error("the contact for {service} {wrong}; give one like name@host.example or https://host.example")]
    UnfitContact {
        /// Whom.
        service: Service,
        /// What is wrong with it.
        wrong: &'static str,
    },
    /// Open-Meteo is asked only when the keeper says so.
    #[error(
        "Open-Meteo is free for use that is not commercial; accept its terms (https://open-meteo.com/en/terms) \
         if that is so, or ask MET Norway"
    )]
    TermsNotAccepted,
    /// The service does not forecast there.
    #[error("{service} does not forecast for {latitude}, {longitude}; ask MET Norway, which covers the whole world")]
    NotCovered {
        /// Whom.
        service: Service,
        /// As it would be sent.
        latitude: String,
        /// As it would be sent.
        longitude: String,
    },
    /// The place is not on the earth.
    #[error("the {field} of the place cannot be used; {right}")]
    Position {
        /// Which number.
        field: &'static str,
        /// What would be right.
        right: &'static str,
    },
    /// The address of a service cannot be used.
    #[error("the address of {service}, \"{address}\", {wrong}; give one that begins with https://")]
    Endpoint {
        /// Whose.
        service: Service,
        /// As given.
        address: String,
        /// What is wrong with it.
        wrong: &'static str,
    },
    /// Neither the service nor the cache has a forecast.
    #[error(
        "no forecast; the answers stand on the site's climate. {service}: {why}; {}{}",
        why.remedy(),
        notes.iter().map(|note| format!(". {note}")).collect::<String>()
    )]
    NoForecast {
        /// Whom.
        service: Service,
        /// Why it gave none.
        why: Why,
        /// What was found in the cache.
        notes: Vec<String>,
    },
}

/// Why a service gave nothing.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum Why {
    /// It took too long.
    #[error("no answer within {seconds} s")]
    Slow {
        /// How long was waited, whole seconds, at least 1.
        seconds: u64,
    },
    /// It cannot be reached.
    #[error("cannot be reached ({detail})")]
    Unreachable {
        /// What the network says.
        detail: String,
    },
    /// It refuses (403).
    #[error("the service refuses the request (403)")]
    Refused,
    /// It is asked too often (429).
    #[error("the service is asked too often (429)")]
    TooOften,
    /// It wants to be left alone for a while.
    #[error("the service asked to be left alone until {until}")]
    LeftAlone {
        /// When it may be asked again.
        until: Timestamp,
    },
    /// It does not know the place (404).
    #[error("the service does not know this place (404)")]
    UnknownPlace,
    /// Another answer that is none.
    #[error("the service answered {status}")]
    Status {
        /// Code of the answer.
        status: u16,
    },
    /// It sends us elsewhere.
    #[error("the service points to {to}, which is another place or not encrypted")]
    Elsewhere {
        /// Where.
        to: String,
    },
    /// The answer is too big.
    #[error("the answer is larger than {megabytes} MB")]
    TooBig {
        /// The most that is taken.
        megabytes: u64,
    },
    /// The answer is no forecast.
    #[error("the answer is no forecast: {wrong}")]
    NotAForecast {
        /// What is wrong.
        wrong: String,
    },
    /// The forecast is over.
    #[error("the forecast ended at {end}")]
    Over {
        /// Its end.
        end: Timestamp,
    },
}

impl Why {
    /// What the keeper can do.
    #[must_use]
    pub const fn remedy(&self) -> &'static str {
        match self {
            Self::Slow { .. } | Self::Unreachable { .. } => "check the connection and try again later",
            Self::Refused => "check the contact and try again in an hour, or ask another service",
            Self::TooOften | Self::LeftAlone { .. } => "try again later, or ask another service",
            Self::UnknownPlace => "check the place, or ask MET Norway, which covers the whole world",
            Self::Elsewhere { .. } | Self::TooBig { .. } | Self::NotAForecast { .. } => {
                "the service may have changed, or something stands in between (a sign-in page of the network); \
                 try again later, or ask another service"
            }
            Self::Status { .. } | Self::Over { .. } => "try again later, or ask another service",
        }
    }

    /// The body is no forecast.
    pub(crate) fn wrong(wrong: impl AsRef<str>) -> Self {
        Self::NotAForecast { wrong: shown(wrong.as_ref()) }
    }

    /// The service points elsewhere.
    pub(crate) fn elsewhere(to: &str) -> Self {
        Self::Elsewhere { to: shown(to) }
    }

    /// The service answered with no page.
    pub(crate) const fn of_status(status: u16) -> Self {
        match status {
            403 => Self::Refused,
            404 => Self::UnknownPlace,
            429 => Self::TooOften,
            status => Self::Status { status },
        }
    }
}

/// Words from outside, fit for a message: at most 160 characters, none that moves a terminal.
fn shown(text: &str) -> String {
    let mut letters = text.trim().chars().filter(|letter| !letter.is_control());
    let cut: String = letters.by_ref().take(160).collect();
    if letters.next().is_some() { format!("{cut}…") } else { cut }
}

/// What is wrong with the cache; never in the way of an answer.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub(crate) enum CacheFault {
    /// It cannot be read.
    #[error("the cached forecast {} is damaged ({wrong}) and was left out; it is written anew at the next answer", file.display())]
    Damaged {
        /// Which.
        file: PathBuf,
        /// How.
        wrong: String,
    },
    /// It cannot be written.
    #[error("the forecast cannot be kept in {} ({wrong}); make the folder writable, since each run asks the service anew", file.display())]
    Unwritable {
        /// Which.
        file: PathBuf,
        /// How.
        wrong: String,
    },
}
