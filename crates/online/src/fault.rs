//! Why there is no forecast, and what the keeper can do.

use crate::Service;
use jiff::Timestamp;
use snowhum_say::{Message, Tongue, forecast as say};
use std::path::PathBuf;

/// Why a forecast could not be had; each message names what failed and what to do.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{}", Tongue::BRITISH.say(&self.message()))]
pub enum Fault {
    /// The service wants to know whom to write to.
    NoContact {
        /// Whom.
        service: Service,
    },
    /// The contact cannot be one.
    UnfitContact {
        /// Whom.
        service: Service,
        /// What is wrong with it, as the text names it.
        wrong: &'static str,
    },
    /// Open-Meteo is asked only when the keeper says so.
    TermsNotAccepted,
    /// The service does not forecast there.
    NotCovered {
        /// Whom.
        service: Service,
        /// As it would be sent.
        latitude: String,
        /// As it would be sent.
        longitude: String,
    },
    /// The place is not on the earth: its latitude, longitude or elevation.
    Position(&'static str),
    /// The address of a service cannot be used.
    Endpoint {
        /// Whose.
        service: Service,
        /// As given.
        address: String,
        /// What is wrong with it, as the text names it.
        wrong: &'static str,
    },
    /// Neither the service nor the cache has a forecast.
    NoForecast {
        /// Whom.
        service: Service,
        /// Why it gave none.
        why: Why,
        /// What was found in the cache.
        notes: Vec<Message>,
    },
}

impl Fault {
    /// With what would be right.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::NoContact { service } => say::no_contact(service.message()),
            Self::UnfitContact { service, wrong } => say::unfit_contact(service.message(), wrong),
            Self::TermsNotAccepted => say::terms(),
            Self::NotCovered { service, latitude, longitude } => {
                say::not_covered(latitude, longitude, service.message())
            }
            Self::Position(what) => say::position(what),
            Self::Endpoint { service, address, wrong } => say::endpoint(address, service.message(), wrong),
            Self::NoForecast { service, why, notes } => {
                let none = say::none(why.right(), service.message(), why.message());
                if notes.is_empty() { none } else { say::none_kept(none, notes.clone()) }
            }
        }
    }
}

/// Why a service gave nothing.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{}", Tongue::BRITISH.say(&self.message()))]
pub enum Why {
    /// It took too long.
    Slow {
        /// How long was waited, whole seconds, at least 1.
        seconds: u64,
    },
    /// It cannot be reached.
    Unreachable {
        /// What the network says.
        detail: String,
    },
    /// It refuses (403).
    Refused,
    /// It is asked too often (429).
    TooOften,
    /// It wants to be left alone for a while.
    LeftAlone {
        /// When it may be asked again.
        until: Timestamp,
    },
    /// It does not know the place (404).
    UnknownPlace,
    /// Another answer that is none.
    Status {
        /// Code of the answer.
        status: u16,
    },
    /// It sends us elsewhere.
    Elsewhere {
        /// Where.
        to: String,
    },
    /// The answer is too big.
    TooBig {
        /// The most that is taken.
        megabytes: u64,
    },
    /// The answer is no forecast.
    NotAForecast {
        /// What is wrong, for who looks after the program.
        wrong: String,
    },
    /// The forecast is over.
    Over {
        /// Its end.
        end: Timestamp,
    },
}

impl Why {
    /// What the service did.
    #[must_use]
    pub fn message(&self) -> Message {
        match self {
            Self::Slow { seconds } => say::slow(*seconds),
            Self::Unreachable { detail } => say::unreachable(detail),
            Self::Refused => say::refused(),
            Self::TooOften => say::too_often(),
            Self::LeftAlone { until } => say::left_alone(until.to_string()),
            Self::UnknownPlace => say::unknown_place(),
            Self::Status { status } => say::status(*status),
            Self::Elsewhere { to } => say::elsewhere(to),
            Self::TooBig { megabytes } => say::too_big(*megabytes),
            Self::NotAForecast { wrong } => say::no_forecast(wrong),
            Self::Over { end } => say::over(end.to_string()),
        }
    }

    /// What the keeper can do.
    #[must_use]
    pub fn right(&self) -> Message {
        say::right(match self {
            Self::Slow { .. } | Self::Unreachable { .. } => "connection",
            Self::Refused => "contact",
            Self::UnknownPlace => "place",
            Self::Elsewhere { .. } | Self::TooBig { .. } | Self::NotAForecast { .. } => "changed",
            Self::TooOften | Self::LeftAlone { .. } | Self::Status { .. } | Self::Over { .. } => "later",
        })
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
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum CacheFault {
    /// It cannot be read.
    Damaged {
        /// Which.
        file: PathBuf,
        /// How.
        wrong: String,
    },
    /// It cannot be written.
    Unwritable {
        /// Which.
        file: PathBuf,
        /// How.
        wrong: String,
    },
}

impl CacheFault {
    pub(crate) fn message(&self) -> Message {
        match self {
            Self::Damaged { file, wrong } => say::cache_damaged(file.display().to_string(), wrong),
            Self::Unwritable { file, wrong } => say::cache_unwritable(file.display().to_string(), wrong),
        }
    }
}
