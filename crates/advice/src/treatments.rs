//! The keeper's record of treatments, as an inspector asks for it. It holds what was noted and advises nothing.

use jiff::civil::Date;
use jiff::tz::TimeZone;
use serde::{Deserialize, Serialize};
use snowhum_apiary::{Act, Apiary, Colony, TreatmentClass, TreatmentDetail, TreatmentNote};
use snowhum_say::{Message, Tongue, treatments as say};

/// Name and number of the answer's form; the number rises when a key changes.
pub const TREATMENTS_SCHEMA: &str = "snowhum.treatments/1";

/// All treatments of a yard.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct TreatmentRecord {
    /// [`TREATMENTS_SCHEMA`].
    pub schema: String,
    /// Name of the yard.
    pub apiary: String,
    /// The number the authority knows it by, if it was given.
    pub registration: Option<String>,
    /// Whether the yard is made up.
    pub invented: bool,
    /// Earliest first, then in walking order.
    pub rows: Vec<TreatmentRow>,
}

/// One treatment of one colony; what was not noted is none.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct TreatmentRow {
    /// The day it was given or begun.
    pub on: Date,
    /// The colony.
    pub colony: String,
    /// What kind of substance.
    pub class: Message,
    /// The product.
    pub product: Option<String>,
    /// Its batch.
    pub batch: Option<String>,
    /// How much, in the keeper's words.
    pub quantity: Option<String>,
    /// Where it was bought.
    pub supplier: Option<String>,
    /// The proof of that.
    pub proof: Option<String>,
    /// The withdrawal period, even if it is nil.
    pub withdrawal: Option<String>,
    /// How long it was left in.
    pub duration: Option<String>,
}

/// Heads of the record's columns, in order.
#[must_use]
pub fn columns() -> [Message; 10] {
    [
        say::day(),
        say::hive(),
        say::substance(),
        say::product(),
        say::batch(),
        say::quantity(),
        say::supplier(),
        say::proof(),
        say::withdrawal(),
        say::duration(),
    ]
}

/// The record up to a day.
#[must_use]
pub fn treatments(apiary: &Apiary, until: Date) -> TreatmentRecord {
    let zone = TimeZone::get(&apiary.site.zone).unwrap_or(TimeZone::UTC);
    let mut rows = Vec::new();
    for colony in &apiary.colonies {
        rows.extend(colony.treatments.iter().map(|given| row(given.on, colony, &given.class.into())));
        for note in apiary.notes.iter().filter(|note| note.colony == colony.id) {
            let on = note.at.to_zoned_datetime(zone.clone()).date();
            rows.extend(note.acts().filter_map(|act| match act {
                Act::Treated(given) => Some(row(on, colony, given)),
                _ => None,
            }));
        }
    }
    rows.retain(|row| row.on <= until);
    rows.sort_by_key(|row| row.on);
    TreatmentRecord {
        schema: TREATMENTS_SCHEMA.to_owned(),
        apiary: apiary.name.clone(),
        registration: apiary.registration.clone(),
        invented: apiary.invented,
        rows,
    }
}

fn row(on: Date, colony: &Colony, given: &TreatmentNote) -> TreatmentRow {
    let told = |detail| given.detail(detail).map(str::to_owned);
    TreatmentRow {
        on,
        colony: colony.name.clone(),
        class: class_words(given.class),
        product: told(TreatmentDetail::Product),
        batch: told(TreatmentDetail::Batch),
        quantity: told(TreatmentDetail::Quantity),
        supplier: told(TreatmentDetail::Supplier),
        proof: told(TreatmentDetail::Proof),
        withdrawal: told(TreatmentDetail::Withdrawal),
        duration: told(TreatmentDetail::Duration),
    }
}

/// A class in words.
#[must_use]
pub fn class_words(class: TreatmentClass) -> Message {
    match class {
        TreatmentClass::Formic => say::formic(),
        TreatmentClass::Thymol => say::thymol(),
        TreatmentClass::Oxalic => say::oxalic(),
        TreatmentClass::Strips => say::strips(),
        TreatmentClass::Other => say::other(),
    }
}

impl TreatmentRow {
    /// Its cells under [`columns`]; none where nothing was noted.
    #[must_use]
    pub fn cells(&self) -> [Option<Message>; 10] {
        let told = |cell: &Option<String>| cell.as_ref().map(Message::from);
        let [product, batch, quantity, supplier] =
            [&self.product, &self.batch, &self.quantity, &self.supplier].map(told);
        let [proof, withdrawal, duration] = [&self.proof, &self.withdrawal, &self.duration].map(told);
        let [on, colony, class] =
            [self.on.to_string().into(), Message::from(&self.colony), self.class.clone()].map(Some);
        [on, colony, class, product, batch, quantity, supplier, proof, withdrawal, duration]
    }
}

impl TreatmentRecord {
    /// The record as CSV (RFC 4180).
    #[must_use]
    pub fn csv(&self, tongue: Tongue) -> String {
        let cell = |cell: Option<Message>| quoted(&tongue.say(&cell.unwrap_or_else(say::not_noted)));
        let lines = std::iter::once(columns().map(Some)).chain(self.rows.iter().map(TreatmentRow::cells));
        lines.map(|cells| format!("{}\r\n", cells.map(cell).join(","))).collect()
    }
}

/// A cell, quoted where it must be.
fn quoted(cell: &str) -> String {
    let must = cell.contains([',', '"', '\r', '\n']);
    if must { format!("\"{}\"", cell.replace('"', "\"\"")) } else { cell.to_owned() }
}
