//! Files of notes as keepers have them: a workbook, a CSV file of any hand, or this program's own sheet of notes. Every
//! face reads and keeps them through here.

mod text;
mod workbook;

use jiff::Timestamp;
use snowhum_apiary::{Apiary, Incoming, Note, SheetColumns, SheetFaults, SheetReading, Table, Wrong};
use snowhum_say::{Message, Tongue, fault, sheet_file as say};
use snowhum_store::{Fault as StoreFault, Store, Taken, notes_in_csv};
use snowhum_units::{Bare, System};

/// What the columns of the sheet were that came in last.
const COLUMNS: &str = "notes.sheet_columns";

/// A file of notes, and what the keeper says about it.
#[derive(Debug, Clone, Copy, Default)]
pub struct SheetFile<'a> {
    /// Its bytes.
    pub bytes: &'a [u8],
    /// Its name, for messages.
    pub file: &'a str,
    /// The sheet of a workbook; the first that holds something if not named.
    pub sheet: Option<&'a str>,
    /// What its columns are, such as `date=Datum, hive=Volk`.
    pub columns: Option<&'a str>,
    /// What they were last time, which is taken where its headings are there and nothing is said.
    pub last_columns: Option<&'a str>,
}

/// Why nothing of a file was kept.
#[derive(Debug, thiserror::Error)]
#[error("{}", self.said(Tongue::BRITISH))]
pub enum SheetRefused {
    /// The file cannot be read.
    File {
        /// Its name.
        file: String,
        /// What is wrong, and what would be right.
        wrong: Wrong,
    },
    /// What was said about its columns cannot be read.
    Columns(Wrong),
    /// Its rows cannot be read.
    Rows(SheetFaults),
    /// A sheet of this program's own cannot be read.
    Own {
        /// Its name.
        file: String,
        /// What is wrong.
        wrong: snowhum_store::Wrong,
    },
}

impl SheetRefused {
    /// Why, with what would be right.
    #[must_use]
    pub fn said(&self, tongue: Tongue) -> String {
        tongue.say(&match self {
            Self::File { file, wrong } => fault::at(file, wrong.message()),
            Self::Columns(wrong) => fault::at(say::columns(), wrong.message()),
            Self::Rows(faults) => return faults.said(tongue),
            Self::Own { file, wrong } => fault::at(file, wrong.message()),
        })
    }
}

/// A file once it is unpacked: its table, or notes that need none.
enum Unpacked {
    Table(Table, Option<Message>),
    Own(Vec<(usize, Note)>),
}

impl SheetFile<'_> {
    /// The notes for a yard, with what is asked about each; nothing is kept yet. Numbers without a unit are in `units`.
    ///
    /// # Errors
    /// When anything of it cannot be read, all of it with what would be right.
    pub fn read(&self, yard: &Apiary, units: System, now: Timestamp) -> Result<Incoming, SheetRefused> {
        let (table, said) = match self.unpacked()? {
            Unpacked::Own(notes) => {
                let own = SheetReading { columns: String::new(), said: Vec::new(), notes };
                return Ok(yard.incoming(own, now));
            }
            Unpacked::Table(table, said) => (table, said),
        };
        let columns = self.columns.map(SheetColumns::read).transpose().map_err(SheetRefused::Columns)?;
        let last = || self.last_columns.and_then(|last| SheetColumns::read(last).ok()).filter(|last| last.fits(&table));
        let columns = columns.or_else(last);
        let mut reading = yard.read_sheet(&table, columns.as_ref(), Bare::In(units)).map_err(SheetRefused::Rows)?;
        reading.said.extend(said);
        Ok(yard.incoming(reading, now))
    }

    /// The file as text that reads the same: what a page sends back to have it kept.
    ///
    /// # Errors
    /// When it cannot be unpacked.
    pub(crate) fn as_text(&self) -> Result<String, SheetRefused> {
        if let (Some(text), false) = (text::decoded(self.bytes), workbook::is_one(self.bytes)) {
            return Ok(text);
        }
        match self.unpacked()? {
            Unpacked::Table(table, _) => text::written(&table).map_err(|wrong| self.refused(wrong)),
            Unpacked::Own(_) => Err(self.refused(Wrong::new(say::no_table(), say::right()))),
        }
    }

    fn unpacked(&self) -> Result<Unpacked, SheetRefused> {
        if workbook::is_one(self.bytes) {
            let (table, said) = workbook::table(self).map_err(|wrong| self.refused(wrong))?;
            return Ok(Unpacked::Table(table, said));
        }
        let no_text = || Wrong::new(say::no_text(), say::right());
        let text = text::decoded(self.bytes).ok_or_else(|| self.refused(no_text()))?;
        let own = notes_in_csv(text.as_bytes());
        if let Some(notes) = own.map_err(|wrong| SheetRefused::Own { file: self.file.to_owned(), wrong })? {
            return Ok(Unpacked::Own(notes));
        }
        let table = text::table(&text, self.file).map_err(|wrong| self.refused(wrong))?;
        Ok(Unpacked::Table(table, None))
    }

    fn refused(&self, wrong: Wrong) -> SheetRefused {
        SheetRefused::File { file: self.file.to_owned(), wrong }
    }
}

/// What the columns of a sheet were that came in last.
///
/// # Errors
/// When the store cannot be read.
pub async fn last_columns(store: &Store) -> Result<Option<String>, StoreFault> {
    store.setting(COLUMNS).await
}

/// Keeps notes that came in together, in one step that can be taken back, and what their columns were if it was said.
///
/// # Errors
/// When the store cannot be written.
pub async fn bring_in(
    store: &Store,
    notes: &[Note],
    columns: Option<&str>,
    now: Timestamp,
) -> Result<Taken, StoreFault> {
    let taken = store.import_notes(notes, now).await?;
    if let Some(columns) = columns {
        store.set(COLUMNS, columns).await?;
    }
    Ok(taken)
}

#[cfg(test)]
mod tests;
