//! Languages, and how each writes numbers, days and lists.

use fixed_decimal::Decimal;
use icu_calendar::{Date as CalendarDate, Gregorian};
use icu_datetime::FixedCalendarDateTimeFormatter as DateFormatter;
use icu_datetime::fieldsets::{E, M, MD, YMD};
use icu_decimal::DecimalFormatter;
use icu_decimal::options::{DecimalFormatterOptions, GroupingStrategy};
use icu_locale_core::Locale;
use jiff::civil::Date;
use snowhum_units::Speech;
use std::sync::OnceLock;

/// A language that a keeper can read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Language {
    /// English as in Britain.
    #[default]
    British,
    /// English as in North America: the British texts with the other names of the trade laid over them.
    NorthAmerican,
    /// German.
    German,
    /// French.
    French,
}

/// The ways in which a language writes a day.
struct Days {
    long: DateFormatter<Gregorian, MD>,
    short: DateFormatter<Gregorian, MD>,
    full: DateFormatter<Gregorian, YMD>,
    month: DateFormatter<Gregorian, M>,
    short_month: DateFormatter<Gregorian, M>,
    weekday: DateFormatter<Gregorian, E>,
    short_weekday: DateFormatter<Gregorian, E>,
}

/// What a language needs to write numbers and days; none where its data lack it.
struct Written {
    numbers: Option<DecimalFormatter>,
    counts: Option<DecimalFormatter>,
    days: Option<Days>,
}

static WRITTEN: [OnceLock<Written>; Language::ALL.len()] = [const { OnceLock::new() }; Language::ALL.len()];

impl Language {
    /// All of them.
    pub const ALL: [Self; 4] = [Self::British, Self::NorthAmerican, Self::German, Self::French];

    /// Its tag, as BCP 47 has it, and the name of its folder.
    #[must_use]
    pub const fn tag(self) -> &'static str {
        match self {
            Self::British => "en-GB",
            Self::NorthAmerican => "en-US",
            Self::German => "de",
            Self::French => "fr",
        }
    }

    /// The language of a tag, or of its first part.
    ///
    /// ```
    /// use snowhum_say::Language;
    /// assert_eq!(Language::of_tag("de-CH"), Some(Language::German));
    /// assert_eq!(Language::of_tag("en-CA"), Some(Language::NorthAmerican));
    /// assert_eq!(Language::of_tag("xx"), None);
    /// ```
    #[must_use]
    pub fn of_tag(tag: &str) -> Option<Self> {
        let mut parts = tag.trim().split(['-', '_']);
        let (language, region) = (parts.next()?.to_ascii_lowercase(), parts.next().map(str::to_ascii_uppercase));
        match (language.as_str(), region.as_deref()) {
            ("en", Some("US" | "CA")) => Some(Self::NorthAmerican),
            ("en", _) => Some(Self::British),
            ("de", _) => Some(Self::German),
            ("fr", _) => Some(Self::French),
            _ => None,
        }
    }

    /// The names of the trade that English texts are put into; none for a language with texts of its own.
    #[must_use]
    pub const fn speech(self) -> Option<Speech> {
        match self {
            Self::British => Some(Speech::British),
            Self::NorthAmerican => Some(Speech::NorthAmerican),
            Self::German | Self::French => None,
        }
    }

    /// Whether a keeper of the tongue has read its texts.
    #[must_use]
    pub const fn is_read(self) -> bool {
        matches!(self, Self::British | Self::NorthAmerican)
    }

    /// A number with so many decimals or with those it has, thousands not parted.
    pub(crate) fn number(self, number: f64, decimals: Option<usize>) -> String {
        let plain = decimals.map_or_else(|| number.to_string(), |decimals| format!("{number:.decimals$}"));
        formatted(plain, self.written().numbers.as_ref())
    }

    /// A whole number, its thousands parted.
    pub(crate) fn count(self, number: f64) -> String {
        formatted(format!("{number:.0}"), self.written().counts.as_ref())
    }

    /// A quantity that stands with its unit, its number as this language writes it.
    pub(crate) fn quantity(self, shown: &str) -> String {
        let Some((number, unit)) = shown.split_once(' ') else { return shown.to_owned() };
        let decimals = number.split_once('.').map_or(0, |(_, decimals)| decimals.len());
        number
            .parse()
            .map_or_else(|_| shown.to_owned(), |value| format!("{} {unit}", self.number(value, Some(decimals))))
    }

    /// A day: `short` 15 Apr, `full` 15 April 2027, `month` April, `short-month` Apr, `weekday` Thursday, `short-weekday`
    /// Thu; any other 15 April.
    pub(crate) fn day(self, day: Date, style: &str) -> String {
        let date = CalendarDate::try_new_gregorian(i32::from(day.year()), day.month() as u8, day.day() as u8);
        match (&self.written().days, date) {
            (Some(days), Ok(date)) => match style {
                "weekday" => days.weekday.format(&date).to_string(),
                "short-weekday" => days.short_weekday.format(&date).to_string(),
                "short" => days.short.format(&date).to_string(),
                "full" => days.full.format(&date).to_string(),
                "short-month" => days.short_month.format(&date).to_string(),
                "month" => days.month.format(&date).to_string(),
                _ => days.long.format(&date).to_string(),
            },
            _ => day.to_string(),
        }
    }

    fn written(self) -> &'static Written {
        WRITTEN[self as usize].get_or_init(|| {
            let locale: Locale = self.tag().parse().unwrap_or(Locale::UNKNOWN);
            let grouped = |grouping| {
                let mut options = DecimalFormatterOptions::default();
                options.grouping_strategy = Some(grouping);
                DecimalFormatter::try_new((&locale).into(), options).ok()
            };
            let (numbers, counts) = (grouped(GroupingStrategy::Never), grouped(GroupingStrategy::Always));
            Written { numbers, counts, days: days(&locale) }
        })
    }
}

/// A number that is written plainly, as a language writes it.
fn formatted(plain: String, language: Option<&DecimalFormatter>) -> String {
    match (language, plain.parse::<Decimal>()) {
        (Some(language), Ok(decimal)) => language.format(&decimal).to_string(),
        _ => plain,
    }
}

fn days(locale: &Locale) -> Option<Days> {
    Some(Days {
        long: DateFormatter::try_new(locale.into(), MD::long()).ok()?,
        short: DateFormatter::try_new(locale.into(), MD::medium()).ok()?,
        full: DateFormatter::try_new(locale.into(), YMD::long()).ok()?,
        month: DateFormatter::try_new(locale.into(), M::long()).ok()?,
        short_month: DateFormatter::try_new(locale.into(), M::medium()).ok()?,
        weekday: DateFormatter::try_new(locale.into(), E::long()).ok()?,
        short_weekday: DateFormatter::try_new(locale.into(), E::short()).ok()?,
    })
}
