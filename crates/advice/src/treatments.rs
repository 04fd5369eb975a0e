//! The keeper's record of treatments, as an inspector asks for it. It holds what was noted and advises nothing.

use jiff::civil::Date;
use jiff::tz::TimeZone;
use serde::{Deserialize, Serialize};
use snowhum_apiary::{Act, Apiary, Colony, TreatmentClass, TreatmentDetail, TreatmentNote};

/// Name and number of the answer's form; the number rises when a key changes.
pub const TREATMENTS_SCHEMA: &str = "snowhum.treatments/1";

/// What is said of how long a record is kept.
pub const KEPT: &str = "The European Union asks for such a record, kept for five years (Regulation (EU) 2019/6, article \
                        108); many other countries ask much the same (the United Kingdom, from memory: five years). \
                        Here nothing is ever deleted: a note that is changed or withdrawn stays in the records beside \
                        its newer version, and the notes of a hive that has left the yard stay too. What stands only \
                        in a yard file lasts as long as that file: note it here to have it kept.";

/// What stands where nothing was noted.
pub const NOT_NOTED: &str = "not noted";

/// All treatments of a yard.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
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
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct TreatmentRow {
    /// The day it was given or begun.
    pub on: Date,
    /// The colony.
    pub colony: String,
    /// What kind of substance.
    pub class: String,
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
pub const COLUMNS: [&str; 10] =
    ["Day", "Hive", "Substance", "Product", "Batch", "Quantity", "Supplier", "Proof", "Withdrawal", "Duration"];

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
        class: class_words(given.class).to_owned(),
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
pub const fn class_words(class: TreatmentClass) -> &'static str {
    match class {
        TreatmentClass::Formic => "formic acid",
        TreatmentClass::Thymol => "thymol",
        TreatmentClass::Oxalic => "oxalic acid",
        TreatmentClass::Strips => "contact strips",
        TreatmentClass::Other => "something else",
    }
}

impl TreatmentRow {
    /// Its cells under [`COLUMNS`].
    #[must_use]
    pub fn cells(&self) -> [String; 10] {
        let told = |cell: &Option<String>| cell.clone().unwrap_or_else(|| NOT_NOTED.to_owned());
        let [product, batch, quantity, supplier] =
            [&self.product, &self.batch, &self.quantity, &self.supplier].map(told);
        let [proof, withdrawal, duration] = [&self.proof, &self.withdrawal, &self.duration].map(told);
        let (on, colony, class) = (self.on.to_string(), self.colony.clone(), self.class.clone());
        [on, colony, class, product, batch, quantity, supplier, proof, withdrawal, duration]
    }
}

impl TreatmentRecord {
    /// The record as CSV (RFC 4180).
    #[must_use]
    pub fn csv(&self) -> String {
        let head = COLUMNS.map(str::to_owned);
        let lines = std::iter::once(head).chain(self.rows.iter().map(TreatmentRow::cells));
        lines.map(|cells| format!("{}\r\n", cells.map(|cell| quoted(&cell)).join(","))).collect()
    }
}

/// A cell, quoted where it must be.
fn quoted(cell: &str) -> String {
    let must = cell.contains([',', '"', '\r', '\n']);
    if must { format!("\"{}\"", cell.replace('"', "\"\"")) } else { cell.to_owned() }
}
