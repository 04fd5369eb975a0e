//! Languages, and how each writes numbers, days and lists.

use fixed_decimal::Decimal;
use icu_calendar::{Date as CalendarDate, Gregorian};
use icu_datetime::FixedCalendarDateTimeFormatter as DateFormatter;
use icu_datetime::fieldsets::{E, M, MD, YMD};
use icu_decimal::DecimalFormatter;
use icu_decimal::options::{DecimalFormatterOptions, GroupingStrategy};
use icu_locale_core::Locale;
use jiff::civil::Date;
use std::borrow::Cow;
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
    /// No language of a keeper: British with every letter of a text made wide, for a test that looks for words which come from
    /// no text.
    Marked,
}

/// How many there are, with the one for tests.
pub(crate) const ALL_KINDS: usize = Language::ALL.len() + 1;

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

/// From a letter to its wide form.
const WIDER: u32 = 0xfee0;
/// Languages of a browser's list that are read.
const MOST_WANTED: usize = 32;

static WRITTEN: [OnceLock<Written>; ALL_KINDS] = [const { OnceLock::new() }; ALL_KINDS];

impl Language {
    /// All of them.
    pub const ALL: [Self; 4] = [Self::British, Self::NorthAmerican, Self::German, Self::French];

    /// Its tag, as BCP 47 has it, and the name of its folder.
    #[must_use]
    pub const fn tag(self) -> &'static str {
        match self {
            Self::British | Self::Marked => "en-GB",
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

    /// The first language of a browser's list that there is: a list such as `de-CH, fr;q=0.8`, as RFC 9110 has it. What cannot be
    /// read in it is left out.
    ///
    /// ```
    /// use snowhum_say::Language;
    /// assert_eq!(Language::of_list("pl, fr;q=0.8, de-AT;q=0.9"), Some(Language::German));
    /// assert_eq!(Language::of_list("de;q=0, *, en-US; q=0.1"), Some(Language::NorthAmerican));
    /// assert_eq!(Language::of_list("fr;q=7, de;q=NaN, ;;q=,-"), None);
    /// ```
    #[must_use]
    pub fn of_list(list: &str) -> Option<Self> {
        let wanted = list.split(',').take(MOST_WANTED).filter_map(|one| {
            let (tag, rank) = one.split_once(';').unwrap_or((one, "q=1"));
            let rank: f64 = rank.trim().strip_prefix("q=")?.parse().ok()?;
            (rank > 0.0 && rank <= 1.0).then_some((rank, Self::of_tag(tag)?))
        });
        // Of two that are wanted alike the first.
        wanted.reduce(|best, next| if next.0 > best.0 { next } else { best }).map(|(_, language)| language)
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
        let said = |value| format!("{} {}", self.number(value, Some(decimals)), self.marked(unit));
        number.parse().map_or_else(|_| shown.to_owned(), said)
    }

    /// A day: `short` 15 Apr, `full` 15 April 2027, `month` April, `short-month` Apr, `weekday` Thursday, `short-weekday`
    /// Thu; any other 15 April.
    pub(crate) fn day(self, day: Date, style: &str) -> String {
        let date = CalendarDate::try_new_gregorian(i32::from(day.year()), day.month() as u8, day.day() as u8);
        let said = match (&self.written().days, date) {
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
        };
        self.marked(&said).into_owned()
    }

    /// A text as it stands; in the one for tests each letter wide, but for the marks of a page.
    pub(crate) fn marked(self, text: &str) -> Cow<'_, str> {
        if self == Self::Marked { widened(text) } else { Cow::Borrowed(text) }
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

/// A text whose letters are wide, its tags left as they are; it may begin or end within one.
pub(crate) fn widened(text: &str) -> Cow<'_, str> {
    let ends = text.find('>').unwrap_or(text.len());
    let mut is_tag = ends < text.find('<').unwrap_or(text.len());
    let wide = |letter: char| {
        is_tag = letter == '<' || (is_tag && letter != '>');
        if is_tag || !letter.is_ascii_alphabetic() {
            letter
        } else {
            char::from_u32(u32::from(letter) + WIDER).unwrap_or(letter)
        }
    };
    Cow::Owned(text.chars().map(wide).collect())
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
